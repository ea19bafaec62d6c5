import QtQuick
import QtQuick.Layouts
import Firstdew

// The prescriber's page: how far back it reaches, what is asked, and out of the door.
Frame {
    id: page
    canGoBack: true
    title: qsTr("Summary for your prescriber")
    Label { Layout.fillWidth: true; text: qsTr("A page that says how it goes and what you ask, and a second one with every session. Nothing leaves the phone before you choose where it goes.") }
    OneOf {
        label: qsTr("How far back")
        options: [{ value: 30, text: qsTr("A month") }, { value: 90, text: qsTr("Three months") }, { value: 182, text: qsTr("Half a year") }, { value: 365, text: qsTr("A year") }]
        value: SummaryModel.days
        onChosen: days => SummaryModel.days = days
    }
    ActionButton { kind: ButtonFace.Now; iconName: "share"; text: qsTr("Share the summary"); Layout.fillWidth: true; onClicked: SummaryModel.share() }
    ActionButton { text: qsTr("Save it as a file"); Layout.fillWidth: true; onClicked: SummaryModel.save() }
    Label { visible: text !== ""; Layout.fillWidth: true; text: SummaryModel.message }
    ActionButton { visible: SummaryModel.file !== ""; text: qsTr("Look at it"); Layout.fillWidth: true; onClicked: SummaryModel.open(SummaryModel.file) }
    property bool shown: false
    ActionButton { kind: ButtonFace.Quiet; text: page.shown ? qsTr("Hide the page") : qsTr("Show the page here"); Layout.fillWidth: true; onClicked: page.shown = !page.shown }
    Loader {
        active: page.shown
        visible: active
        Layout.fillWidth: true
        Layout.preferredHeight: width * Math.SQRT2
        sourceComponent: PagePreview {
            source: SummaryModel
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("The first page as it will be printed")
        }
    }
    Card {
        Heading { text: qsTr("Questions for the prescriber") }
        Repeater {
            model: SummaryModel.questions
            Item {
                id: asked
                required property questionLine modelData
                Layout.fillWidth: true
                implicitHeight: Math.max(words.implicitHeight, back.implicitHeight)
                Label { id: words; text: asked.modelData.text; anchors { left: parent.left; right: back.left; verticalCenter: parent.verticalCenter } }
                IconButton { id: back; anchors.right: parent.right; iconName: "close"; text: qsTr("Take back: %1").arg(asked.modelData.text); onClicked: SummaryModel.takeBack(asked.modelData.id) }
            }
        }
        Label { visible: SummaryModel.questions.length === 0; role: Label.Small; Layout.fillWidth: true; text: qsTr("Your questions appear near the top of the page.") }
        Field { id: question; label: qsTr("Your question") }
        ActionButton { text: qsTr("Put it on the page"); Layout.fillWidth: true; enabled: question.text.trim() !== ""; onClicked: { SummaryModel.ask(question.text); question.text = "" } }
    }
}
