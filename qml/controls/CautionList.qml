import QtQuick
import QtQuick.Layouts
import Firstdew

// What everybody has to know beforehand.
ColumnLayout {
    Layout.fillWidth: true
    spacing: Theme.gap
    Repeater {
        model: [qsTr("Firstdew is not a medical device and makes no diagnosis. Follow your machine's instructions, local rules and your clinician."),
                qsTr("Never go above the limits. If it hurts, lower the current or stop."),
                qsTr("No bath while one of the health questions says stop."),
                qsTr("Children only with medical advice and an adult beside them."),
                qsTr("Burns, blisters, faintness or palpitations: stop and seek help."),
                qsTr("Keep leads and water away from mains electricity."),
                qsTr("Use only the machine made for it to drive the current.")]
        RowLayout {
            id: line
            required property string modelData
            Layout.fillWidth: true
            spacing: Theme.gap
            Icon { name: "warning"; color: Theme.danger; Layout.preferredWidth: Theme.icon; Layout.preferredHeight: Theme.icon; Layout.alignment: Qt.AlignTop }
            Label { text: line.modelData; Layout.fillWidth: true }
        }
    }
}
