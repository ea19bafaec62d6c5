import QtQuick
import QtQuick.Layouts
import Firstdew

// One site over time: its dampness with baths as ticks and weighings above; below, what the meter showed at each bath
// and how it felt. A tap opens the day; dragged, earlier days come.
ColumnLayout {
    id: whole
    property int site: 0
    property int span: 90
    property int back: 0
    property bool baths: true
    property var without: []
    readonly property real readingsHeight: 72
    function inWords(rows) { return rows.map(row => Appearance.phrases.pair(row.what, row.says)).join(". ") }
    signal dayTapped(int day)
    /// Dragged to that many days before today.
    signal dragged(int back)
    spacing: Theme.small
    DampnessChart {
        id: chart
        diary: DiaryModel
        site: whole.site
        span: whole.span
        back: whole.back
        baths: whole.baths
        without: whole.without
        Layout.fillWidth: true
        Layout.preferredHeight: Theme.curve + 4 * Theme.tiny
        ink: Theme.inkSoft
        faint: Theme.line
        line: Theme.main
        accent: Theme.nowText
        family: Theme.family
        textSize: Theme.tiny
        mirrored: Appearance.rightToLeft
        Accessible.role: Accessible.Chart
        Accessible.name: qsTr("Dampness over time, %1").arg(Appearance.phrases.site(whole.site))
        Accessible.description: DiaryModel.dampSaying(whole.site, whole.span, whole.back, whole.baths, whole.without, chart.levels)
        TapHandler {
            onTapped: point => {
                const day = chart.dayAt(point.position.x, point.position.y)
                if (day !== 0)
                    whole.dayTapped(day)
            }
        }
        DragHandler {
            target: null
            yAxis.enabled: false
            property int start: 0
            onActiveChanged: if (active) start = whole.back
            onTranslationChanged: if (active) whole.dragged(start + Math.round((chart.mirrored ? -1 : 1) * translation.x / chart.dayWidth()))
        }
    }
    AsTable { about: chart.Accessible.name; rows: () => DiaryModel.dampTable(whole.site, whole.span, whole.back, whole.baths, whole.without); asked: chart.levels + whole.back }
    Label { visible: chart.levels === 0; Layout.fillWidth: true; text: qsTr("No check-in in this time.") }
    Label { visible: chart.levels > 0 && !DiaryModel.tells(chart.levels); role: Label.Small; Layout.fillWidth: true; text: qsTr("%n check-in(s) here. After two weeks of them the line begins to tell how long you stay dry.", "", chart.levels) }
    Label { visible: chart.weighed || whole.baths; role: Label.Tiny; Layout.fillWidth: true; text: chart.weighed && whole.baths ? qsTr("Marks below show your sessions. Diamonds above: weighings, in mg a minute.") : whole.baths ? qsTr("Marks below show your sessions.") : qsTr("Diamonds above: weighings, in mg a minute.") }
    ReadingsChart {
        id: readings
        diary: DiaryModel
        visible: whole.baths && count > 0
        site: whole.site
        span: whole.span
        back: whole.back
        Layout.fillWidth: true
        Layout.preferredHeight: whole.readingsHeight + Theme.tiny
        ink: Theme.inkSoft
        faint: Theme.line
        line: Theme.main
        accent: Theme.nowText
        family: Theme.family
        textSize: Theme.tiny
        mirrored: chart.mirrored
        Accessible.role: Accessible.Chart
        Accessible.name: qsTr("Meter readings of the sessions, %1").arg(Appearance.phrases.site(whole.site))
        Accessible.description: whole.inWords(DiaryModel.readingTable(whole.site, whole.span, whole.back))
    }
    AsTable { visible: readings.visible; about: readings.Accessible.name; rows: () => DiaryModel.readingTable(whole.site, whole.span, whole.back); asked: readings.count + whole.back }
    Label { visible: readings.visible; role: Label.Tiny; Layout.fillWidth: true; text: qsTr("Dots: highest comfortable reading of each session, in mA. Rings: where it was unpleasant or painful.") }
}
