import QtQuick
import QtQuick.Layouts
import Firstdew

// One of the last days, to be filled in or mended.
Sheet {
    id: sheet
    property string date: ""
    readonly property var shown: TodayModel.lately.find(d => d.date === date)
    title: Look.words.dayFull(date)
    Repeater {
        model: sheet.shown ? sheet.shown.sites.length : 0
        ColumnLayout {
            id: one
            required property int index
            readonly property var line: sheet.shown && sheet.shown.sites[index] || { site: "", level: "" }
            Layout.fillWidth: true
            spacing: Theme.small
            Label { text: Look.words.site(one.line.site); role: "strong" }
            LevelChoice {
                dense: true
                site: one.line.site
                level: one.line.level
                onChosen: level => TodayModel.checkIn(one.line.site, level, sheet.date)
            }
        }
    }
    ActionButton { kind: ButtonFace.Main; text: qsTr("Done"); Layout.fillWidth: true; onClicked: sheet.close() }
}
