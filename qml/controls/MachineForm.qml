import QtQuick
import QtQuick.Layouts
import Firstdew

// What the machine can do.
ColumnLayout {
    id: form
    property alias name: name.text
    property bool direct: true
    property bool pulsed: false
    property int swap: PolaritySwap.Leads
    property bool remote: false
    property int power: PowerSource.Cells
    readonly property bool complete: direct || pulsed
    function save() { return PlanModel.setMachine(name.text, direct, pulsed, swap, remote, power, pad.value) }
    Layout.fillWidth: true
    spacing: Theme.margin
    Component.onCompleted: {
        name.text = PlanModel.machine.name
        direct = PlanModel.machine.direct
        pulsed = PlanModel.machine.pulsed
        swap = PlanModel.machine.swap
        remote = PlanModel.machine.remote
        power = PlanModel.machine.power
        pad.set(PlanModel.machine.pad)
    }
    Field { id: name; label: qsTr("Make or model"); hint: qsTr("Optional") }
    ColumnLayout {
        Layout.fillWidth: true
        spacing: Theme.small
        Label { role: Label.Small; text: qsTr("Current it gives (see its instructions)"); Layout.fillWidth: true }
        Wrap {
            Layout.fillWidth: true
            spacing: Theme.small
            Chip { text: Appearance.phrases.waveform(Waveform.Direct); checked: form.direct; onClicked: form.direct = !form.direct }
            Chip { text: Appearance.phrases.waveform(Waveform.Pulsed); checked: form.pulsed; onClicked: form.pulsed = !form.pulsed }
        }
        Label { visible: !form.complete; color: Theme.danger; text: qsTr("Choose at least one."); Layout.fillWidth: true }
    }
    Field {
        id: pad
        readonly property real value: Appearance.phrases.numberIn(text)
        function set(area) { text = area > 0 ? Number(area).toLocaleString(Qt.locale(), "f", 0) : "" }
        visible: form.pulsed
        label: qsTr("Size of one armpit pad in cm² (length × width)")
        hint: qsTr("Optional. Until it is entered, the limit for armpits stays low.")
        inputMethodHints: Qt.ImhFormattedNumbersOnly
    }
    OneOf { label: qsTr("How is polarity reversed?"); options: [{ value: PolaritySwap.Leads, text: qsTr("By swapping the leads") }, { value: PolaritySwap.Switch, text: qsTr("By a switch") }, { value: PolaritySwap.Pads, text: qsTr("By exchanging the armpit pads") }]; value: form.swap; onChosen: v => form.swap = v }
    OneOf { label: qsTr("Is there a remote control?"); options: [{ value: false, text: qsTr("No") }, { value: true, text: qsTr("Yes") }]; value: form.remote; onChosen: v => form.remote = v }
    OneOf { label: qsTr("What does it run on?"); options: [{ value: PowerSource.Cells, text: qsTr("Batteries") }, { value: PowerSource.Mains, text: qsTr("Mains adapter") }]; value: form.power; onChosen: v => form.power = v }
}
