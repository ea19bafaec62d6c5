import QtQuick
import QtQuick.Layouts
import Firstdew

// Drawings side by side, in the order in which they are done, as large as their room allows.
Item {
    id: row
    property var subjects: []
    property real most: Theme.drawing * 1.5
    readonly property real side: Math.max(1, Math.min(most, (width - Theme.small * Math.max(0, subjects.length - 1)) / Math.max(1, subjects.length), height > 0 ? height : most))
    implicitHeight: Math.min(most, (width - Theme.small * Math.max(0, subjects.length - 1)) / Math.max(1, subjects.length))
    Layout.fillWidth: true
    Row {
        anchors.centerIn: parent
        spacing: Theme.small
        Repeater {
            model: row.subjects.length // the drawings stay while the page is told anew ten times a second
            Drawing { required property int index; subject: row.subjects[index] ?? Subject.MachineOff; width: row.side; height: row.side }
        }
    }
}
