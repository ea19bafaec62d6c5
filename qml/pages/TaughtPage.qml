import QtQuick
import QtQuick.Layouts
import Firstdew

// A session that somebody watched and taught: who, what was seen, and the level agreed to begin with at home.
Frame {
    id: page
    canGoBack: true
    title: qsTr("A taught session")
    readonly property var sites: DiaryModel.treated()
    property int site: sites.includes(Router.treated) ? Router.treated : sites[0] ?? Site.Hands
    property int day: Store.today
    property var ticks: []
    readonly property var waveforms: TaughtModel.waveforms(site)
    property int chosen: -1
    readonly property int waveform: waveforms.includes(chosen) ? chosen : waveforms.includes(DiaryModel.lastWaveform(site)) ? DiaryModel.lastWaveform(site) : waveforms[0] ?? Waveform.Pulsed
    readonly property real limit: TaughtModel.limit(site, waveform)
    property real level: 0 // none agreed
    readonly property real step: 0.5
    onLimitChanged: level = Math.min(level, limit)
    function named(sites: var): var { return sites.map(s => ({ value: s, text: Appearance.phrases.treated(s) })) }
    function currents(all: var): var { return all.map(w => ({ value: w, text: Appearance.phrases.waveform(w) })) }
    function change(by) { level = level > 0 ? Math.max(0, Math.min(limit, level + by)) : by > 0 ? TaughtModel.usualLevel(site, waveform) : 0 }
    function toggle(tick) { ticks = ticks.includes(tick) ? ticks.filter(t => t !== tick) : ticks.concat([tick]) }
    Component.onCompleted: TaughtModel.forgetRefusal()
    Label { Layout.fillWidth: true; text: qsTr("Did somebody who knows the treatment watch a session? Mark together what they saw. It goes onto the summary.") }
    Card {
        OneOf { visible: page.sites.length > 1; label: qsTr("Where"); options: page.named(page.sites); value: page.site; onChosen: s => page.site = s }
        DayPick { label: qsTr("When"); day: page.day; last: Store.today; onPicked: day => page.day = day }
        Field { id: who; label: qsTr("Who watched"); hint: qsTr("A name or a role, for example: the nurse"); onEdited: TaughtModel.forgetRefusal() }
    }
    Heading { text: qsTr("What they saw") }
    ColumnLayout {
        Layout.fillWidth: true
        spacing: Theme.small
        Repeater {
            model: TaughtModel.ticks
            TickRow { required property int modelData; text: TaughtModel.tickName(modelData, page.site); checked: page.ticks.includes(modelData); onClicked: page.toggle(modelData) }
        }
    }
    Card {
        OneOf { visible: page.waveforms.length > 1; label: qsTr("Current"); options: page.currents(page.waveforms); value: page.waveform; onChosen: w => page.chosen = w }
        Stepper {
            label: qsTr("Level agreed to begin with at home")
            shown: page.level > 0 ? Appearance.phrases.milliamps(page.level) : qsTr("None agreed")
            onLess: page.change(-page.step)
            onMore: page.change(page.step)
        }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("%1, limit %2").arg(Appearance.phrases.waveform(page.waveform)).arg(Appearance.phrases.milliamps(page.limit)) }
    }
    Repeater {
        model: TaughtModel.taught
        Card {
            id: card
            required property taughtLine modelData
            RowLayout {
                Layout.fillWidth: true
                Label { role: Label.Strong; Layout.fillWidth: true; text: card.modelData.text }
                IconButton { iconName: "close"; text: qsTr("Remove %1").arg(card.modelData.text); onClicked: DiaryModel.withdraw(card.modelData.id) }
            }
            Lines { visible: card.modelData.ticks.length > 0; texts: card.modelData.ticks }
        }
    }
    dock: [
        Label { visible: text !== ""; role: Label.Strong; color: Theme.danger; text: TaughtModel.refusal; Layout.fillWidth: true },
        ActionButton {
            kind: ButtonFace.Now
            text: qsTr("Save")
            Layout.fillWidth: true
            enabled: who.text.trim() !== "" && (page.ticks.length > 0 || page.level > 0)
            onClicked: if (TaughtModel.add(page.site, page.day, who.text, page.ticks, page.waveform, page.level)) Router.back()
        }
    ]
}
