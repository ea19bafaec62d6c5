import QtQuick
import QtQuick.Layouts
import Firstdew

// The last days, each to be filled in or mended.
// Not a layout: in Qt 6.4 one within another's card is measured with days that are already deleted, and falls over.
Row {
    id: row
    property var days: []
    Repeater {
        model: row.days.length // the days stay, and with them the keyboard's place, when one is filled in
        ActionButton {
            id: day
            required property int index
            readonly property var shown: row.days[index] || { date: "", sites: [] }
            readonly property bool gap: shown.sites.some(s => s.level === "")
            width: row.width / Math.max(1, row.days.length)
            leastHigh: Math.max(Theme.target, column.implicitHeight + Theme.small)
            kind: ButtonFace.Bare
            wordless: true
            radius: Theme.radiusSmall
            text: Appearance.phrases.dayFull(shown.date)
            Accessible.name: gap ? qsTr("%1, to fill in").arg(text) : text
            onClicked: Router.sheet("DaySheet", { date: shown.date })
            Column {
                id: column
                anchors.centerIn: parent
                spacing: Theme.tight
                Repeater {
                    model: day.shown.sites.length
                    Item {
                        required property int index
                        readonly property string level: (day.shown.sites[index] || { level: "" }).level
                        width: Theme.icon
                        height: Theme.icon
                        anchors.horizontalCenter: parent.horizontalCenter
                        Ripples {
                            visible: parent.level !== ""
                            anchors.fill: parent
                            anchors.margins: 2
                            level: Math.max(0, Appearance.phrases.levels.indexOf(parent.level))
                            color: Theme.main
                        }
                        Icon { visible: parent.level === ""; anchors.centerIn: parent; width: Theme.iconSmall; height: Theme.iconSmall; name: "plus"; color: Theme.nowText }
                    }
                }
                Text {
                    text: Appearance.phrases.dayNumber(day.shown.date)
                    font.family: Theme.family
                    font.pixelSize: Theme.tiny
                    color: Theme.inkSoft
                    anchors.horizontalCenter: parent.horizontalCenter
                    Accessible.ignored: true
                }
            }
        }
    }
}
