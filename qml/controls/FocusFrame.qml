import QtQuick
import Firstdew

// Shows where the keyboard is.
Rectangle {
    property Item of: parent
    anchors.fill: of
    anchors.margins: -Theme.focusLine
    radius: Theme.radius + Theme.focusLine
    color: Theme.clear
    border.width: Theme.focusLine
    border.color: Theme.main
    readonly property var control: of
    visible: control && control.visualFocus === true
    z: 10
}
