import QtQuick
import QtQuick.Layouts
import Firstdew

// The body of every page: a title and one scrolling column, and below it, always in view, the button that the page is for.
Item {
    id: frame
    property string title: ""
    property int titleRole: canGoBack ? Label.Title : Label.Display // beside the way back there is less room
    property bool canGoBack: false
    property bool personal: true // of one person, whose name stands there when there are several
    default property alias content: column.data
    property alias header: headerExtra.data
    property alias dock: dockColumn.data
    Accessible.role: Accessible.Pane
    Accessible.name: title
    Rectangle { width: frame.width; height: frame.height; color: Theme.paper }
    // Bound, not anchored: what lies in it is made at the width that it keeps.
    Flickable {
        id: flick
        width: frame.width
        height: frame.height - docked.height
        contentHeight: column.implicitHeight + 2 * Theme.margin
        contentWidth: width
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        onHeightChanged: frame.showFocused() // the on-screen keyboard leaves less room
        ColumnLayout {
            id: column
            width: Math.min(flick.width - 2 * Theme.margin, Theme.measure)
            x: (flick.width - width) / 2
            y: Theme.margin
            spacing: Theme.margin
            RowLayout {
                Layout.fillWidth: true
                spacing: Theme.small
                Deferred { wanted: frame.canGoBack; part: Part.BackButtonPart; Layout.fillWidth: false }
                Label {
                    role: frame.titleRole
                    text: frame.title
                    Layout.fillWidth: true
                    Accessible.role: Accessible.Heading
                }
                RowLayout { id: headerExtra }
            }
            Label {
                visible: frame.personal && Store.several
                role: Label.Small
                text: Store.personName
                Layout.fillWidth: true
                Layout.topMargin: -Theme.gap
            }
        }
    }
    Rectangle {
        id: docked
        readonly property bool used: dockColumn.implicitHeight > 0
        y: frame.height - height
        width: frame.width
        height: used ? dockColumn.implicitHeight + 2 * Theme.gap : 0
        color: Theme.paper
        Rectangle { visible: docked.used; width: parent.width; height: Theme.hair; color: Theme.line }
        ColumnLayout {
            id: dockColumn
            x: column.x
            y: Theme.gap
            width: column.width
            spacing: Theme.small
        }
    }
    /// Shows its beginning, where what matters now stands.
    function toTop() { flick.contentY = 0 }
    /// Brings the part that holds the keyboard into view.
    function show(item) {
        const y = item.mapToItem(column, 0, 0).y
        if (y < flick.contentY || y + item.height > flick.contentY + flick.height)
            flick.contentY = Math.max(0, Math.min(y - Theme.wide, flick.contentHeight - flick.height))
    }
    function showFocused() { follow(focused) }
    function follow(item) {
        if (item && (item.down === true || (item.down !== undefined && item.focusReason === Qt.MouseFocusReason)))
            return // a finger is on the button: nothing may move away from under that
        for (let p = item; p; p = p.parent)
            if (p === column) { frame.show(item); return }
    }
    readonly property Item focused: Window.activeFocusItem
    onFocusedChanged: showFocused()
}
