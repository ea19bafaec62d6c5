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
    border.color: Theme.focus
    readonly property var control: of
    visible: control && control.visualFocus === true
    z: 10
    Rectangle { anchors { fill: parent; margins: -Theme.halo } z: -1; radius: parent.radius + Theme.halo; color: Theme.clear; border { width: Theme.focusLine + 2 * Theme.halo; color: Theme.paper } }
}
