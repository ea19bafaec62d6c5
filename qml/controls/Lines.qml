import QtQuick
import QtQuick.Layouts
import Firstdew

// A list of short sentences.
// Not a layout: in Qt 6.4 one within another is measured with lines that are already deleted, and falls over.
Column {
    id: lines
    property var texts: []
    property color ink: Theme.ink
    spacing: Theme.tight
    Layout.fillWidth: true
    Repeater {
        model: lines.texts
        Label { required property string modelData; width: lines.width; text: "– " + modelData; color: lines.ink }
    }
}
