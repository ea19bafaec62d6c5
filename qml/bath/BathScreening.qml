import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    title: BathModel.askAll ? qsTr("Health questions") : qsTr("Has anything changed?")
    Label {
        Layout.fillWidth: true
        text: BathModel.askAll ? qsTr("Answer each question for the person treated, as things are today.")
                               : qsTr("Since you last answered: pregnancy, implants, illness, skin, medicines for the heart, or anything else on the list?")
    }
    Loader {
        id: all
        readonly property var form: item
        active: BathModel.askAll
        visible: active
        Layout.fillWidth: true
        Layout.preferredHeight: implicitHeight
        sourceComponent: HealthForm { anew: PlanModel.screeningDue === ScreeningDue.Full }
    }
    Loader {
        active: !BathModel.askAll
        visible: active
        Layout.fillWidth: true
        sourceComponent: Card {
            Label { role: Label.Strong; text: qsTr("The list"); Layout.fillWidth: true; Accessible.role: Accessible.Heading }
            Repeater {
                model: PlanModel.questions
                Label { required property healthQuestion modelData; role: Label.Small; text: Appearance.phrases.screeningShort(modelData.row); Layout.fillWidth: true }
            }
        }
    }
    dock: [
        ActionButton { visible: !BathModel.askAll; kind: ButtonFace.Plain; text: qsTr("Something has changed"); Layout.fillWidth: true; onClicked: BathModel.somethingChanged() },
        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.small
            IconButton { iconName: "back"; text: qsTr("Back"); onClicked: BathModel.back() }
            ActionButton { visible: !BathModel.askAll; kind: ButtonFace.Now; text: qsTr("Nothing has changed"); Layout.fillWidth: true; onClicked: BathModel.nothingChanged() }
            ActionButton {
                visible: BathModel.askAll
                kind: ButtonFace.Now
                text: qsTr("That is all")
                enabled: all.form && all.form.complete
                Layout.fillWidth: true
                onClicked: if (all.form.save()) BathModel.answersDone()
            }
        }
    ]
}
