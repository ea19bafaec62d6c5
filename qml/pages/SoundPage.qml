import QtQuick
import QtQuick.Layouts
import Firstdew

// How a bath is led aloud.
Frame {
    id: page
    readonly property var sounds: [{ value: SoundChoice.Both, text: qsTr("Voice and tones") }, { value: SoundChoice.Voice, text: qsTr("Voice only") }, { value: SoundChoice.Tones, text: qsTr("Tones only") }]
    readonly property bool canSpeak: BathModel.deviceSpeaks
    readonly property bool foreign: BathModel.tongue === Tongue.Foreign

    Component.onCompleted: BathModel.askVoice(Appearance.language)
    // The system's speech service may still be starting.
    Timer { interval: 10000; repeat: true; running: !page.canSpeak; onTriggered: BathModel.askVoice(Appearance.language) }

    canGoBack: true
    title: qsTr("Voice and tones")
    Label { Layout.fillWidth: true; text: qsTr("During a session each step, the minutes and the end are said aloud, so that nobody has to look at the phone.") }
    Label { visible: BathModel.hasBed; Layout.fillWidth: true; text: qsTr("A soft sound runs through the session. If it stops, turn the current to zero and switch the machine off.") }
    Card {
        OneOf {
            label: qsTr("What is heard")
            options: BathModel.canVibrate ? page.sounds.concat([{ value: SoundChoice.None, text: qsTr("Vibration only") }]) : page.sounds
            value: PlanModel.sound
            onChosen: v => { PlanModel.sound = v; if (v === SoundChoice.None) PlanModel.vibration = true }
        }
        Label { visible: PlanModel.sound === SoundChoice.None; Layout.fillWidth: true; text: qsTr("With both hands under water nobody feels the phone: there, voice and tones are heard all the same.") }
        OneOf {
            visible: BathModel.canVibrate && PlanModel.sound !== SoundChoice.None
            label: qsTr("Each step also felt as a vibration")
            options: [{ value: true, text: qsTr("Yes") }, { value: false, text: qsTr("No") }]
            value: PlanModel.vibration
            onChosen: v => PlanModel.vibration = v
        }
        OneOf {
            visible: BathModel.screenReader || PlanModel.pedal
            label: qsTr("A pedal or a switch stops a session, like a key")
            options: [{ value: true, text: qsTr("Yes") }, { value: false, text: qsTr("No") }]
            value: PlanModel.pedal
            onChosen: v => PlanModel.pedal = v
        }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("A reading above the limit sounds the alarm whatever is chosen here. The phone cannot see the current, only what is entered.") }
        OneOf {
            label: qsTr("Which voice")
            options: [{ value: VoiceChoice.Recorded, text: qsTr("Recorded voice") }, { value: VoiceChoice.Device, text: qsTr("Voice of this device") }]
            value: PlanModel.voice
            closed: page.canSpeak ? [] : [VoiceChoice.Device]
            onChosen: v => PlanModel.voice = v
        }
        Label { visible: !page.canSpeak; role: Label.Small; Layout.fillWidth: true; text: qsTr("You can choose the voice of this phone once it offers one for your language.") }
        Label {
            visible: BathModel.tongue === Tongue.Device
            role: Label.Small
            Layout.fillWidth: true
            text: qsTr("The recorded voice does not speak your language. The voice of this device speaks in its place: test the volume, and hear whether you understand it.")
        }
        Label {
            visible: page.foreign && !(page.canSpeak && PlanModel.voice === VoiceChoice.Device)
            role: Label.Small
            Layout.fillWidth: true
            text: page.canSpeak ? qsTr("The recorded voice speaks English. The voice of this device speaks your language.") : qsTr("The voice speaks English so far.")
        }
        Label { visible: page.foreign; role: Label.Small; Layout.fillWidth: true; text: qsTr("You can follow a session by the tones and on the screen. Both hands under water stays closed until a voice is known to speak your language.") }
        ActionButton { text: qsTr("Test the volume"); Layout.fillWidth: true; onClicked: BathModel.checkVolume() }
    }
}
