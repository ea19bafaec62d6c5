import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    readonly property afterPage a: BathModel.afterwards
    // What was not entered stays empty: the next session builds on it.
    property int comfort: -1 // not said
    property real comfortable: a.comfortable
    property bool touched: false
    readonly property bool said: touched || comfort === Comfort.NothingFelt || comfort === Comfort.Comfortable || comfort === Comfort.Strong
    property var skin: []
    readonly property real step: 0.5
    readonly property var offered: TaughtModel.offered
    title: a.completed ? qsTr("Done") : qsTr("Stopped")
    function joined(parts: var, by: string): string { return parts.filter(part => part).join(by) }
    function names(comforts: var): var { return comforts.map(c => ({ value: c, text: Appearance.phrases.comfort(c) })) }
    function change(by) {
        if (said && comfortable > 0)
            comfortable = Math.max(step, Math.min(a.limit, comfortable + by))
        else
            comfortable = comfortable > 0 ? comfortable : a.target
        touched = true
    }
    Label { visible: text !== ""; role: Label.Strong; Layout.fillWidth: true; text: page.a.why }
    Card {
        Label { role: Label.Strong; Layout.fillWidth: true; text: page.a.pads ? qsTr("Current at zero, machine off, then take the pads off.") : qsTr("Current at zero, machine off. Then take your hands or feet out.") }
        Label { Layout.fillWidth: true; text: page.joined([qsTr("Dry your skin and the kit completely."), page.a.cells ? qsTr("Take the batteries out.") : "", qsTr("Look at the skin tomorrow.")], " ") }
        Label { visible: BathModel.cellsLow; role: Label.Strong; color: Theme.nowText; Layout.fillWidth: true; text: qsTr("The batteries are nearly empty.") }
    }
    OneOf {
        label: qsTr("How did it feel?")
        options: page.names(Appearance.phrases.comforts)
        value: page.comfort
        onChosen: c => page.comfort = c
    }
    ActionButton {
        visible: page.comfort === Comfort.NothingFelt && !AppLock.sessionOnly
        kind: ButtonFace.Quiet
        text: qsTr("The current would not rise")
        onClicked: Router.openTechnique(BathModel.site)
    }
    Stepper {
        label: qsTr("Highest comfortable reading")
        shown: page.said && page.comfortable > 0 ? Appearance.phrases.milliamps(page.comfortable) : qsTr("Not entered")
        onLess: page.change(-page.step)
        onMore: page.change(page.step)
    }
    ColumnLayout {
        Layout.fillWidth: true
        spacing: Theme.small
        Label { role: Label.Small; text: qsTr("Skin now"); Layout.fillWidth: true }
        SomeOf {
            values: Appearance.phrases.skinFindings
            name: value => Appearance.phrases.skin(value)
            chosen: page.skin
            alone: SkinFinding.Fine
            onToggled: now => page.skin = now
        }
    }
    Label {
        visible: page.skin.includes(SkinFinding.Redness) || page.skin.includes(SkinFinding.Itch)
        Layout.fillWidth: true
        role: Label.Small
        text: qsTr("Irritated skin settles with rest and plain moisturiser. A mild hydrocortisone cream can help: ask a pharmacist.")
    }
    Label {
        visible: page.skin.includes(SkinFinding.Blister) || page.skin.includes(SkinFinding.Burn)
        Layout.fillWidth: true
        role: Label.Strong
        color: Theme.danger
        text: qsTr("No further session there until a clinician has seen it. Seek help if it is painful or large.")
    }
    Field { id: note; label: qsTr("Note (optional)") }
    Card {
        visible: page.offered.includes(BathModel.site) && !AppLock.sessionOnly
        Label { Layout.fillWidth: true; text: qsTr("Did somebody teach you this session?") }
        ActionButton { kind: ButtonFace.Quiet; text: qsTr("Mark it"); onClicked: Router.openTaught(BathModel.site) }
    }
    dock: [
        Label { visible: page.skin.length === 0; role: Label.Small; Layout.fillWidth: true; text: qsTr("Look at your skin and say how it is.") },
        ActionButton { kind: ButtonFace.Now; enabled: page.skin.length > 0; text: qsTr("Save in the diary"); Layout.fillWidth: true; onClicked: BathModel.save(page.comfort, page.said ? page.comfortable : 0, page.skin, note.text) }
    ]
}
