import QtQuick
import Firstdew

// What the window has beside its pages and the first picture does without: keys, room for the on-screen keyboard, and sheets.
Item {
    id: around
    required property var pages // the window
    function show(part) { open(sheet, part) }
    function tellOfTrouble() { if (trouble.shown) trouble.shown.open(); else open(trouble, Part.TroubleSheetPart) }
    function open(loader, part) {
        loader.source = ""
        loader.source = Router.documentOf(part)
        loader.item.open()
    }

    // What comes in is seen to come from where it lies. Beside a current nothing moves.
    readonly property int motion: BathModel.busy ? 0 : Appearance.motion
    onMotionChanged: if (motion === 0) { coming.complete(); rising.complete() }
    function come(what, from) { move(coming, pages, what, from) }
    function move(animation, target, what, from) {
        animation.complete()
        if (motion === 0)
            return
        target[what] = from
        animation.target = target
        animation.property = what
        animation.start()
    }
    component Coming: NumberAnimation { to: 0; duration: around.motion; easing.type: Easing.OutCubic }
    Coming { id: coming }
    Coming { id: rising }
    Connections { target: Router; function onRises(sheet) { around.move(rising, sheet, "away", 1) } }

    readonly property var keyboard: Qt.inputMethod
    // Asked only when it moves: asked before a window has the keyboard, Qt 6.4 falls over under Wayland. Systems tell it in
    // pixels of the screen.
    Connections {
        target: Qt.inputMethod
        function onKeyboardRectangleChanged() { around.pages.keyboardHeight = around.keyboard.keyboardRectangle.height / around.Screen.devicePixelRatio }
        function onVisibleChanged() { around.pages.keyboardHeight = around.keyboard.visible ? around.keyboard.keyboardRectangle.height / around.Screen.devicePixelRatio : 0 }
    }
    Shortcut { sequences: [StandardKey.Back]; onActivated: around.pages.goBack() } // qmllint disable unqualified
    Shortcut { sequence: "Ctrl+1"; onActivated: around.pages.go(Place.Today) }
    Shortcut { sequence: "Ctrl+2"; onActivated: around.pages.go(Place.Session) }
    Shortcut { sequence: "Ctrl+3"; onActivated: around.pages.go(Place.Diary) }
    Shortcut { sequence: "Ctrl+4"; onActivated: around.pages.go(Place.Plan) }

    // Keys that scroll; with the hands under, every key stops.
    component Turn: Shortcut {
        property int key
        enabled: !(around.pages.place === Place.Session && BathModel.busy && BathModel.running.exits === Exits.TapAnywhere)
        onActivated: Router.turned(key)
    }
    Turn { key: Qt.Key_Up; sequence: "Up" }
    Turn { key: Qt.Key_Down; sequence: "Down" }
    Turn { key: Qt.Key_PageUp; sequence: "PgUp" }
    Turn { key: Qt.Key_PageDown; sequence: "PgDown" }
    Turn { key: Qt.Key_Home; sequence: "Home" }
    Turn { key: Qt.Key_End; sequence: "End" }

    // Few sheets are ever opened: each is read and made when it is. The one of trouble may lie over another.
    Loader { id: sheet }
    Loader { id: trouble; readonly property var shown: item }
}
