import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    readonly property var a: BathModel.afterwards
    property string comfort: "comfortable"
    property real comfortable: 0
    property var skin: ["fine"]
    readonly property real step: 0.5
    title: a.completed ? qsTr("Done") : qsTr("Stopped")
    Component.onCompleted: comfortable = a.comfortable || 0
    Card {
        Label { role: "strong"; Layout.fillWidth: true; text: qsTr("Machine off, current at zero, then lift out.") }
        Label { Layout.fillWidth: true; text: qsTr("Dry your skin and the kit completely. Take the batteries out. Look at the skin tomorrow.") }
        Label { visible: page.a.cells === 1; role: "strong"; color: Theme.nowText; Layout.fillWidth: true; text: qsTr("The batteries are near their end.") }
    }
    OneOf {
        label: qsTr("How did it feel?")
        options: ["nothing-felt", "comfortable", "strong", "unpleasant", "painful"].map(c => ({ value: c, text: Look.words.comfort(c) }))
        value: page.comfort
        onChosen: c => page.comfort = c
    }
    Stepper {
        label: qsTr("Highest comfortable reading")
        shown: Look.words.milliamps(page.comfortable)
        onLess: page.comfortable = Math.max(0, page.comfortable - page.step)
        onMore: page.comfortable = Math.min(page.a.limit, page.comfortable + page.step)
    }
    ColumnLayout {
        Layout.fillWidth: true
        spacing: Theme.small
        Label { role: "label"; text: qsTr("Skin now"); Layout.fillWidth: true }
        SomeOf {
            tokens: Look.words.skinFindings
            name: token => Look.words.skin(token)
            chosen: page.skin
            alone: "fine"
            onToggled: now => page.skin = now.length > 0 ? now : ["fine"]
        }
    }
    Label {
        visible: page.skin.includes("redness") || page.skin.includes("itch")
        Layout.fillWidth: true
        role: "label"
        text: qsTr("Irritated skin settles with rest and plain moisturiser. Ask a pharmacist if it does not.")
    }
    Label {
        visible: page.skin.includes("blister") || page.skin.includes("burn")
        Layout.fillWidth: true
        role: "strong"
        color: Theme.danger
        text: qsTr("No further bath until a clinician has seen it. Seek help if it is painful or large.")
    }
    Field { id: note; label: qsTr("Note, if you wish") }
    ActionButton { kind: "now"; text: qsTr("Keep in the diary"); Layout.fillWidth: true; onClicked: BathModel.save(page.comfort, page.comfortable, page.skin, note.text) }
}
