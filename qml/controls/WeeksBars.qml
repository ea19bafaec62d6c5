import QtQuick
import QtQuick.Layouts
import Firstdew

// One site's damp days, week by week.
ColumnLayout {
    id: whole
    property int site: 0
    property int span: 365
    property int back: 0
    property bool baths: true
    property var without: []
    spacing: Theme.small
    Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("Damp days a week") }
    WeeksChart {
        id: chart
        diary: DiaryModel
        site: whole.site
        span: whole.span
        back: whole.back
        baths: whole.baths
        without: whole.without
        Layout.fillWidth: true
        Layout.preferredHeight: Theme.ring / 3 + 3 * Theme.tiny
        ink: Theme.inkSoft
        faint: Theme.line
        line: Theme.main
        accent: Theme.nowText
        family: Theme.family
        textSize: Theme.tiny
        mirrored: Appearance.rightToLeft
        Accessible.role: Accessible.Chart
        Accessible.name: qsTr("Dampness over time, %1").arg(Appearance.phrases.site(whole.site))
        Accessible.description: DiaryModel.dampSaying(whole.site, whole.span, whole.back, whole.baths, whole.without, chart.known)
    }
    AsTable { about: chart.Accessible.name; rows: () => DiaryModel.weekTable(whole.site, whole.span, whole.back, whole.without); asked: chart.known + whole.back }
    Label { visible: chart.known === 0; Layout.fillWidth: true; text: qsTr("A week with three check-ins or more draws a bar here.") }
    Label { visible: chart.known > 0; role: Label.Tiny; Layout.fillWidth: true; text: whole.baths ? qsTr("Dark: wet or dripping days. Light: clammy days. Marks below show your sessions.") : qsTr("Dark: wet or dripping days. Light: clammy days.") }
}
