import QtQuick
import QtQuick.Layouts
import Firstdew

// What a chart shows, in words: a line for each of its parts, opened by a tap.
// Not a layout: in Qt 6.4 one within another's falls over lines that come and go.
Column {
    id: table
    property string about: "" // what the chart is about
    property var rows: () => [] // gives the lines, asked only when they are wanted: [{ what, says }]
    property bool open: false
    property int asked: 0 // changes when the lines are to be asked anew
    function lines(anew) { return open ? rows.call() : [] }
    Layout.fillWidth: true
    spacing: Theme.tight
    Chip {
        text: qsTr("As a table")
        checked: table.open
        Accessible.description: table.about
        onClicked: table.open = !table.open
    }
    Repeater {
        model: table.lines(table.asked)
        Item {
            id: line
            required property var modelData
            width: table.width
            implicitHeight: Math.max(what.implicitHeight, says.implicitHeight)
            Accessible.role: Accessible.StaticText
            Accessible.name: Appearance.phrases.pair(modelData.what, modelData.says)
            Label { id: what; role: Label.Small; anchors.left: parent.left; width: parent.width * 0.55 - Theme.small; text: line.modelData.what; Accessible.ignored: true }
            Label { id: says; anchors { left: what.right; leftMargin: Theme.small; right: parent.right } text: line.modelData.says; Accessible.ignored: true }
        }
    }
}
