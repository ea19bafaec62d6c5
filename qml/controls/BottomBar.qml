import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
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
    // Beside the page it reaches to the edges of its own side, below the page to three of them.
    Rectangle {
        z: -1
        readonly property bool mirrored: Appearance.rightToLeft
        x: bar.upright && mirrored ? 0 : -Theme.safeLeft
        y: bar.upright ? -Theme.safeTop : 0
        width: parent.width + (bar.upright ? (mirrored ? Theme.safeRight : Theme.safeLeft) : Theme.safeLeft + Theme.safeRight)
        height: parent.height + Theme.safeBottom + (bar.upright ? Theme.safeTop : 0)
        color: bar.color
    }
    Rectangle {
        anchors.right: parent.right
        width: bar.upright ? Theme.hair : parent.width
        height: bar.upright ? parent.height : Theme.hair
        color: Theme.line
    }
    GridLayout {
        id: row
        width: bar.upright ? parent.width : Math.min(parent.width, Theme.measure) // on a wide screen within reach of each other
        height: parent.height
        x: (parent.width - width) / 2
        columns: bar.upright ? 1 : 4
        columnSpacing: 0
        rowSpacing: 0
        Repeater {
            model: [{ place: Place.Today, icon: "today" }, { place: Place.Session, icon: "bath" }, { place: Place.Diary, icon: "diary" }, { place: Place.Plan, icon: "plan" }]
            T.TabButton {
                id: tab
                required property var modelData
                readonly property bool on: bar.current === modelData.place
                text: Appearance.phrases.place(modelData.place)
                checkable: false // the page shown decides which one is on
                implicitWidth: Theme.target // the four share the bar; their text size depends on the width
                implicitHeight: face.implicitHeight
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                Layout.preferredHeight: bar.upright ? 1 : implicitHeight
                Accessible.name: text
                Accessible.selected: on
                Accessible.onPressAction: if (enabled) clicked()
                Keys.onReturnPressed: bar.chosen(modelData.place)
                Keys.onEnterPressed: bar.chosen(modelData.place)
                onClicked: bar.chosen(modelData.place)
                background: ButtonFace {
                    id: face
                    text: tab.text
                    iconName: tab.modelData.icon
                    down: tab.down
                    visualFocus: tab.visualFocus
                    kind: ButtonFace.Bare
                    stacked: true
                    focusOut: 0
                    textSize: Math.min(Theme.tiny, width / 5)
                    weight: tab.on ? Theme.strong : Font.Normal
                    ink: tab.on ? Theme.ink : Theme.inkSoft
                    between: Theme.tight
                    leastHigh: Theme.barHeight
                }
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
