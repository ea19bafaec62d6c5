import QtQuick
import QtQuick.Layouts
import Firstdew

// Whether it works, then the days themselves.
Frame {
    id: page
    title: Appearance.phrases.place(Place.Diary)
    enum View { Month, Quarter, Year, All }
    property int view: Diary.Month
    property int back: 0 // days from the last one shown to today
    property int onlySite: -1 // all
    property bool baths: true
    property var without: []
    readonly property bool kept: DiaryModel.sites.length > 0
    readonly property int span: view === Diary.Month ? 28 : view === Diary.Quarter ? 90 : view === Diary.Year ? 365 : Math.max(31, DiaryModel.daysKept)
    readonly property int mostBack: Math.max(0, DiaryModel.daysKept - span)
    readonly property bool filtered: onlySite >= 0 || !baths || without.length > 0
    readonly property int lastDay: Store.today - back
    function places(sites: var): var {
        const all = sites.map(s => ({ value: s, text: Appearance.phrases.site(s) }))
        all.unshift({ value: -1, text: qsTr("Everywhere") })
        return all
    }
    function goBack(days) { back = Math.max(0, Math.min(mostBack, days)) }
    /// To the days before (-1) or after (1): by whole weeks in the calendar, else by half of those shown.
    function turn(by) { goBack(back - by * (view === Diary.Month ? span : Math.ceil(span / 2))) }
    onViewChanged: goBack(back)

    header: [
        IconButton { visible: page.kept && !Theme.largeText; iconName: "share"; text: qsTr("Send to your prescriber"); onClicked: SummaryModel.share() },
        ActionButton { visible: page.kept; kind: ButtonFace.Quiet; text: page.filtered ? qsTr("Filter: on") : qsTr("Filter"); onClicked: filter.open() }
    ]
    ActionButton { visible: page.kept && Theme.largeText; iconName: "share"; text: qsTr("Send to your prescriber"); Layout.fillWidth: true; onClicked: SummaryModel.share() }
    Label { visible: text !== ""; Layout.fillWidth: true; text: SummaryModel.message }

    SetUpFirst {
        visible: !page.kept
        title: qsTr("Nothing here yet")
        purpose: qsTr("Each check-in on Today draws one dot here. After two weeks of them you see how long you stay dry, and if the treatment works.")
    }
    Repeater {
        model: DiaryModel.sites.length
        WorkingCard {
            required property int index
            site: DiaryModel.sites[index] ?? 0
            visible: page.onlySite < 0 || page.onlySite === site
        }
    }
    split: page.kept
    aside: [
        Wrap {
            visible: page.kept
            Layout.fillWidth: true
            spacing: Theme.small
            Repeater {
                model: [{ view: Diary.Month, text: qsTr("Month") }, { view: Diary.Quarter, text: qsTr("Quarter") }, { view: Diary.Year, text: qsTr("Year") }, { view: Diary.All, text: qsTr("All") }]
                ChoiceChip {
                    required property var modelData
                    text: modelData.text
                    checked: page.view === modelData.view
                    onClicked: page.view = modelData.view
                }
            }
        },
        Item {
            visible: page.mostBack > 0
            Layout.fillWidth: true
            implicitHeight: Math.max(Theme.target, range.implicitHeight)
            IconButton { id: earlier; anchors.left: parent.left; iconName: "back"; text: qsTr("Earlier"); enabled: page.back < page.mostBack; onClicked: page.turn(-1) }
            Label { id: range; role: Label.Small; anchors { left: earlier.right; right: later.left; verticalCenter: parent.verticalCenter } horizontalAlignment: Text.AlignHCenter; text: qsTr("%1 to %2").arg(Appearance.phrases.dayYear(page.lastDay + 1 - page.span)).arg(Appearance.phrases.dayYear(page.lastDay)) }
            IconButton { id: later; anchors.right: parent.right; iconName: "next"; text: qsTr("Later"); enabled: page.back > 0; onClicked: page.turn(1) }
        },
        Label {
            visible: page.without.length > 0 && page.kept
            role: Label.Small
            Layout.fillWidth: true
            text: qsTr("Left out: days with %1").arg(Appearance.phrases.listed(page.without.map(value => Appearance.phrases.within(Appearance.phrases.circumstance(value)))))
        },
        Repeater {
            model: DiaryModel.sites.length
            Card {
                id: card
                required property int index
                readonly property int site: DiaryModel.sites[index] ?? 0
                visible: page.onlySite < 0 || page.onlySite === site
                Heading { text: Appearance.phrases.site(card.site) }
                MonthDots {
                    visible: page.view === Diary.Month
                    Layout.fillWidth: true
                    site: card.site
                    back: page.back
                    baths: page.baths
                    without: page.without
                    onDayTapped: day => Router.openDay(day)
                }
                Loader {
                    active: page.view === Diary.Quarter
                    visible: active
                    Layout.fillWidth: true
                    sourceComponent: DampnessLine {
                        site: card.site
                        span: page.span
                        back: page.back
                        baths: page.baths
                        without: page.without
                        onDragged: days => page.goBack(days)
                        onDayTapped: day => Router.openDay(day)
                    }
                }
                Loader {
                    active: page.view === Diary.Year || page.view === Diary.All
                    visible: active
                    Layout.fillWidth: true
                    sourceComponent: WeeksBars {
                        site: card.site
                        span: page.span
                        back: page.back
                        baths: page.baths
                        without: page.without
                    }
                }
            }
        }
    ]
    more: [
        ActionButton { visible: page.kept; kind: ButtonFace.Main; iconName: "share"; text: qsTr("Summary for your prescriber"); Layout.fillWidth: true; onClicked: Router.page(Part.SummaryPagePart) },
        Card {
            visible: page.kept
            Heading { text: qsTr("More about this day") }
            ActionButton { text: qsTr("See a day"); Layout.fillWidth: true; onClicked: Router.openDay(page.lastDay) }
            ActionButton { text: qsTr("How much it bothers you"); Layout.fillWidth: true; onClicked: Router.page(Part.BotherPagePart) }
            ActionButton { text: qsTr("Skin after a session"); Layout.fillWidth: true; onClicked: Router.page(Part.SkinPagePart) }
            ActionButton { text: qsTr("Weighing"); Layout.fillWidth: true; onClicked: Router.page(Part.WeighPagePart) }
            ActionButton { text: qsTr("Other treatments"); Layout.fillWidth: true; onClicked: Router.page(Part.OtherPagePart) }
        }
    ]
    Sheet {
        id: filter
        title: qsTr("What is shown")
        OneOf {
            visible: options.length > 2
            label: qsTr("Where")
            options: page.places(DiaryModel.sites)
            value: page.onlySite
            onChosen: v => page.onlySite = v
        }
        OneOf {
            label: qsTr("Sessions and readings")
            options: [{ value: true, text: qsTr("Shown") }, { value: false, text: qsTr("Hidden") }]
            value: page.baths
            onChosen: v => page.baths = v
        }
        Label { role: Label.Small; text: qsTr("Leave out days with"); Layout.fillWidth: true }
        SomeOf { values: Appearance.phrases.circumstances; name: value => Appearance.phrases.circumstance(value); chosen: page.without; onToggled: now => page.without = now }
        ActionButton { kind: ButtonFace.Main; text: qsTr("Done"); Layout.fillWidth: true; onClicked: filter.close() }
    }
}
