import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Firstdew

// The last days, each to be filled in or mended.
// Not a layout: in Qt 6.4 one within another's card is measured with days that are already deleted, and falls over.
Row {
    id: row
    property var days: []
    property string date: "" // of the day that is open
    Repeater {
        model: row.days.length // the days stay, and with them the keyboard's place, when one is filled in
        T.Button {
            id: day
            required property int index
            readonly property var shown: row.days[index] || { date: "", sites: [] }
            readonly property bool gap: shown.sites.some(s => s.level === "")
            width: row.width / Math.max(1, row.days.length)
            implicitHeight: Math.max(Theme.target, column.implicitHeight + Theme.small)
            text: Look.words.dayFull(shown.date)
            Accessible.role: Accessible.Button
            Accessible.name: gap ? qsTr("%1, to fill in").arg(text) : text
            Accessible.onPressAction: if (enabled) clicked()
            Keys.onReturnPressed: clicked()
            onClicked: { row.date = shown.date; sheet.open() }
            contentItem: Item {
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
                                level: Math.max(0, Look.words.levels.indexOf(parent.level))
                                color: Theme.main
                            }
                            Icon { visible: parent.level === ""; anchors.centerIn: parent; width: Theme.iconSmall; height: Theme.iconSmall; name: "plus"; color: Theme.nowText }
                        }
                    }
                    Text {
                        text: Look.words.dayNumber(day.shown.date)
                        font.family: Theme.family
                        font.pixelSize: Theme.tiny
                        color: Theme.inkSoft
                        anchors.horizontalCenter: parent.horizontalCenter
                        Accessible.ignored: true
                    }
                }
            }
            background: Rectangle {
                radius: Theme.radiusSmall
                color: day.down ? Theme.cardPressed : Theme.clear
                FocusFrame { of: day; anchors.fill: parent }
            }
        }
    }
    LateSheet {
        id: sheet
        sheet: Component {
            Sheet {
                id: days
                readonly property var shown: row.days.find(d => d.date === row.date)
                title: Look.words.dayFull(row.date)
                Repeater {
                    model: days.shown ? days.shown.sites.length : 0
                    ColumnLayout {
                        id: one
                        required property int index
                        readonly property var line: days.shown && days.shown.sites[index] || { site: "", level: "" }
                        Layout.fillWidth: true
                        spacing: Theme.small
                        Label { text: Look.words.site(one.line.site); role: "strong" }
                        LevelChoice {
                            dense: true
                            site: one.line.site
                            level: one.line.level
                            onChosen: level => TodayModel.checkIn(one.line.site, level, row.date)
                        }
                    }
                }
                ActionButton { kind: "main"; text: qsTr("Done"); Layout.fillWidth: true; onClicked: sheet.close() }
            }
        }
    }
}
