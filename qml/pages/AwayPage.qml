import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    canGoBack: true
    title: qsTr("Days away")
    property int from: Store.today
    property int to: Store.today
    Label { Layout.fillWidth: true; text: qsTr("No bath is planned on these days; the course moves around them.") }
    Card {
        Stepper { label: qsTr("From"); shown: Appearance.phrases.dayFull(page.from); onLess: page.from -= 1; onMore: { page.from += 1; if (page.to < page.from) page.to = page.from } }
        Stepper { label: qsTr("To"); shown: Appearance.phrases.dayFull(page.to); onLess: if (page.to > page.from) page.to -= 1; onMore: page.to += 1 }
        ActionButton { kind: ButtonFace.Main; text: qsTr("Add"); Layout.fillWidth: true; onClicked: PlanModel.addAway(page.from, page.to) }
    }
    Repeater {
        model: PlanModel.away
        Card {
            id: card
            required property awayDays modelData
            RowLayout {
                Layout.fillWidth: true
                Label { Layout.fillWidth: true; text: card.modelData.from === card.modelData.to ? Appearance.phrases.dayFull(card.modelData.from) : qsTr("%1 to %2").arg(Appearance.phrases.dayLong(card.modelData.from)).arg(Appearance.phrases.dayLong(card.modelData.to)) }
                IconButton { iconName: "close"; text: qsTr("Remove %1 to %2").arg(Appearance.phrases.dayLong(card.modelData.from)).arg(Appearance.phrases.dayLong(card.modelData.to)); onClicked: DiaryModel.withdraw(card.modelData.id) }
            }
        }
    }
}
