import QtQuick
import QtQuick.Layouts
import Firstdew

// The four places, below the page or, upright, beside it.
Rectangle {
    id: bar
    property int current: Place.Today
    property bool upright: false
    signal chosen(int place)
    implicitHeight: Math.max(Theme.barHeight, row.implicitHeight)
    implicitWidth: Theme.barWidth
    color: Theme.card
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Places")
    Rectangle {
        anchors.right: parent.right
        width: bar.upright ? Theme.hair : parent.width
        height: bar.upright ? parent.height : Theme.hair
        color: Theme.line
    }
    GridLayout {
        id: row
        anchors.fill: parent
        columns: bar.upright ? 1 : 4
        columnSpacing: 0
        rowSpacing: 0
        Repeater {
            model: [{ place: Place.Today, icon: "today" }, { place: Place.Session, icon: "bath" }, { place: Place.Diary, icon: "diary" }, { place: Place.Plan, icon: "plan" }]
            ActionButton {
                id: tab
                required property var modelData
                readonly property bool on: bar.current === modelData.place
                text: Appearance.phrases.place(modelData.place)
                iconName: modelData.icon
                kind: ButtonFace.Bare
                stacked: true
                focusOut: 0
                textSize: Math.min(Theme.tiny, width / 5)
                weight: on ? Theme.strong : Font.Normal
                ink: on ? Theme.ink : Theme.inkSoft
                between: Theme.tight
                leastHigh: Theme.barHeight
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                Layout.preferredHeight: bar.upright ? 1 : implicitHeight
                Accessible.role: Accessible.PageTab
                Accessible.selected: on
                onClicked: bar.chosen(modelData.place)
                Rectangle {
                    x: bar.upright ? (Appearance.rightToLeft ? parent.width - width : 0) : (parent.width - width) / 2
                    y: bar.upright ? (parent.height - height) / 2 : 0
                    width: bar.upright ? Theme.focusLine : Theme.iconLarge
                    height: bar.upright ? Theme.iconLarge : Theme.focusLine
                    color: Theme.now
                    visible: tab.on
                }
            }
        }
    }
}
