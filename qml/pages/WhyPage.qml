import QtQuick
import QtQuick.Layouts
import Firstdew

// The evidence behind an advice: its reasons, the next days in dots, how forecasts have done, and behind More the curve.
Frame {
    id: page
    canGoBack: true
    title: qsTr("Why?")
    readonly property int site: Router.site
    property siteToday matter: TodayModel.of(site)
    property siteForecast forecast: DiaryModel.forecast(site)
    property bool more: false
    Connections { target: TodayModel; function onChanged() { page.matter = TodayModel.of(page.site); page.forecast = DiaryModel.forecast(page.site) } }
    readonly property bool reckoned: matter.known && spells.known && matter.stage !== Stage.NotStarted && matter.stage !== Stage.FirstCourse
    Card {
        visible: page.matter.known
        Label { role: Label.Small; text: Appearance.phrases.site(page.matter.site); Layout.fillWidth: true }
        Heading { text: page.matter.title }
        Repeater {
            model: page.matter.reasons
            LeadLine { required property string modelData; iconName: "drop"; iconColor: Theme.main; text: modelData }
        }
    }
    Card {
        visible: page.forecast.shorter.length > 0
        Heading { text: qsTr("Your dry spells are getting shorter") }
        Repeater {
            model: page.forecast.shorter
            Label { required property string modelData; Layout.fillWidth: true; text: modelData }
        }
    }
    Card {
        visible: !page.reckoned
        Label { Layout.fillWidth: true; text: qsTr("No outlook yet. It begins with a course that is done and about two weeks of check-ins.") }
    }
    Card {
        visible: page.reckoned
        Heading { text: qsTr("The next days") }
        Repeater {
            model: page.forecast.next
            ColumnLayout {
                id: ahead
                required property nextDay modelData
                spacing: Theme.tight
                Layout.fillWidth: true
                Label { Layout.fillWidth: true; text: ahead.modelData.line }
                Dots {
                    count: 20
                    filled: ahead.modelData.dots
                    color: Theme.main
                    stroke: Theme.hair
                    mirrored: Appearance.rightToLeft
                    Layout.fillWidth: true
                    Layout.maximumWidth: count * Theme.icon
                    Layout.preferredHeight: Theme.icon
                    Accessible.role: Accessible.Graphic
                    Accessible.name: ahead.modelData.line
                }
            }
        }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("Of twenty such days, so many would be damp by then if no session comes first.") }
    }
    Card {
        visible: page.reckoned
        Heading { text: qsTr("How the forecasts have done") }
        Repeater {
            model: page.forecast.score
            Label { required property string modelData; Layout.fillWidth: true; text: modelData }
        }
        Label { Layout.fillWidth: true; text: page.forecast.verdict }
    }
    ActionButton {
        visible: page.reckoned
        kind: ButtonFace.Plain
        text: page.more ? qsTr("Less") : qsTr("More")
        Layout.fillWidth: true
        onClicked: page.more = !page.more
    }
    Card {
        visible: page.reckoned && page.more
        Heading { text: qsTr("How long your dry spells last") }
        Label { role: Label.Tiny; Layout.fillWidth: true; text: qsTr("Share of spells still dry") }
        DrySpellChart {
            id: spells
            diary: DiaryModel
            site: page.site
            Layout.fillWidth: true
            Layout.preferredHeight: Theme.curve + 5 * Theme.tiny + barsHeight
            ink: Theme.inkSoft
            faint: Theme.line
            line: Theme.main
            accent: Theme.nowText
            family: Theme.family
            textSize: Theme.tiny
            mirrored: Appearance.rightToLeft
            Accessible.role: Accessible.Chart
            Accessible.name: qsTr("How long your dry spells last")
            Accessible.description: saying
        }
        Label { Layout.fillWidth: true; text: spells.saying }
        Label { visible: text !== ""; Layout.fillWidth: true; text: spells.todaySaying }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("The curve shows what share of your dry spells lasts longer than the days below it. The inner band holds the middle half of them, the outer one four in five. Bars: your latest spells; hollow where the change fell between two check-ins, with an arrow where a session came while still dry or the spell goes on. Faint bars: under another treatment.") }
    }
    Label {
        visible: page.reckoned && page.more
        role: Label.Small
        Layout.fillWidth: true
        text: page.matter.known ? qsTr("Based on %n dry spell(s) in your diary.", "", page.matter.spells)
                            + " " + qsTr("Still going on, or topped up while dry: %1.").arg(page.matter.censored)
                            + (page.matter.otherwise > 0 ? " " + qsTr("Left out, under another treatment: %1.").arg(page.matter.otherwise) : "")
                            + (page.matter.due !== 0 ? " " + qsTr("One damp spell counts as %1 sessions. So a top-up is due %2, or earlier without check-ins.").arg(Appearance.phrases.shortNumber(page.matter.returnCost)).arg(Appearance.phrases.dayLong(page.matter.due)) : "") : ""
    }
    ComparisonCard { site: page.site }
    Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("This is an estimate from your own notes, not a diagnosis. Your prescriber's word counts.") }
}
