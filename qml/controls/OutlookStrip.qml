import QtQuick
import QtQuick.Layouts
import Firstdew

// Fourteen days ahead: the chance of dampness grows as a rising bar; a planned bath stands above its day.
// Not a layout: in Qt 6.4 one within another's card is measured with lines that are already deleted, and falls over.
Column {
    id: strip
    spacing: Theme.gap
    Repeater {
        model: TodayModel.ahead.length
        ColumnLayout {
            id: line
            required property int index
            readonly property siteAhead ahead: TodayModel.ahead[index] ?? Empty.siteAhead
            spacing: Theme.tight
            width: strip.width
            GridLayout {
                columns: Theme.largeText ? 1 : 2
                Layout.fillWidth: true
                Label { role: Label.Small; text: Appearance.phrases.site(line.ahead.site) }
                Label {
                    role: Label.Small
                    Layout.fillWidth: true
                    horizontalAlignment: Theme.largeText ? Text.AlignLeft : Text.AlignRight
                    text: line.ahead.known ? qsTr("%1 today, %2 in two weeks").arg(Appearance.phrases.percent(line.ahead.today)).arg(Appearance.phrases.percent(line.ahead.last))
                                                     : qsTr("No forecast before the first session")
                }
            }
            OutlookBars {
                ahead: line.ahead
                barHeight: Theme.iconLarge
                gap: Theme.tight
                iconSize: Theme.iconSmall
                track: Theme.sunken
                bar: Theme.main
                bath: Theme.nowText
                Layout.fillWidth: true
                Layout.preferredHeight: Theme.iconLarge + Theme.iconSmall + Theme.tight
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("Chance of dampness by day, %1").arg(Appearance.phrases.site(line.ahead.site))
            }
        }
    }
    Row {
        id: dates
        width: strip.width
        layoutDirection: Appearance.rightToLeft ? Qt.RightToLeft : Qt.LeftToRight
        LayoutMirroring.enabled: false
        Repeater {
            model: TodayModel.daysAhead
            Text {
                required property int index
                readonly property bool shown: index % (Theme.textScale > 1.4 ? 4 : 2) === 0
                width: dates.width / TodayModel.daysAhead
                text: shown ? Appearance.phrases.dayNumber(Store.today + index) : ""
                font.family: Theme.family
                font.pixelSize: Theme.tiny
                font.weight: index === 0 ? Theme.strong : Font.Normal
                color: index === 0 ? Theme.ink : Theme.inkSoft
                horizontalAlignment: Text.AlignHCenter
            }
        }
    }
}
