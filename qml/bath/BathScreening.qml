import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    title: BathModel.askAll ? qsTr("Health questions") : qsTr("Has anything changed?")
    Label {
        Layout.fillWidth: true
        text: BathModel.askAll ? qsTr("Tick each question whose answer is yes for the person treated. Everything not ticked counts as no.")
                               : qsTr("Since you last answered: pregnancy, implants, illness, skin, medicines for the heart, or anything else on the list?")
    }
    Repeater {
        model: BathModel.askAll ? BathModel.questions.length : 0
        TickRow {
            required property int index
            readonly property var question: BathModel.questions[index] || ({})
            text: question.text || ""
            checked: question.yes === true
            worrying: true
            onClicked: BathModel.toggleAnswer(question.row)
        }
    }
    ActionButton { visible: BathModel.askAll; kind: "now"; text: qsTr("That is all"); Layout.fillWidth: true; onClicked: BathModel.answersDone() }
    ActionButton { visible: !BathModel.askAll; kind: "now"; text: qsTr("Nothing has changed"); Layout.fillWidth: true; onClicked: BathModel.nothingChanged() }
    ActionButton { visible: !BathModel.askAll; text: qsTr("Something has changed"); Layout.fillWidth: true; onClicked: BathModel.somethingChanged() }
    ActionButton { kind: "quiet"; text: qsTr("Back"); Layout.fillWidth: true; onClicked: BathModel.back() }
}
