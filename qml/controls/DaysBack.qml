import QtQuick
import QtQuick.Layouts
import Firstdew

// The last days, each to be filled in or mended.
// Not a layout: in Qt 6.4 one within another's card is measured with days that are already deleted, and falls over.
Row {
    id: row
    Repeater {
        model: TodayModel.lately.length // the days stay, and with them the keyboard's place, when one is filled in
        ActionButton {
            id: day
            required property int index
            readonly property dayBehind shown: TodayModel.lately[index] ?? Empty.dayBehind
            readonly property bool gap: shown.gap
            width: row.width / Math.max(1, TodayModel.lately.length)
            leastHigh: Math.max(Theme.target, column.implicitHeight + Theme.small)
            kind: ButtonFace.Bare
            wordless: true
            radius: Theme.radiusSmall
            text: Appearance.phrases.dayFull(shown.day)
            Accessible.name: inWords(text, shown.sites)
            function inWords(day, sites) { return day + ". " + sites.map(s => s.noted ? Appearance.phrases.siteIs(s.site, s.level) : qsTr("%1, to fill in").arg(Appearance.phrases.site(s.site))).join(". ") }
            onClicked: Router.openDaySheet(shown.day)
            Column {
                id: column
                anchors.centerIn: parent
                spacing: Theme.tight
                Repeater {
                    model: day.shown.sites.length
                    Item {
                        id: mark
                        required property int index
                        readonly property siteLevel line: day.shown.sites[index] ?? Empty.siteLevel
                        width: Theme.icon
                        height: Theme.icon
                        anchors.horizontalCenter: parent.horizontalCenter
                        Ripples {
                            visible: mark.line.noted
                            anchors.fill: parent
                            anchors.margins: 2
                            level: mark.line.level
                            color: Theme.main
                        }
                        Icon { visible: !mark.line.noted; anchors.centerIn: parent; width: Theme.iconSmall; height: Theme.iconSmall; name: "plus"; color: Theme.nowText }
                    }
                }
                Text {
                    text: Appearance.phrases.dayNumber(day.shown.day)
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
