import QtQuick
import QtQuick.Templates as T
import Firstdew

// A small thing that is on or off.
T.CheckBox {
    id: control
    implicitHeight: Math.max(Theme.target, face.implicitHeight)
    implicitWidth: Math.max(Theme.target, face.implicitWidth)
    nextCheckState: () => checkState // what is on is bound from outside
    Accessible.name: text
    Accessible.checked: checked
    Accessible.onPressAction: if (enabled) clicked()
    Accessible.onToggleAction: if (enabled) clicked()
    Keys.onReturnPressed: clicked()
    background: ChipFace { id: face; of: control }
}
