import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    title: Look.words.place("diary")
    property int span: 90

    Wrap {
        Layout.fillWidth: true
        spacing: Theme.small
        Repeater {
            model: [{ days: 30, text: qsTr("Month") }, { days: 90, text: qsTr("Quarter") }, { days: 365, text: qsTr("Year") }, { days: 0, text: qsTr("All") }]
            Chip {
                required property var modelData
                readonly property int days: modelData.days > 0 ? modelData.days : page.allDays
                text: modelData.text
                checked: page.span === days
                onClicked: page.span = days
            }
        }
    }
    readonly property int allDays: Math.max(31, DiaryModel.daysKept)

    Card {
        visible: DiaryModel.sites.length === 0
        Label { role: "title"; text: qsTr("Nothing here yet"); Layout.fillWidth: true }
        Label { text: qsTr("Each check-in on Today draws one point here. After two weeks the line begins to tell how long you stay dry."); Layout.fillWidth: true }
        ActionButton { kind: "main"; text: qsTr("Go to Today"); Layout.fillWidth: true; onClicked: Router.place("today") }
    }
    Repeater {
        model: DiaryModel.sites
        Card {
            id: card
            required property string modelData
            Label { role: "lead"; text: Look.words.site(card.modelData); Layout.fillWidth: true; Accessible.role: Accessible.Heading }
            DampnessLine {
                Layout.fillWidth: true
                site: card.modelData
                span: page.span
                onDayTapped: date => Router.page("DayPage", { date: date })
            }
        }
    }
    ActionButton { visible: DiaryModel.sites.length > 0; kind: "main"; iconName: "share"; text: qsTr("Summary for your prescriber"); Layout.fillWidth: true; onClicked: Router.page("SummaryPage", {}) }
    Card {
        visible: DiaryModel.sites.length > 0
        Label { role: "lead"; text: qsTr("Note more"); Layout.fillWidth: true; Accessible.role: Accessible.Heading }
        ActionButton { text: qsTr("How much it bothers you"); Layout.fillWidth: true; onClicked: Router.page("BotherPage", {}) }
        ActionButton { text: qsTr("Skin after a bath"); Layout.fillWidth: true; onClicked: Router.page("SkinPage", {}) }
        ActionButton { text: qsTr("Weighing"); Layout.fillWidth: true; onClicked: Router.page("WeighPage", {}) }
    }
}
