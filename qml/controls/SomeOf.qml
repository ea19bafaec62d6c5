import QtQuick
import QtQuick.Layouts
import Firstdew

// Some values of a closed set, each on or off. `values` and `name` come from Appearance.phrases; what is on is the page's.
Wrap {
    id: choice
    property var values: []
    property var chosen: []
    property var name: value => ""
    property int alone: -1 // the value that goes with no other
    signal toggled(var now)
    function otherwise(value) {
        if (chosen.includes(value))
            return chosen.filter(t => t !== value)
        return value === alone ? [value] : chosen.filter(t => t !== alone).concat([value])
    }
    Layout.fillWidth: true
    spacing: Theme.small
    Repeater {
        model: choice.values
        Chip {
            required property int modelData
            text: choice.name(modelData)
            checked: choice.chosen.includes(modelData)
            onClicked: choice.toggled(choice.otherwise(modelData))
        }
    }
}
