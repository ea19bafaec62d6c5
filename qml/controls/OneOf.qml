import QtQuick
import QtQuick.Layouts
import Firstdew

// One of a few: a name and a row of chips. options: [{ value, text }]; those whose value is in `closed` cannot be had now.
ColumnLayout {
    id: group
    property string label: ""
    property var options: []
    property var value // of one of the options; none of them: nothing is chosen
    property var closed: []
    /// What a screen reader says before the choices, where no label stands above them.
    property string question: label
    signal chosen(var value)
    Layout.fillWidth: true
    Layout.fillHeight: false
    spacing: Theme.small
    Accessible.role: Accessible.Grouping
    Accessible.name: question
    Accessible.ignored: question === ""
    Label { role: Label.Small; text: group.label; visible: text !== ""; Layout.fillWidth: true; Accessible.ignored: true }
    Wrap {
        Layout.fillWidth: true
        spacing: Theme.small
        Repeater {
            model: group.options
            ChoiceChip {
                required property var modelData
                text: modelData.text
                checked: group.value === modelData.value
                enabled: !group.closed.includes(modelData.value)
                onClicked: group.chosen(modelData.value)
            }
        }
    }
}
