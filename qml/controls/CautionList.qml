import QtQuick
import QtQuick.Layouts
import Firstdew

// What everybody has to know beforehand.
ColumnLayout {
    Layout.fillWidth: true
    spacing: Theme.gap
    Repeater {
        model: Look.words.cautions()
        RowLayout {
            id: line
            required property string modelData
            Layout.fillWidth: true
            spacing: Theme.gap
            Icon { name: "warning"; color: Theme.danger; Layout.preferredWidth: Theme.icon; Layout.preferredHeight: Theme.icon; Layout.alignment: Qt.AlignTop }
            Label { text: line.modelData; Layout.fillWidth: true; Layout.preferredWidth: 1 }
        }
    }
}
