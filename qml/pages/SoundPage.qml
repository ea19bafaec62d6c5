import QtQuick
import QtQuick.Layouts
import Firstdew

// How a bath is led aloud.
Frame {
    canGoBack: true
    title: qsTr("Voice and tones")
    Label { Layout.fillWidth: true; text: qsTr("During a bath each step, the minutes and the end are told aloud, so that nobody has to look at the phone.") }
    Card {
        OneOf {
            label: qsTr("What is heard")
            options: [{ value: "both", text: qsTr("Voice and tones") }, { value: "voice", text: qsTr("Voice only") }, { value: "tones", text: qsTr("Tones only") }]
            value: PlanModel.sound
            onChosen: v => Store.setPreference("sound", v)
        }
        Label { role: "label"; Layout.fillWidth: true; text: qsTr("The alarm for a reading above the limit is always heard.") }
        Label { visible: Look.language !== "en"; role: "label"; Layout.fillWidth: true; text: qsTr("The voice speaks English so far.") }
        ActionButton { text: qsTr("Check how loud it is"); Layout.fillWidth: true; onClicked: BathModel.checkVolume() }
    }
}
