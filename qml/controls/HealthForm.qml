import QtQuick
import QtQuick.Layouts
import Firstdew

// The health questions, each answered yes or no.
ColumnLayout {
    id: form
    property var answers: ({})
    /// Asked anew: only what was answered with yes still stands.
    property bool anew: false
    readonly property bool complete: every(answers)
    function every(answers) {
        for (let i = 0; i < PlanModel.questions.length; ++i)
            if (answers[PlanModel.questions[i].row] === undefined)
                return false
        return true
    }
    Layout.fillWidth: true
    spacing: Theme.margin
    function save() { return PlanModel.answerQuestions(Object.keys(answers).map(Number).filter(row => answers[row] === true)) }
    Component.onCompleted: {
        const known = {}
        for (let i = 0; i < PlanModel.questions.length; ++i) {
            const q = PlanModel.questions[i]
            if (q.asked && (q.yes || !anew)) known[q.row] = q.yes
        }
        answers = known
    }
    Repeater {
        model: PlanModel.questions.length
        Card {
            id: card
            required property int index
            readonly property healthQuestion line: PlanModel.questions[index] ?? Empty.healthQuestion
            readonly property bool isYes: form.answers[line.row] === true
            readonly property bool staysYes: form.answers[line.row] === false && line.waits
            kind: isYes && line.outcome === RowOutcome.Stop ? Card.Danger : Card.Plain
            Label { text: card.line.question; Layout.fillWidth: true }
            OneOf {
                question: card.line.question
                options: [{ value: false, text: qsTr("No") }, { value: true, text: qsTr("Yes") }]
                value: form.answers[card.line.row]
                onChosen: value => { const next = Object.assign({}, form.answers); next[card.line.row] = value; form.answers = next }
            }
            Label {
                visible: card.staysYes
                Layout.fillWidth: true
                text: qsTr("You answered yes on %1. That counts until a clinician has approved treatment.").arg(Appearance.phrases.dayFull(card.line.since))
            }
            Label {
                visible: card.isYes
                Layout.fillWidth: true
                color: card.line.outcome === RowOutcome.Stop ? Theme.danger : Theme.ink
                text: card.line.clearedBy !== "" && !card.line.blocks ? qsTr("Approved by %1 until %2.").arg(card.line.clearedBy).arg(Appearance.phrases.dayFull(card.line.clearedUntil))
                    : card.line.clearedBy !== "" ? qsTr("The approval by %1 has expired. Ask again before your next session.").arg(card.line.clearedBy)
                    : card.line.outcome === RowOutcome.Stop ? qsTr("No session until a clinician has said that it is safe for you.")
                    : card.line.outcome === RowOutcome.AskFirst ? qsTr("Ask a clinician first and note who said yes.")
                    : qsTr("Usually no obstacle; one hospital lists it. Mention it to your clinician.")
            }
        }
    }
}
