import QtQuick
import QtQuick.Layouts
import Firstdew

// A sheet of lighter paper that holds things which belong together.
Rectangle {
    id: card
    default property alias content: column.data
    enum Kind { Plain, Now, Danger }
    property int kind: Card.Plain
    property alias spacing: column.spacing
    property real margin: Theme.margin
    Layout.fillWidth: true
    implicitHeight: column.implicitHeight + 2 * margin
    implicitWidth: column.implicitWidth + 2 * margin
    radius: Theme.radius
    color: kind === Card.Now ? Theme.nowWash : kind === Card.Danger ? Theme.dangerWash : Theme.card
    border.width: kind === Card.Plain ? Theme.hair : 2
    border.color: kind === Card.Now ? Theme.now : kind === Card.Danger ? Theme.danger : Theme.line
    ColumnLayout {
        id: column
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: card.margin }
        spacing: Theme.gap
    }
}
