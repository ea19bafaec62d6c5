import QtQuick
import QtQuick.Layouts
import Firstdew

// A value with less and more beside it.
ColumnLayout {
    id: stepper
    property string label: ""
    property string shown: ""
    onShownChanged: if (changing) { changing = false; Announce.value(shown) }
    property bool changing: false // by the buttons
    signal less()
    signal more()
    Layout.fillWidth: true
    Layout.fillHeight: false
    spacing: Theme.tight
    Label { role: Label.Small; text: stepper.label; Layout.fillWidth: true }
    // Large words need the whole line.
    Label { visible: Theme.largeText; role: Label.Strong; text: stepper.shown; Layout.fillWidth: true }
    RowLayout {
        Layout.fillWidth: true
        spacing: Theme.small
        ActionButton { iconName: "minus"; text: ""; Accessible.name: qsTr("%1: less").arg(stepper.label); onClicked: { stepper.changing = true; stepper.less() } }
        Label { visible: !Theme.largeText; role: Label.Strong; text: stepper.shown; horizontalAlignment: Text.AlignHCenter; Layout.fillWidth: true }
        ActionButton { iconName: "plus"; text: ""; Accessible.name: qsTr("%1: more").arg(stepper.label); onClicked: { stepper.changing = true; stepper.more() } }
    }
}
