import QtQuick
import QtQuick.Layouts
import Firstdew

// What practice is, before it begins.
Frame {
    id: page
    title: qsTr("Practice")
    function named(lines: var): var { return lines.map(line => ({ value: line.site, text: line.name })) }
    Label { Layout.fillWidth: true; text: qsTr("Go through a whole session with the machine off: every step, picture and spoken word. Nothing is recorded.") }
    Label { Layout.fillWidth: true; text: qsTr("What takes minutes takes %n second(s) here.", "", BathModel.practiceSeconds) }
    Label { role: Label.Strong; Layout.fillWidth: true; text: qsTr("Leave the machine off the whole time.") }
    Card {
        visible: BathModel.practiceBar !== ""
        Label { Layout.fillWidth: true; text: BathModel.practiceBar }
    }
    OneOf { visible: BathModel.sites.length > 1; label: qsTr("Where"); options: page.named(BathModel.sites); value: BathModel.site; onChosen: site => BathModel.chooseSite(site) }
    Drawings { subjects: [Subject.MachineOff]; most: Theme.drawing }
    dock: RowLayout {
        Layout.fillWidth: true
        spacing: Theme.small
        IconButton { iconName: "back"; text: qsTr("Back"); onClicked: BathModel.leavePractice() }
        ActionButton { kind: ButtonFace.Now; text: qsTr("Begin practice"); enabled: BathModel.canPractise; Layout.fillWidth: true; onClicked: BathModel.beginPractice() }
    }
}
