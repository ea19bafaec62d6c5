import QtQuick
import QtQuick.Layouts
import Firstdew

// The health questions, each answered yes or no.
ColumnLayout {
    id: form
    property var answers: ({})
    /// Asked anew: only what was answered with yes still stands.
    property bool anew: false
    readonly property var rows: PlanModel.screeningRows
    readonly property bool complete: rows.every(r => answers[r.row] !== undefined)
    readonly property var yes: rows.map(r => r.row).filter(r => answers[r] === true)
    Layout.fillWidth: true
    spacing: Theme.margin
    function save() { return PlanModel.setScreening(rows.map(r => r.row), yes) }
    Component.onCompleted: {
        const known = {}
        for (const r of rows)
            if (r.asked && (r.yes || !anew)) known[r.row] = r.yes
        answers = known
    }
    Repeater {
        model: form.rows.length
        Card {
            id: card
            required property int index
            readonly property var line: form.rows[index] || ({})
            readonly property bool isYes: form.answers[line.row] === true
            kind: isYes && line.outcome === "stop" ? "danger" : "plain"
            Label { text: Appearance.phrases.screening(card.line.row); Layout.fillWidth: true }
            OneOf {
                question: Appearance.phrases.screening(card.line.row)
                options: [{ value: "no", text: qsTr("No") }, { value: "yes", text: qsTr("Yes") }]
                value: form.answers[card.line.row] === undefined ? "" : card.isYes ? "yes" : "no"
                onChosen: value => { const next = Object.assign({}, form.answers); next[card.line.row] = value === "yes"; form.answers = next }
            }
            Label {
                visible: card.isYes
                Layout.fillWidth: true
                color: card.line.outcome === "stop" ? Theme.danger : Theme.ink
                text: card.line.clearedBy !== "" ? qsTr("Cleared by %1.").arg(card.line.clearedBy)
                    : card.line.outcome === "stop" ? qsTr("No bath until a clinician has said that it is safe for you.")
                    : card.line.outcome === "ask-first" ? qsTr("Ask a clinician first and note who said yes.")
                    : qsTr("Usually no obstacle; one hospital lists it. Mention it to your clinician.")
            }
        }
    }
}
