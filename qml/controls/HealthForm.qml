import QtQuick
import QtQuick.Layouts
import Firstdew

// The health questions, each answered yes or no.
ColumnLayout {
    id: form
    property var answers: ({})
    readonly property var rows: PlanModel.screeningRows
    readonly property bool complete: rows.every(r => answers[r.row] !== undefined)
    readonly property var yes: rows.map(r => r.row).filter(r => answers[r] === true)
    Layout.fillWidth: true
    spacing: Theme.margin
    function save() { return PlanModel.setScreening(rows.map(r => r.row), yes) }
    Component.onCompleted: {
        const known = {}
        for (const r of rows)
            if (r.asked) known[r.row] = r.yes
        answers = known
    }
    Repeater {
        model: form.rows
        Card {
            id: card
            required property var modelData
            readonly property bool isYes: form.answers[modelData.row] === true
            kind: isYes && modelData.outcome === "stop" ? "danger" : "plain"
            Label { text: Look.words.screening(card.modelData.row); Layout.fillWidth: true }
            OneOf {
                options: [{ value: "no", text: qsTr("No") }, { value: "yes", text: qsTr("Yes") }]
                value: form.answers[card.modelData.row] === undefined ? "" : card.isYes ? "yes" : "no"
                onChosen: value => { const next = Object.assign({}, form.answers); next[card.modelData.row] = value === "yes"; form.answers = next }
            }
            Label {
                visible: card.isYes
                Layout.fillWidth: true
                color: card.modelData.outcome === "stop" ? Theme.danger : Theme.ink
                text: card.modelData.clearedBy !== "" ? qsTr("Cleared by %1.").arg(card.modelData.clearedBy)
                    : card.modelData.outcome === "stop" ? qsTr("No bath until a clinician has said that it is safe for you.")
                    : card.modelData.outcome === "ask-first" ? qsTr("Ask a clinician first and note who said yes.")
                    : qsTr("Usually no obstacle; one hospital lists it. Mention it to your clinician.")
            }
        }
    }
}
