import QtQuick
import Firstdew

// A labelled button.
Press {
    Accessible.role: Accessible.Button
    Accessible.name: text
    // Qt 6.4 has no other way to tell a screen reader that nothing happens here yet.
    Accessible.focusable: enabled
    Accessible.description: enabled ? "" : qsTr("Not possible yet")
    Accessible.onPressAction: if (enabled) clicked()
}
