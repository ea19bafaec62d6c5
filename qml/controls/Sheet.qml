import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Firstdew

// Rises from the foot of the screen for one short matter.
T.Popup {
    id: sheet
    property string title: ""
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
    onAboutToShow: Router.opened(sheet)
    onClosed: Router.closed(sheet)
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
        transform: Translate { y: sheet.away * sheet.height }
        Flickable {
            width: parent.width
            height: parent.height - sheet.docked
            contentHeight: column.implicitHeight + 2 * Theme.margin
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            ColumnLayout {
                id: column
                x: Theme.margin
                y: Theme.margin
                width: parent.width - 2 * Theme.margin
                spacing: Theme.gap
                RowLayout {
                    Layout.fillWidth: true
                    Label { role: Label.Title; text: sheet.title; Layout.fillWidth: true; Accessible.role: Accessible.Heading }
                    IconButton { iconName: "close"; text: qsTr("Close"); onClicked: sheet.close() }
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
