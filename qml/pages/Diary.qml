import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    title: Appearance.phrases.place("diary")
    property int span: 90
    property int back: 0 // days from the last one shown to today
    property string onlySite: ""
    property bool baths: true
    property var without: []
    readonly property int allDays: Math.max(31, DiaryModel.daysKept)
    readonly property int mostBack: Math.max(0, DiaryModel.daysKept - span)
    readonly property bool filtered: onlySite !== "" || !baths || without.length > 0
    readonly property string lastDay: DiaryModel.plusDays(Store.today, -back)
    function goBack(days) { back = Math.max(0, Math.min(mostBack, days)) }
    onSpanChanged: goBack(back)

    header: ActionButton { visible: DiaryModel.sites.length > 0; kind: ButtonFace.Quiet; text: page.filtered ? qsTr("Filter: on") : qsTr("Filter"); onClicked: filter.open() }

    SetUpFirst {
        visible: DiaryModel.sites.length === 0
        title: qsTr("Nothing here yet")
        purpose: qsTr("Each check-in on Today draws one point here. After two weeks the line begins to tell how long you stay dry.")
    }
    Wrap {
        visible: DiaryModel.sites.length > 0
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
    Item {
        visible: page.mostBack > 0
        Layout.fillWidth: true
        implicitHeight: Math.max(Theme.target, range.implicitHeight)
        IconButton { id: earlier; anchors.left: parent.left; iconName: "back"; text: qsTr("Earlier"); enabled: page.back < page.mostBack; onClicked: page.goBack(page.back + Math.ceil(page.span / 2)) }
        Label { id: range; role: Label.Small; anchors { left: earlier.right; right: later.left; verticalCenter: parent.verticalCenter } horizontalAlignment: Text.AlignHCenter; text: qsTr("%1 to %2").arg(Appearance.phrases.dayYear(DiaryModel.plusDays(page.lastDay, 1 - page.span))).arg(Appearance.phrases.dayYear(page.lastDay)) }
        IconButton { id: later; anchors.right: parent.right; iconName: "next"; text: qsTr("Later"); enabled: page.back > 0; onClicked: page.goBack(page.back - Math.ceil(page.span / 2)) }
    }
    Label {
        visible: page.without.length > 0 && DiaryModel.sites.length > 0
        role: Label.Small
        Layout.fillWidth: true
        text: qsTr("Left out: days with %1").arg(page.without.map(token => Appearance.phrases.circumstance(token)).join(", "))
    }
    Repeater {
        model: DiaryModel.sites.length
        Card {
            id: card
            required property int index
            readonly property string site: DiaryModel.sites[index] || ""
            visible: page.onlySite === "" || page.onlySite === site
            Label { role: Label.Lead; text: Appearance.phrases.site(card.site); Layout.fillWidth: true; Accessible.role: Accessible.Heading }
            DampnessLine {
                Layout.fillWidth: true
                site: card.site
                span: page.span
                back: page.back
                baths: page.baths
                without: page.without
                onDragged: days => page.goBack(days)
                onDayTapped: date => Router.page("DayPage", { date: date })
            }
        }
    }
    ActionButton { visible: DiaryModel.sites.length > 0; kind: ButtonFace.Main; iconName: "share"; text: qsTr("Summary for your prescriber"); Layout.fillWidth: true; onClicked: Router.page("SummaryPage", {}) }
    Card {
        visible: DiaryModel.sites.length > 0
        Label { role: Label.Lead; text: qsTr("See and note more"); Layout.fillWidth: true; Accessible.role: Accessible.Heading }
        ActionButton { text: qsTr("Look at single days"); Layout.fillWidth: true; onClicked: Router.page("DayPage", { date: page.lastDay }) }
        ActionButton { text: qsTr("How much it bothers you"); Layout.fillWidth: true; onClicked: Router.page("BotherPage", {}) }
        ActionButton { text: qsTr("Skin after a bath"); Layout.fillWidth: true; onClicked: Router.page("SkinPage", {}) }
        ActionButton { text: qsTr("Weighing"); Layout.fillWidth: true; onClicked: Router.page("WeighPage", {}) }
    }
    Sheet {
        id: filter
        title: qsTr("What is shown")
        OneOf {
            visible: options.length > 2
            label: qsTr("Where")
            options: [{ value: "", text: qsTr("Everywhere") }].concat(DiaryModel.sites.map(s => ({ value: s, text: Appearance.phrases.site(s) })))
            value: page.onlySite
            onChosen: v => page.onlySite = v
        }
        OneOf {
            label: qsTr("Baths and readings")
            options: [{ value: "yes", text: qsTr("Shown") }, { value: "no", text: qsTr("Hidden") }]
            value: page.baths ? "yes" : "no"
            onChosen: v => page.baths = v === "yes"
        }
        Label { role: Label.Small; text: qsTr("Leave out days with"); Layout.fillWidth: true }
        SomeOf { tokens: Appearance.phrases.circumstances; name: token => Appearance.phrases.circumstance(token); chosen: page.without; onToggled: now => page.without = now }
        ActionButton { kind: ButtonFace.Main; text: qsTr("Done"); Layout.fillWidth: true; onClicked: filter.close() }
    }
}
