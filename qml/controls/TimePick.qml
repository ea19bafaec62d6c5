import QtQuick
import QtQuick.Layouts
import Firstdew

// A time of the day: the hour, then the quarter.
PickRow {
    id: pick
    property int minutes: 0 // of the day
    signal picked(int minutes)
    shown: Appearance.phrases.clock(minutes)
    sheet: Sheet {
        id: sheet
        property int hour: -1
        readonly property int across: Theme.largeText || Appearance.phrases.clock(0).length > 5 ? 3 : 4 // "12:00 AM" needs more room
        title: pick.label
        onAboutToShow: hour = -1
        Grid {
            id: grid
            Layout.fillWidth: true
            columns: sheet.across
            Repeater {
                model: sheet.hour < 0 ? 24 : 4
                Item {
                    id: cell
                    required property int index
                    readonly property int value: sheet.hour < 0 ? index * 60 : sheet.hour * 60 + index * 15
                    width: Math.floor(grid.width / sheet.across)
                    height: Theme.target + Theme.tight
                    ActionButton {
                        anchors { fill: parent; margins: Theme.tight / 2 }
                        side: 0
                        leastHigh: Theme.target
                        kind: cell.value === (sheet.hour < 0 ? Math.floor(pick.minutes / 60) * 60 : pick.minutes) ? ButtonFace.Main : ButtonFace.Plain
                        text: Appearance.phrases.clock(cell.value)
                        Accessible.name: kind === ButtonFace.Main ? qsTr("%1, chosen").arg(text) : text
                        onClicked: {
                            if (sheet.hour < 0) {
                                sheet.hour = cell.index
                                return
                            }
                            sheet.close()
                            pick.picked(cell.value)
                        }
                    }
                }
            }
        }
    }
}
