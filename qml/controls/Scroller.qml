import QtQuick
import Firstdew

// A column that scrolls: with a finger, with arrow and page keys, and to whatever gets the keyboard.
Flickable {
    id: scroller
    /// What lies in it, whose parts are brought into view.
    property Item body: contentItem
    property bool inSheet: false
    readonly property real most: Math.max(0, contentHeight - height)
    contentWidth: width
    boundsBehavior: Flickable.StopAtBounds
    clip: true
    onHeightChanged: showFocused() // the on-screen keyboard leaves less room
    function to(y: real) { contentY = Math.max(0, Math.min(y, contentHeight - height)) }
    /// What that key scrolls to; false for other keys.
    function turn(key: int): bool {
        switch (key) {
        case Qt.Key_Up: to(contentY - Theme.target); return true
        case Qt.Key_Down: to(contentY + Theme.target); return true
        case Qt.Key_PageUp: to(contentY - height + Theme.target); return true
        case Qt.Key_PageDown: to(contentY + height - Theme.target); return true
        case Qt.Key_Home: to(0); return true
        case Qt.Key_End: to(contentHeight); return true
        }
        return false
    }
    function show(item: Item) {
        const y = item.mapToItem(body, 0, 0).y
        if (y < contentY || y + item.height > contentY + height)
            to(y - Theme.wide)
    }
    function showFocused() { follow(focused) }
    function follow(item: var) {
        if (item && (item.down === true || (item.down !== undefined && item.focusReason === Qt.MouseFocusReason)))
            return // a finger is on the button: nothing may move away from under that
        for (let p = item; p; p = p.parent)
            if (p === body) { show(item); return }
    }
    readonly property Item focused: Window.activeFocusItem
    onFocusedChanged: showFocused()
    Connections {
        target: Router
        function onTurned(key) { if (scroller.visible && !scroller.inSheet && Router.sheets === 0) scroller.turn(key) }
    }
}
