import QtQuick
import QtQuick.Layouts
import Firstdew

// What else dries the skin, with its days: noted, so that the outlook learns from the sessions alone.
Frame {
    id: page
    canGoBack: true
    title: qsTr("Other treatments")
    property int what: -1
    property var where: []
    property int from: Store.today
    property int until: 0 // it goes on
    function named(kinds: var): var { return kinds.map(k => ({ value: k, text: Appearance.phrases.otherKind(k) })) }
    Label { Layout.fillWidth: true; text: qsTr("Note what else dries your skin. Dry spells in that time are left out of your outlook, and your prescriber sees it in the summary.") }
    Card {
        OneOf { label: qsTr("What is it?"); options: page.named(Appearance.phrases.otherKinds); value: page.what; onChosen: v => page.what = v }
        Field { id: name; label: qsTr("Its name"); hint: qsTr("Optional") }
        ColumnLayout {
            visible: DiaryModel.sites.length > 1
            Layout.fillWidth: true
            spacing: Theme.small
            Label { role: Label.Small; text: qsTr("Where (none = everywhere)"); Layout.fillWidth: true }
            SomeOf { values: DiaryModel.sites; name: value => Appearance.phrases.site(value); chosen: page.where; onToggled: now => page.where = now }
        }
        DayPick { label: qsTr("Works since"); day: page.from; onPicked: day => { page.from = day; if (page.until !== 0) page.until = Math.max(page.until, day) } }
        OneOf { label: qsTr("Does it still work?"); options: [{ value: true, text: qsTr("Yes") }, { value: false, text: qsTr("It ended") }]; value: page.until === 0; onChosen: v => page.until = v ? 0 : Math.max(page.from, Store.today) }
        DayPick { visible: page.until !== 0; label: qsTr("Last day"); day: page.until; first: page.from; onPicked: day => page.until = day }
    }
    Repeater {
        model: DiaryModel.otherTreatments
        Card {
            id: card
            required property otherLine modelData
            RowLayout {
                Layout.fillWidth: true
                Label { Layout.fillWidth: true; text: card.modelData.text }
                IconButton { iconName: "close"; text: qsTr("Remove %1").arg(card.modelData.text); onClicked: DiaryModel.withdraw(card.modelData.id) }
            }
        }
    }
    dock: ActionButton {
        kind: ButtonFace.Now
        text: qsTr("Save")
        Layout.fillWidth: true
        enabled: page.what >= 0
        onClicked: if (DiaryModel.addOther(page.what, name.text, page.where, page.from, page.until)) Router.back()
    }
}
