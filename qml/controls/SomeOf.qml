import QtQuick
import QtQuick.Layouts
import Firstdew

// Some words of a closed set, each on or off. `tokens` and `name` come from Appearance.phrases; what is on is the page's.
Wrap {
    id: choice
    property var tokens: []
    property var chosen: []
    property var name: token => token
    property string alone: "" // goes with no other
    signal toggled(var now)
    function otherwise(token) {
        if (chosen.includes(token))
            return chosen.filter(t => t !== token)
        return token === alone ? [token] : chosen.filter(t => t !== alone).concat([token])
    }
    Layout.fillWidth: true
    spacing: Theme.small
    Repeater {
        model: choice.tokens
        Chip {
            required property string modelData
            text: choice.name(modelData)
            checked: choice.chosen.includes(modelData)
            onClicked: choice.toggled(choice.otherwise(modelData))
        }
    }
}
