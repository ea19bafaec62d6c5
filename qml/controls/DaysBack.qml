import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Firstdew

// The last days, each to be filled in or mended.
RowLayout {
    id: row
    property var days: []
    spacing: 0
    Repeater {
        model: row.days
        T.Button {
            id: day
            required property var modelData
            readonly property bool gap: modelData.sites.some(s => s.level === "")
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            implicitWidth: Theme.target - Theme.small
            implicitHeight: Math.max(Theme.target, column.implicitHeight + Theme.small)
            text: Look.words.dayFull(modelData.date)
            Accessible.role: Accessible.Button
            Accessible.name: gap ? qsTr("%1, to fill in").arg(text) : text
            Accessible.onPressAction: if (enabled) clicked()
            Keys.onReturnPressed: clicked()
            onClicked: { sheet.date = modelData.date; sheet.open() }
            contentItem: Item {
                Column {
                    id: column
                    anchors.centerIn: parent
                    spacing: Theme.tight
                    Repeater {
                        model: day.modelData.sites
                        Item {
                            required property var modelData
                            width: Theme.icon
                            height: Theme.icon
                            anchors.horizontalCenter: parent.horizontalCenter
                            Ripples {
                                visible: parent.modelData.level !== ""
                                anchors.fill: parent
                                anchors.margins: 2
                                level: Math.max(0, Look.words.levels.indexOf(parent.modelData.level))
                                color: Theme.main
                            }
                            Icon { visible: parent.modelData.level === ""; anchors.centerIn: parent; width: Theme.iconSmall; height: Theme.iconSmall; name: "plus"; color: Theme.nowText }
                        }
                    }
                    Text {
                        text: Look.words.dayNumber(day.modelData.date)
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
    Sheet {
        id: sheet
        property string date: ""
        readonly property var shown: row.days.find(d => d.date === date)
        title: Look.words.dayFull(date)
        Repeater {
            model: sheet.shown ? sheet.shown.sites : []
            ColumnLayout {
                id: one
                required property var modelData
                Layout.fillWidth: true
                spacing: Theme.small
                Label { text: Look.words.site(one.modelData.site); role: "strong" }
                LevelChoice {
                    dense: true
                    site: one.modelData.site
                    level: one.modelData.level
                    onChosen: level => TodayModel.checkIn(one.modelData.site, level, sheet.date)
                }
            }
        }
        ActionButton { kind: "main"; text: qsTr("Done"); Layout.fillWidth: true; onClicked: sheet.close() }
    }
}
