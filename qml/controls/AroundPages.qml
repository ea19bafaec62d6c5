import QtQuick
import Firstdew

// What the window has beside its pages and the first picture does without: keys, room for the on-screen keyboard, and sheets.
Item {
    id: around
    required property var pages // the window
    function show(name, properties) { open(sheet, name, properties) }
    function tellOfTrouble() { if (trouble.item) trouble.item.open(); else open(trouble, "TroubleSheet", {}) }
    function open(loader, name, properties) {
        loader.setSource(Qt.resolvedUrl(name + ".qml"), properties)
        loader.item.open()
    }

    // Asked only when it moves: asked before a window has the keyboard, Qt 6.4 falls over under Wayland. Systems tell it in
    // pixels of the screen.
    Connections {
        target: Qt.inputMethod
        function onKeyboardRectangleChanged() { around.pages.keyboardHeight = Qt.inputMethod.keyboardRectangle.height / around.Screen.devicePixelRatio }
        function onVisibleChanged() { around.pages.keyboardHeight = Qt.inputMethod.visible ? Qt.inputMethod.keyboardRectangle.height / around.Screen.devicePixelRatio : 0 }
    }
    Shortcut { sequences: [StandardKey.Back, "Esc"]; onActivated: Router.back() }
    Shortcut { sequence: "Ctrl+1"; onActivated: around.pages.go("today") }
    Shortcut { sequence: "Ctrl+2"; onActivated: around.pages.go("bath") }
    Shortcut { sequence: "Ctrl+3"; onActivated: around.pages.go("diary") }
    Shortcut { sequence: "Ctrl+4"; onActivated: around.pages.go("plan") }

    // Few sheets are ever opened: each is read and made when it is. The one of trouble may lie over another.
    Loader { id: sheet }
    Loader { id: trouble }
}
