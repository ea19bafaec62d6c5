import QtQuick
import QtQuick.Layouts
import Firstdew

// A sheet of lighter paper that holds things which belong together.
Rectangle {
    id: card
    default property alias content: column.data
    property string kind: "plain" // plain, now, danger
    property alias spacing: column.spacing
    Layout.fillWidth: true
    implicitHeight: column.implicitHeight + 2 * Theme.margin
    implicitWidth: column.implicitWidth + 2 * Theme.margin
    radius: Theme.radius
    color: kind === "now" ? Theme.nowWash : kind === "danger" ? Theme.dangerWash : Theme.card
    border.width: kind === "plain" ? Theme.hair : 2
    border.color: kind === "now" ? Theme.now : kind === "danger" ? Theme.danger : Theme.line
    ColumnLayout {
        id: column
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: Theme.margin }
        spacing: Theme.gap
    }
}
