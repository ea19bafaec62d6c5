import QtQuick
import QtQuick.Layouts
import Firstdew

// What everybody has to know beforehand.
ColumnLayout {
    Layout.fillWidth: true
    spacing: Theme.gap
    Repeater {
        model: Appearance.phrases.cautions()
        LeadLine { required property string modelData; iconName: "warning"; iconColor: Theme.danger; text: modelData }
    }
}
