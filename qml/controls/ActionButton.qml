import QtQuick
import QtQuick.Templates as T
import Firstdew

// A button with words, a picture or both. Qt's template handles touch, keys, focus and accessibility.
T.AbstractButton {
    id: control
    property alias kind: face.kind
    property alias iconName: face.iconName
    property alias ripples: face.ripples
    property alias stacked: face.stacked
    property alias wordless: face.wordless
    property alias textSize: face.textSize
    property alias weight: face.weight
    property alias pictureWide: face.pictureWide
    property alias pictureHigh: face.pictureHigh
    property alias between: face.between
    property alias side: face.side
    property alias leastHigh: face.leastHigh
    property alias leastWide: face.leastWide
    property alias radius: face.radius
    property alias ink: face.ink
    property alias focusOut: face.focusOut
    implicitWidth: face.implicitWidth
    implicitHeight: face.implicitHeight
    Accessible.role: Accessible.Button
    Accessible.name: text
    // Qt 6.4 has no other way to tell a screen reader that a button is disabled.
    Accessible.focusable: enabled
    Accessible.description: enabled ? "" : qsTr("Not possible yet")
    Accessible.onPressAction: if (enabled) clicked()
    Keys.onReturnPressed: event => pressedByKey(event)
    Keys.onEnterPressed: event => pressedByKey(event)
    function pressedByKey(event) { if (!event.isAutoRepeat) clicked() }
    background: ButtonFace {
        id: face
        text: control.text
        down: control.down
        visualFocus: control.visualFocus
    }
}
