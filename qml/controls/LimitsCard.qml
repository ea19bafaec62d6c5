import QtQuick
import QtQuick.Layouts
import Firstdew

// The limits in force, who set each, and which skin counts.
Card {
    Heading { text: qsTr("Limits") }
    Label {
        visible: PlanModel.person.birth === ""
        Layout.fillWidth: true
        text: qsTr("Your birthday is not set, so the lower limits for children count.")
    }
    Label { visible: PlanModel.person.child && PlanModel.person.adult !== ""; role: Label.Strong; Layout.fillWidth: true; text: qsTr("Adult beside the child: %1").arg(PlanModel.person.adult) }
    Repeater {
        model: PlanModel.limits
        // Not a layout: in Qt 6.4 one within another goes round in circles over lines that wrap.
        Column {
            id: limit
            required property limitLine modelData
            Layout.fillWidth: true
            spacing: Theme.tight
            Flow {
                width: parent.width
                spacing: Theme.small
                Label { width: parent.width - (Theme.largeText ? 0 : most.implicitWidth + parent.spacing); text: "%1 · %2".arg(Appearance.phrases.treated(limit.modelData.site)).arg(Appearance.phrases.waveform(limit.modelData.waveform)) }
                Label { id: most; width: Theme.largeText ? parent.width : implicitWidth; role: Label.Strong; text: limit.modelData.allowed ? qsTr("at most %1").arg(Appearance.phrases.milliamps(limit.modelData.limit)) : qsTr("not used") }
            }
            Label { role: Label.Small; width: parent.width; text: limit.modelData.source }
            Label { visible: text !== ""; role: Label.Small; width: parent.width; text: limit.modelData.watch }
            Label { visible: text !== ""; role: Label.Small; width: parent.width; text: limit.modelData.area }
        }
    }
}
