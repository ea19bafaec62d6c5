import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    canGoBack: true
    title: qsTr("Days away")
    property int from: Store.today
    property int to: Store.today
    Label { Layout.fillWidth: true; text: qsTr("No session is planned on these days. The course moves around them. If a top-up would be due then, it is offered before you leave.") }
    Card {
        DayPick { label: qsTr("From"); day: page.from; onPicked: day => { page.from = day; page.to = Math.max(page.to, day) } }
        DayPick { label: qsTr("To"); day: page.to; first: page.from; onPicked: day => page.to = day }
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
    ActionButton { text: qsTr("Taking the kit along"); Layout.fillWidth: true; onClicked: Router.page(Part.TravelPagePart) }
}
