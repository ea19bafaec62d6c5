import QtQuick
import QtQuick.Layouts
import Firstdew

// What the machine can do.
ColumnLayout {
    id: form
    property alias name: name.text
    property bool direct: true
    property bool pulsed: false
    property string swap: "leads"
    property bool remote: false
    property string power: "cells"
    readonly property bool complete: direct || pulsed
    function save() { return PlanModel.setMachine(name.text, direct, pulsed, swap, remote, power) }
    Layout.fillWidth: true
    spacing: Theme.margin
    Component.onCompleted: {
        const m = PlanModel.machine
        name.text = m.name
        direct = m.direct
        pulsed = m.pulsed
        swap = m.swap
        remote = m.remote
        power = m.power
    }
    Field { id: name; label: qsTr("What it says on the machine"); hint: qsTr("May stay empty.") }
    ColumnLayout {
        Layout.fillWidth: true
        spacing: Theme.small
        Label { role: Label.Small; text: qsTr("Current it gives (see its instructions)"); Layout.fillWidth: true }
        Wrap {
            Layout.fillWidth: true
            spacing: Theme.small
            Chip { text: Appearance.phrases.waveform("direct"); checked: form.direct; onClicked: form.direct = !form.direct }
            Chip { text: Appearance.phrases.waveform("pulsed"); checked: form.pulsed; onClicked: form.pulsed = !form.pulsed }
        }
        Label { visible: !form.complete; color: Theme.danger; text: qsTr("Choose at least one."); Layout.fillWidth: true }
    }
    OneOf { label: qsTr("How is polarity reversed?"); options: [{ value: "leads", text: qsTr("By swapping the leads") }, { value: "switch", text: qsTr("By a switch") }]; value: form.swap; onChosen: v => form.swap = v }
    OneOf { label: qsTr("Is there a remote control?"); options: [{ value: "no", text: qsTr("No") }, { value: "yes", text: qsTr("Yes") }]; value: form.remote ? "yes" : "no"; onChosen: v => form.remote = v === "yes" }
    OneOf { label: qsTr("What does it run on?"); options: [{ value: "cells", text: qsTr("Batteries") }, { value: "mains", text: qsTr("Mains adapter") }]; value: form.power; onChosen: v => form.power = v }
}
