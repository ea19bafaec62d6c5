import QtQuick
import QtQuick.Templates as T
import Firstdew

// One of the four levels: a choice that shows its ripples.
T.RadioButton {
    id: control
    property alias ripples: face.ripples
    property alias pictureHigh: face.pictureHigh
    property alias textSize: face.textSize
    property alias side: face.side
    property alias leastHigh: face.leastHigh
    property alias ink: face.ink
    implicitWidth: face.implicitWidth
    implicitHeight: face.implicitHeight
    autoExclusive: false // what is chosen is bound from outside
    checkable: false
    Accessible.checked: checked
    Accessible.focusable: enabled
    Accessible.onPressAction: if (enabled) clicked() // the template of Qt 6.4 announces the action but does nothing
    Accessible.onToggleAction: if (enabled) clicked()
    Keys.onReturnPressed: event => pressedByKey(event)
    Keys.onEnterPressed: event => pressedByKey(event)
    function pressedByKey(event) { if (!event.isAutoRepeat) clicked() }
    background: ButtonFace {
        id: face
        text: control.text
        kind: control.checked ? ButtonFace.Main : ButtonFace.Choice
        stacked: true
        pictureWide: Theme.iconLarge
        down: control.down
        visualFocus: control.visualFocus
    }
}
