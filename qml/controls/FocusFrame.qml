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
    visible: of && of.visualFocus === true
    z: 10
}
