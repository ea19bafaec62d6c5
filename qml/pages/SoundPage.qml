import QtQuick
import QtQuick.Layouts
import Firstdew

// How a bath is led aloud.
Frame {
    readonly property bool canSpeak: BathModel.deviceSpeaks

    Component.onCompleted: BathModel.askVoice(Appearance.language)
    // The system's speech service may still be starting.
    Timer { interval: 10000; repeat: true; running: !canSpeak; onTriggered: BathModel.askVoice(Appearance.language) }

    canGoBack: true
    title: qsTr("Voice and tones")
    Label { Layout.fillWidth: true; text: qsTr("During a bath each step, the minutes and the end are told aloud, so that nobody has to look at the phone.") }
    Card {
        OneOf {
            label: qsTr("What is heard")
            options: [{ value: "both", text: qsTr("Voice and tones") }, { value: "voice", text: qsTr("Voice only") }, { value: "tones", text: qsTr("Tones only") }]
                     .concat(BathModel.canVibrate ? [{ value: "none", text: qsTr("Vibration only") }] : [])
            value: PlanModel.sound
            onChosen: v => { Store.setPreference("sound", v); if (v === "none") PlanModel.vibration = true }
        }
        Label { visible: PlanModel.sound === "none"; Layout.fillWidth: true; text: qsTr("With both hands under water nobody feels the phone: there, voice and tones are heard all the same.") }
        OneOf {
            visible: BathModel.canVibrate && PlanModel.sound !== "none"
            label: qsTr("Each step also felt as a vibration")
            options: [{ value: "on", text: qsTr("Yes") }, { value: "off", text: qsTr("No") }]
            value: PlanModel.vibration ? "on" : "off"
            onChosen: v => PlanModel.vibration = v === "on"
        }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("A reading above the limit sounds the alarm whatever is chosen here. The phone cannot see the current, only what is entered.") }
        OneOf {
            label: qsTr("Whose voice")
            options: [{ value: "recorded", text: qsTr("Recorded voice") }, { value: "device", text: qsTr("Voice of this device") }]
            value: PlanModel.voice
            closed: canSpeak ? [] : ["device"]
            onChosen: v => Store.setPreference("voice", v)
        }
        Label { visible: !canSpeak; role: Label.Small; Layout.fillWidth: true; text: qsTr("The voice of this device can be chosen once the device has named one for your language.") }
        Label {
            visible: Appearance.language !== "en" && !(canSpeak && PlanModel.voice === "device")
            role: Label.Small
            Layout.fillWidth: true
            text: canSpeak ? qsTr("The recorded voice speaks English. The voice of this device speaks your language.") : qsTr("The voice speaks English so far.")
        }
        ActionButton { text: qsTr("Check how loud it is"); Layout.fillWidth: true; onClicked: BathModel.checkVolume() }
    }
}
