import QtQuick
import Firstdew

// A button that shows an icon alone.
Press {
    kind: "bare"
    wordless: true
    Accessible.role: Accessible.Button
    Accessible.name: text
    Accessible.focusable: enabled
    Accessible.onPressAction: if (enabled) clicked()
}
