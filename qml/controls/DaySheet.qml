import QtQuick
import QtQuick.Layouts
import Firstdew

// One of the last days, to be filled in or mended.
Sheet {
    id: sheet
    property string date: ""
    readonly property var shown: TodayModel.lately.find(d => d.date === date)
    title: Appearance.phrases.dayFull(date)
    Repeater {
        model: sheet.shown ? sheet.shown.sites.length : 0
        ColumnLayout {
            id: one
            required property int index
            readonly property var line: sheet.shown && sheet.shown.sites[index] || { site: "", level: "" }
            Layout.fillWidth: true
            spacing: Theme.small
            Label { text: Appearance.phrases.site(one.line.site); role: Label.Strong }
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
