import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Firstdew

// Rises from the foot of the screen for one short matter.
T.Dialog {
    id: sheet
    default property alias content: column.data
    property real away: 0 // how far it still is from where it belongs: 1 below the edge, 0 there
    parent: T.Overlay.overlay
    modal: true
    focus: true
    readonly property real room: parent ? parent.width - Theme.safeLeft - Theme.safeRight : 0
    width: Math.min(room, Theme.measure)
    height: parent ? Math.min(column.implicitHeight + 2 * Theme.margin + docked + Theme.safeBottom, parent.height - Theme.safeTop - Theme.vast) : 0
    bottomPadding: Theme.safeBottom
    x: parent ? Theme.safeLeft + (room - width) / 2 : 0
    y: parent ? parent.height - height : 0
    closePolicy: T.Popup.CloseOnPressOutside // Escape and the way back come to the window
    // The keyboard goes to its first choice, and back to where it was before.
    property Item opener: null
    property int reason: Qt.OtherFocusReason // for which that had the keyboard
    readonly property Item keyboard: parent ? parent.Window.activeFocusItem : null
    function holds(item: var): bool {
        for (let p = item; p; p = p.parent)
            if (p === inside)
                return true
        return false
    }
    function reasonOf(item: var): int { return item?.focusReason ?? Qt.OtherFocusReason }
    function isField(item: var): bool { return item.cursorPosition !== undefined }
    function takeKeyboard() {
        if (holds(keyboard))
            return
        const first = closer.nextItemInFocusChain(true)
        const to = holds(first) && !isField(first) ? first : closer // a field would call the on-screen keyboard
        to.forceActiveFocus(reason === Qt.TabFocusReason || reason === Qt.BacktabFocusReason ? Qt.TabFocusReason : Qt.PopupFocusReason)
    }
    function giveKeyboardBack() {
        if (opener && opener.visible && opener.enabled)
            opener.forceActiveFocus(reason)
        opener = null
    }
    onAboutToShow: { opener = keyboard; reason = reasonOf(keyboard); Router.opened(sheet) }
    onOpened: takeKeyboard()
    onClosed: { Router.closed(sheet); giveKeyboardBack() }
    Component.onDestruction: Router.closed(sheet)
    T.Overlay.modal: Rectangle { color: Theme.veil }
    background: Rectangle {
        color: Theme.card
        radius: Theme.radius
        transform: Translate { y: sheet.away * sheet.height }
        Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: Theme.radius; color: Theme.card }
    }
    property alias dock: dockColumn.data
    readonly property real docked: dockColumn.implicitHeight > 0 ? dockColumn.implicitHeight + Theme.margin : 0
    contentItem: Item {
        id: inside
        transform: Translate { y: sheet.away * sheet.height }
        Keys.onPressed: event => event.accepted = scroller.turn(event.key)
        Scroller {
            id: scroller
            inSheet: true
            width: parent.width
            height: parent.height - sheet.docked
            contentHeight: column.implicitHeight + 2 * Theme.margin
            ColumnLayout {
                id: column
                x: Theme.margin
                y: Theme.margin
                width: parent.width - 2 * Theme.margin
                spacing: Theme.gap
                RowLayout {
                    Layout.fillWidth: true
                    Label { role: Label.Title; text: sheet.title; Layout.fillWidth: true; Accessible.role: Accessible.Heading }
                    IconButton { id: closer; iconName: "close"; text: qsTr("Close"); onClicked: sheet.close() }
                }
            }
        }
        ColumnLayout {
            id: dockColumn
            x: Theme.margin
            y: parent.height - sheet.docked
            width: parent.width - 2 * Theme.margin
            spacing: Theme.small
        }
    }
}
