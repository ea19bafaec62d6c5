import QtQuick
import QtQuick.Templates as T
import Firstdew

T.Button {
    id: control
    property string iconName: ""
    property color tint: Theme.ink
    implicitWidth: Theme.target
    implicitHeight: Theme.target
    Accessible.role: Accessible.Button
    Accessible.name: text
    Accessible.focusable: enabled
    Accessible.onPressAction: if (enabled) clicked()
    Keys.onReturnPressed: clicked()
    contentItem: Item {
        Icon {
            anchors.centerIn: parent
            width: Theme.icon
            height: Theme.icon
            name: control.iconName
            color: control.enabled ? control.tint : Theme.line
            mirrored: control.mirrored && (name === "back" || name === "next" || name === "undo")
        }
    }
    background: Rectangle {
        radius: Theme.radius
        color: control.down ? Theme.cardPressed : Theme.clear
        FocusFrame { of: control; anchors.fill: parent }
    }
}
