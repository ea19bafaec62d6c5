import QtQuick
import QtQuick.Layouts
import Firstdew

// The body of every page: a title, a scrolling column, what belongs beside it, and below, always in view, the button that
// the page is for. Where two columns have no room, everything stands in one, in this order.
Item {
    id: frame
    property string title: ""
    property int titleRole: canGoBack ? Label.Title : Label.Display // beside the way back there is less room
    property bool canGoBack: false
    readonly property bool twoColumns: width >= Theme.twoColumns
    property bool split: beside.children.length > 0 // there is something to stand beside
    property bool personal: true // of one person, whose name stands there when there are several
    default property alias content: column.data
    property alias aside: beside.data // in the second column
    property alias more: after.data // follows what is beside, or stands below the first column
    property alias header: headerExtra.data
    property alias dock: dockColumn.data
    Accessible.role: Accessible.Pane
    Accessible.name: title
    Rectangle { width: frame.width; height: frame.height; color: Theme.paper }
    // Bound, not anchored: what lies in it is made at the width that it keeps.
    Scroller {
        id: flick
        body: body
        width: frame.width
        height: frame.height - docked.height
        contentHeight: body.y + body.height + Theme.margin
        Item {
            id: body
            readonly property bool two: frame.twoColumns && frame.split
            readonly property real columnWidth: two ? (width - Theme.wide) / 2 : width
            // What stands below something leaves room to it, if there is anything.
            function under(item: Item): real { return item.y + item.implicitHeight + (item.implicitHeight > 0 ? Theme.margin : 0) }
            function endOf(item: Item): real { return item.y + item.implicitHeight }
            x: (flick.width - width) / 2
            y: Theme.margin
            width: Math.min(flick.width - 2 * Theme.margin, two ? 2 * Theme.measure + Theme.wide : Theme.measure)
            height: Math.max(endOf(column), endOf(beside), endOf(after))
            ColumnLayout {
                id: heading
                width: parent.width
                spacing: Theme.margin
                RowLayout {
                    Layout.fillWidth: true
                    spacing: Theme.small
                    Deferred { wanted: frame.canGoBack; part: Part.BackButtonPart; Layout.fillWidth: false }
                    Label {
                        role: frame.titleRole
                        text: frame.title
                        room: body.width - (frame.canGoBack ? Theme.target + Theme.small : 0) - headerExtra.implicitWidth - Theme.small
                        Layout.fillWidth: true
                        Accessible.role: Accessible.Heading
                    }
                    RowLayout { id: headerExtra }
                }
                Label {
                    visible: frame.personal && Store.several
                    role: Label.Small
                    text: frame.personal ? Store.personName : "" // also out of the tree of accessibility
                    Layout.fillWidth: true
                    Layout.topMargin: -Theme.gap
                }
            }
            ColumnLayout {
                id: column
                x: body.two && Appearance.rightToLeft ? body.width - width : 0
                y: body.under(heading)
                width: body.columnWidth
                spacing: Theme.margin
            }
            ColumnLayout {
                id: beside
                x: body.two && !Appearance.rightToLeft ? body.width - width : 0
                y: body.two ? column.y : body.under(column)
                width: body.columnWidth
                spacing: Theme.margin
            }
            ColumnLayout {
                id: after
                x: column.x
                y: body.under(body.two ? column : beside)
                width: body.columnWidth
                spacing: Theme.margin
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
            x: (frame.width - width) / 2
            y: Theme.gap
            width: Math.min(body.width, Theme.measure)
            spacing: Theme.small
        }
    }
    /// Shows its beginning, where what matters now stands.
    function toTop() { flick.contentY = 0 }
}
