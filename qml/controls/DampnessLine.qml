import QtQuick
import QtQuick.Layouts
import Firstdew

// The dampness of one site over time, baths as ticks below, weighings above; a tap opens the day.
ColumnLayout {
    id: whole
    property alias site: chart.site
    property alias span: chart.span
    signal dayTapped(string date)
    spacing: Theme.small
    DampnessChart {
        id: chart
        Layout.fillWidth: true
        Layout.preferredHeight: Theme.curve + 4 * Theme.tiny
        ink: Theme.inkSoft
        faint: Theme.line
        line: Theme.main
        accent: Theme.nowText
        family: Theme.family
        textSize: Theme.tiny
        mirrored: Qt.application.layoutDirection === Qt.RightToLeft
        Accessible.role: Accessible.Chart
        Accessible.name: qsTr("Dampness over time, %1").arg(Look.words.site(site))
        TapHandler {
            onTapped: point => {
                const day = chart.dayAt(point.position.x, point.position.y)
                if (day !== "")
                    whole.dayTapped(day)
            }
        }
    }
    Label { role: "tiny"; Layout.fillWidth: true; text: chart.weighed ? qsTr("Ticks below: baths. Diamonds above: weighings, in mg a minute.") : qsTr("Ticks below: baths.") }
}
