import QtQuick
import QtQuick.Layouts
import Firstdew

// A session done without the phone, or one of the diary as it really was.
Frame {
    id: page
    canGoBack: true
    readonly property string entry: Router.entry
    readonly property bool mending: entry !== ""
    title: mending ? qsTr("Correct this session") : qsTr("A session I did")
    property int site: Router.treated
    property int day: Router.day
    property int waveform: DiaryModel.lastWaveform(site)
    property bool completed: true
    property int comfort: -1 // not said
    property var skin: []
    readonly property int today: Store.today
    function sites(all: var): var { return all.map(s => ({ value: s, text: Appearance.phrases.treated(s) })) }
    function names(comforts: var): var { return comforts.map(c => ({ value: c, text: Appearance.phrases.comfort(c) })) }
    Component.onCompleted: {
        const before = mending ? DiaryModel.others(day).find(e => e.id === entry) : undefined
        if (!before)
            return
        waveform = before.waveform
        completed = before.completed
        comfort = before.felt ? before.comfort : -1
        skin = before.skin
        note.text = before.note
    }
    OneOf {
        visible: options.length > 1
        label: qsTr("Where")
        options: page.sites(DiaryModel.treated())
        value: page.site
        onChosen: s => { page.site = s; if (!page.mending) page.waveform = DiaryModel.lastWaveform(s) }
    }
    OneOf {
        label: qsTr("When")
        options: [{ value: page.today, text: qsTr("Today") }, { value: page.today - 1, text: qsTr("Yesterday") }]
        value: page.day
        onChosen: d => page.day = d
    }
    DayPick { label: qsTr("Or another day"); day: page.day; last: page.today; onPicked: d => page.day = d }
    OneOf { label: qsTr("To its end?"); options: [{ value: true, text: qsTr("Yes") }, { value: false, text: qsTr("Stopped early") }]; value: page.completed; onChosen: v => page.completed = v }
    OneOf {
        visible: PlanModel.machine.direct && PlanModel.machine.pulsed
        label: qsTr("Current")
        options: [{ value: Waveform.Direct, text: Appearance.phrases.waveform(Waveform.Direct) }, { value: Waveform.Pulsed, text: Appearance.phrases.waveform(Waveform.Pulsed) }]
        value: page.waveform
        onChosen: v => page.waveform = v
    }
    OneOf {
        label: qsTr("How did it feel?")
        options: page.names(Appearance.phrases.comforts)
        value: page.comfort
        onChosen: c => page.comfort = c
    }
    ColumnLayout {
        Layout.fillWidth: true
        spacing: Theme.small
        Label { role: Label.Small; text: qsTr("Skin since then"); Layout.fillWidth: true }
        SomeOf {
            values: Appearance.phrases.skinFindings
            name: value => Appearance.phrases.skin(value)
            chosen: page.skin
            alone: SkinFinding.Fine
            onToggled: now => page.skin = now
        }
    }
    Field { id: note; label: qsTr("Note (optional)") }
    dock: ActionButton {
        kind: ButtonFace.Now
        text: qsTr("Save")
        Layout.fillWidth: true
        onClicked: if (DiaryModel.addSession(page.site, page.day, page.waveform, page.completed, page.comfort, page.skin, note.text, page.entry)) Router.back()
    }
}
