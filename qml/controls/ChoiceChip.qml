import QtQuick
import QtQuick.Templates as T
import Firstdew

// One of a few small things.
T.RadioButton {
    id: control
    implicitHeight: Math.max(Theme.target, face.implicitHeight)
    implicitWidth: Math.max(Theme.target, face.implicitWidth)
    autoExclusive: false // what is chosen is bound from outside
    checkable: false
    Accessible.name: text
    Accessible.checked: checked
    Accessible.focusable: enabled
    Accessible.description: enabled ? "" : qsTr("Not possible yet")
    Accessible.onPressAction: if (enabled) clicked()
    Accessible.onToggleAction: if (enabled) clicked()
    Keys.onReturnPressed: clicked()
    background: ChipFace { id: face; of: control }
}
