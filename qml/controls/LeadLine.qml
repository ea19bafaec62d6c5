import QtQuick
import QtQuick.Layouts
import Firstdew

// An icon before a text of any length.
Item {
    id: line
    property alias iconName: icon.name
    property alias iconColor: icon.color
    property alias text: words.text
    Layout.fillWidth: true
    implicitWidth: Theme.target
    implicitHeight: Math.max(icon.height, words.implicitHeight)
    Icon { id: icon; anchors { left: parent.left; top: parent.top } width: Theme.icon; height: Theme.icon }
    Label { id: words; anchors { left: icon.right; right: parent.right; top: parent.top; leftMargin: Theme.gap } }
}
