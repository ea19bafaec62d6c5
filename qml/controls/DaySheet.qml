import QtQuick
import QtQuick.Layouts
import Firstdew

// One of the last days, to be filled in or mended.
Sheet {
    id: sheet
    readonly property int day: Router.day
    readonly property dayBehind shown: TodayModel.lately[TodayModel.lately.length - (Store.today - day)] ?? Empty.dayBehind
    title: Appearance.phrases.dayFull(day)
    Repeater {
        model: sheet.shown.sites.length
        ColumnLayout {
            id: one
            required property int index
            readonly property siteLevel line: sheet.shown.sites[index] ?? Empty.siteLevel
            Layout.fillWidth: true
            spacing: Theme.small
            Label { text: Appearance.phrases.site(one.line.site); role: Label.Strong }
            LevelChoice {
                dense: true
                site: one.line.site
                level: one.line.noted ? one.line.level : -1
                onChosen: level => TodayModel.checkIn(one.line.site, level, sheet.day)
            }
        }
    }
    ActionButton { kind: ButtonFace.Main; text: qsTr("Done"); Layout.fillWidth: true; onClicked: sheet.close() }
}
