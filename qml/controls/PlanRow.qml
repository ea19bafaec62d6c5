import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Firstdew

// A line that leads to a page of its own, with what stands there now.
T.Button {
    id: control
    property string title: ""
    property string value: ""
    text: title
    Layout.fillWidth: true
    implicitHeight: Math.max(Theme.barHeight, texts.implicitHeight + 2 * Theme.gap)
    Accessible.role: Accessible.Button
    Accessible.name: title
    Accessible.description: value
    Accessible.onPressAction: if (enabled) clicked()
    Keys.onReturnPressed: clicked()
    contentItem: Item {
        Column {
            id: texts
            anchors { left: parent.left; right: arrow.left; verticalCenter: parent.verticalCenter; leftMargin: Theme.margin; rightMargin: Theme.small }
            spacing: Theme.tight
            Label { width: parent.width; role: Label.Strong; text: control.title; Accessible.ignored: true }
            Label { width: parent.width; role: Label.Small; text: control.value; visible: text !== ""; Accessible.ignored: true }
        }
        Icon {
            id: arrow
            anchors { right: parent.right; verticalCenter: parent.verticalCenter; rightMargin: Theme.gap }
            width: Theme.icon
            height: Theme.icon
            name: "next"
            color: Theme.inkSoft
            mirrored: control.mirrored
        }
    }
    background: Rectangle {
        radius: Theme.radius
        color: control.down ? Theme.cardPressed : Theme.card
        border.width: Theme.hair
        border.color: Theme.line
        FocusFrame { of: control; anchors.fill: parent }
    }
}
