import QtQuick
import QtQuick.Layouts
import Firstdew

// One of a few: a name and a row of chips. options: [{ value, text }].
ColumnLayout {
    id: group
    property string label: ""
    property var options: []
    property string value: ""
    signal chosen(string value)
    Layout.fillWidth: true
    Layout.fillHeight: false
    spacing: Theme.small
    Label { role: "label"; text: group.label; visible: text !== ""; Layout.fillWidth: true }
    Wrap {
        Layout.fillWidth: true
        spacing: Theme.small
        Repeater {
            model: group.options
            ChoiceChip {
                required property var modelData
                text: modelData.text
                checked: group.value === modelData.value
                onClicked: group.chosen(modelData.value)
            }
        }
    }
}
