import QtQuick
import QtQuick.Layouts
import Firstdew

// One day: everything noted, to be mended; what stood before is kept beside it.
Frame {
    id: page
    canGoBack: true
    property int day: Router.day
    title: Appearance.phrases.dayFull(day)
    titleRole: Label.Title
    property int looks: 0 // counts the changes of the diary, so that the day is read anew
    Connections { target: DiaryModel; function onChanged() { page.looks += 1 } }
    function entries(looks: int): var { return DiaryModel.others(day) }
    function noted(site: int, looks: int): notedLevel { return DiaryModel.noted(site, day) }
    function skinNames(skin: var): string { return Appearance.phrases.listed(skin.map(s => Appearance.phrases.within(Appearance.phrases.skin(s)))) }
    function weighed(e: dayEntry): string {
        return qsTr("Weighing: %1 in %2, %3 a minute").arg(Appearance.phrases.milligrams(e.gain, 0)).arg(Appearance.phrases.minutes(e.minutes)).arg(Appearance.phrases.milligrams(e.rate, 1))
               + (e.judged === SweatJudged.Above ? "\n" + qsTr("More than the usual upper limit of healthy people.") : e.judged === SweatJudged.Usual ? "\n" + qsTr("Within the usual range of healthy people.") : "")
    }
    GridLayout {
        Layout.fillWidth: true
        columns: Theme.largeText ? 1 : 2
        columnSpacing: Theme.small
        rowSpacing: Theme.small
        ActionButton { text: qsTr("Day before"); Layout.fillWidth: true; Layout.preferredWidth: 1; onClicked: page.day -= 1 }
        ActionButton { text: qsTr("Day after"); enabled: page.day < Store.today; Layout.fillWidth: true; Layout.preferredWidth: 1; onClicked: page.day += 1 }
    }
    SetUpFirst {
        visible: DiaryModel.sites.length === 0
        title: qsTr("Nothing here yet")
        purpose: qsTr("Your notes for a day appear here.")
    }
    Repeater {
        model: DiaryModel.sites.length // the cards stay, and with them the keyboard's place, when one is mended
        Card {
            id: card
            required property int index
            readonly property int site: DiaryModel.sites[index] ?? 0
            readonly property notedLevel line: page.noted(site, page.looks)
            Heading { text: Appearance.phrases.site(card.site) }
            LevelChoice { dense: true; site: card.site; level: card.line.known ? card.line.level : -1; onChosen: level => TodayModel.checkIn(card.site, level, page.day) }
            SomeOf {
                visible: card.line.known
                values: Appearance.phrases.circumstances
                name: value => Appearance.phrases.circumstance(value)
                chosen: card.line.with
                onToggled: now => TodayModel.setCircumstances(card.site, now, page.day)
            }
            Label { visible: card.line.corrected; role: Label.Small; text: qsTr("Corrected; the first entry is kept beside it."); Layout.fillWidth: true }
        }
    }
    Repeater {
        model: page.entries(page.looks)
        Card {
            id: other
            required property dayEntry modelData
            readonly property dayEntry e: modelData
            Heading { text: other.e.kind === EntryKind.Session ? Appearance.phrases.bath(other.e.treated) : Appearance.phrases.site(other.e.site) }
            Label {
                Layout.fillWidth: true
                text: other.e.kind === EntryKind.Session ? (other.e.completed ? qsTr("Finished, %1").arg(Appearance.phrases.waveform(other.e.waveform)) : qsTr("Stopped early, %1").arg(Appearance.phrases.waveform(other.e.waveform)))
                                                   + (other.e.comfortable >= 0 ? "\n" + qsTr("Comfortable at %1").arg(Appearance.phrases.milliamps(other.e.comfortable)) : "")
                                                   + (other.e.felt ? "\n" + Appearance.phrases.comfort(other.e.comfort) : "")
                    : other.e.kind === EntryKind.Bother ? qsTr("How much it bothers you: %1 of 4").arg(other.e.score)
                    : other.e.kind === EntryKind.Weighing ? page.weighed(other.e)
                    : qsTr("Skin: %1").arg(page.skinNames(other.e.skin))
            }
            Label { visible: text !== ""; role: Label.Small; text: other.e.note; Layout.fillWidth: true }
            ActionButton { visible: other.e.kind === EntryKind.Session; kind: ButtonFace.Quiet; text: qsTr("Correct this session"); onClicked: Router.openDone(other.e.treated, page.day, other.e.id) }
            ActionButton { kind: ButtonFace.Quiet; text: qsTr("Delete this entry"); onClicked: { withdraw.entry = other.e.id; withdraw.open() } }
        }
    }
    Sheet {
        id: withdraw
        property string entry: ""
        title: qsTr("Delete this entry?")
        Label { Layout.fillWidth: true; text: qsTr("It no longer counts. The original stays in your history.") }
        ActionButton { kind: ButtonFace.Danger; text: qsTr("Delete"); Layout.fillWidth: true; onClicked: { withdraw.close(); DiaryModel.withdraw(withdraw.entry) } }
        ActionButton { text: qsTr("Keep"); Layout.fillWidth: true; onClicked: withdraw.close() }
    }
}
