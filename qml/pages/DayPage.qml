import QtQuick
import QtQuick.Layouts
import Firstdew

// One day: everything noted, to be mended; what stood before is kept beside it.
Frame {
    id: page
    canGoBack: true
    property string date: Store.today
    title: Appearance.phrases.dayFull(date)
    titleRole: Label.Title
    property var entries: DiaryModel.day(date)
    onDateChanged: entries = DiaryModel.day(date)
    Connections { target: DiaryModel; function onChanged() { page.entries = DiaryModel.day(page.date) } }
    function weighed(e) {
        return qsTr("Weighing: %1 mg in %2 minutes, %3 mg a minute").arg(Appearance.phrases.number(e.gain, 0)).arg(Appearance.phrases.number(e.minutes, e.minutes % 1 === 0 ? 0 : 1)).arg(Appearance.phrases.number(e.rate, 1))
               + (e.judged === "above" ? "\n" + qsTr("More than the usual upper limit of healthy people.") : e.judged === "usual" ? "\n" + qsTr("Within the usual range of healthy people.") : "")
    }
    GridLayout {
        Layout.fillWidth: true
        columns: Theme.largeText ? 1 : 2
        columnSpacing: Theme.small
        rowSpacing: Theme.small
        ActionButton { text: qsTr("Day before"); Layout.fillWidth: true; Layout.preferredWidth: 1; onClicked: page.date = DiaryModel.plusDays(page.date, -1) }
        ActionButton { text: qsTr("Day after"); enabled: page.date < Store.today; Layout.fillWidth: true; Layout.preferredWidth: 1; onClicked: page.date = DiaryModel.plusDays(page.date, 1) }
    }
    SetUpFirst {
        visible: DiaryModel.sites.length === 0
        title: qsTr("Nothing here yet")
        purpose: qsTr("What you note of a day stands here.")
    }
    Repeater {
        model: DiaryModel.sites.length // the cards stay, and with them the keyboard's place, when one is mended
        Card {
            id: card
            required property int index
            readonly property string site: DiaryModel.sites[index] || ""
            readonly property var line: page.entries.filter(e => e.kind === "check-in" && e.site === site).pop()
            Heading { text: Appearance.phrases.site(card.site) }
            LevelChoice { dense: true; site: card.site; level: card.line ? card.line.level : ""; onChosen: level => TodayModel.checkIn(card.site, level, page.date) }
            SomeOf {
                visible: card.line !== undefined
                tokens: Appearance.phrases.circumstances
                name: token => Appearance.phrases.circumstance(token)
                chosen: card.line ? card.line.with : []
                onToggled: now => TodayModel.setCircumstances(card.site, now, page.date)
            }
            Label { visible: card.line !== undefined && card.line.corrected; role: Label.Small; text: qsTr("Corrected; the first entry is kept beside it."); Layout.fillWidth: true }
        }
    }
    Repeater {
        model: page.entries.filter(e => e.kind !== "check-in")
        Card {
            id: other
            required property var modelData
            readonly property var e: modelData
            Heading { text: other.e.kind === "session" ? Appearance.phrases.bath(other.e.site) : Appearance.phrases.site(other.e.site) }
            Label {
                Layout.fillWidth: true
                text: other.e.kind === "session" ? (other.e.completed ? qsTr("Finished, %1").arg(Appearance.phrases.waveform(other.e.waveform)) : qsTr("Broken off, %1").arg(Appearance.phrases.waveform(other.e.waveform)))
                                                   + (other.e.comfortable >= 0 ? "\n" + qsTr("Comfortable at %1").arg(Appearance.phrases.milliamps(other.e.comfortable)) : "")
                                                   + (other.e.comfort ? "\n" + Appearance.phrases.comfort(other.e.comfort) : "")
                    : other.e.kind === "hdss" ? qsTr("Bother score %1 of 4").arg(other.e.score)
                    : other.e.kind === "weighing" ? page.weighed(other.e)
                    : qsTr("Skin: %1").arg(other.e.skin.map(s => Appearance.phrases.skin(s)).join(", "))
            }
            Label { visible: text !== ""; role: Label.Small; text: other.e.note || ""; Layout.fillWidth: true }
            ActionButton { kind: ButtonFace.Quiet; text: qsTr("Withdraw this entry"); onClicked: { withdraw.entry = other.e.id; withdraw.open() } }
        }
    }
    Sheet {
        id: withdraw
        property string entry: ""
        title: qsTr("Withdraw this entry?")
        Label { Layout.fillWidth: true; text: qsTr("It no longer counts. The record keeps that it was there.") }
        ActionButton { kind: ButtonFace.Danger; text: qsTr("Withdraw"); Layout.fillWidth: true; onClicked: { withdraw.close(); DiaryModel.withdraw(withdraw.entry) } }
        ActionButton { text: qsTr("Keep"); Layout.fillWidth: true; onClicked: withdraw.close() }
    }
}
