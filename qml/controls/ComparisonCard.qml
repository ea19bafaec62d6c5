import QtQuick
import QtQuick.Layouts
import Firstdew

// Is a shorter session enough? What a comparison is, where it stands, and its answer.
Card {
    id: card
    required property int site
    property siteComparison compared: DiaryModel.comparison(site)
    property bool opened: false // the person wants to know what it is
    property bool agreed: false
    visible: compared.offered || compared.lines.length > 0
    function look() {
        compared = DiaryModel.comparison(site)
        opened = false
        agreed = false
    }
    Connections { target: DiaryModel; function onChanged() { card.look() } }
    Heading { text: qsTr("Is a shorter session enough?") }
    Repeater {
        model: card.compared.lines
        Label { required property string modelData; Layout.fillWidth: true; text: modelData }
    }
    Label {
        visible: card.compared.offered && !card.opened && card.compared.lines.length === 0
        Layout.fillWidth: true
        text: qsTr("You can find out by comparing the two, one dry spell after the other.")
    }
    ActionButton {
        visible: card.compared.offered && !card.opened
        kind: ButtonFace.Plain
        text: card.compared.lines.length === 0 ? qsTr("How it works") : qsTr("Compare again")
        Layout.fillWidth: true
        onClicked: card.opened = true
    }
    Repeater {
        model: card.opened ? card.compared.about : []
        LeadLine { required property string modelData; iconName: "drop"; iconColor: Theme.main; text: modelData }
    }
    TickRow {
        visible: card.opened && card.compared.offered
        text: qsTr("My prescriber or nurse agrees")
        checked: card.agreed
        onClicked: card.agreed = !card.agreed
    }
    ActionButton {
        visible: card.opened && card.compared.offered
        kind: ButtonFace.Now
        text: qsTr("Start comparing")
        enabled: card.agreed
        Layout.fillWidth: true
        onClicked: DiaryModel.beginComparison(card.site)
    }
    ActionButton {
        visible: card.compared.goesOn
        kind: ButtonFace.Plain
        text: qsTr("Leave the comparison")
        Layout.fillWidth: true
        onClicked: DiaryModel.leaveComparison(card.site)
    }
}
