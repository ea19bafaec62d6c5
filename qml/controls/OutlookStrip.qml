import QtQuick
import QtQuick.Layouts
import Firstdew

// Fourteen days ahead: the chance of dampness grows as a rising bar; a planned bath stands above its day.
// Not a layout: in Qt 6.4 one within another's card is measured with lines that are already deleted, and falls over.
Column {
    id: strip
    property var days: []
    readonly property var sites: days.length > 0 ? days[0].sites : []
    spacing: Theme.gap
    Repeater {
        model: strip.sites.length
        ColumnLayout {
            id: line
            required property int index
            readonly property var now: strip.sites[index] || { site: "", chance: -1 }
            readonly property var then: strip.days.length > 0 && strip.days[strip.days.length - 1].sites[index] || now
            spacing: Theme.tight
            width: strip.width
            GridLayout {
                columns: Theme.largeText ? 1 : 2
                Layout.fillWidth: true
                Label { role: Label.Small; text: Appearance.phrases.site(line.now.site) }
                Label {
                    role: Label.Small
                    Layout.fillWidth: true
                    horizontalAlignment: Theme.largeText ? Text.AlignLeft : Text.AlignRight
                    text: line.now.chance >= 0 ? qsTr("%1 today, %2 in two weeks").arg(Appearance.phrases.percent(line.now.chance)).arg(Appearance.phrases.percent(line.then.chance))
                                                     : qsTr("No forecast before the first bath")
                }
            }
            OutlookBars {
                days: strip.days
                line: line.index
                barHeight: Theme.iconLarge
                gap: Theme.tight
                iconSize: Theme.iconSmall
                track: Theme.sunken
                bar: Theme.main
                bath: Theme.nowText
                Layout.fillWidth: true
                Layout.preferredHeight: Theme.iconLarge + Theme.iconSmall + Theme.tight
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("Chance of dampness by day, %1").arg(Appearance.phrases.site(line.now.site))
            }
        }
    }
    Row {
        id: dates
        width: strip.width
        layoutDirection: Qt.application.layoutDirection
        LayoutMirroring.enabled: false
        Repeater {
            model: strip.days
            Text {
                required property var modelData
                required property int index
                readonly property bool shown: index % (Theme.textScale > 1.4 ? 4 : 2) === 0
                width: dates.width / Math.max(1, strip.days.length)
                text: shown ? Appearance.phrases.dayNumber(modelData.date) : ""
                font.family: Theme.family
                font.pixelSize: Theme.tiny
                font.weight: index === 0 ? Theme.strong : Font.Normal
                color: index === 0 ? Theme.ink : Theme.inkSoft
                horizontalAlignment: Text.AlignHCenter
            }
        }
    }
}
