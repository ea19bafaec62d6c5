import QtQuick
import Firstdew

// A button that shows an icon alone.
Press {
    property color tint: Theme.ink
    wordless: true
    fillDown: Theme.cardPressed
    ink: enabled ? tint : Theme.line
    radius: Theme.radius
    focusColor: Theme.main
    focusLine: Theme.focusLine
    focusOut: Theme.focusLine
    pictureWide: Theme.icon
    pictureHigh: Theme.icon
    leastHigh: Theme.target
    leastWide: Theme.target
    Accessible.role: Accessible.Button
    Accessible.name: text
    Accessible.focusable: enabled
    Accessible.onPressAction: if (enabled) clicked()
}
