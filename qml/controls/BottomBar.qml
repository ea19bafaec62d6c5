import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Firstdew

// The four places, below the page or, upright, beside it.
Rectangle {
    id: bar
    property string current: "today"
    property bool upright: false
    signal chosen(string place)
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
            model: ["today", "bath", "diary", "plan"]
            T.TabButton {
                id: tab
                required property string modelData
                readonly property bool on: bar.current === modelData
                text: Look.words.place(modelData)
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                Layout.preferredHeight: bar.upright ? 1 : implicitHeight
                implicitHeight: Math.max(Theme.barHeight, column.implicitHeight + 2 * Theme.small)
                Accessible.name: text
                Accessible.selected: on
                Accessible.onPressAction: if (enabled) clicked()
                Keys.onReturnPressed: clicked()
                onClicked: bar.chosen(modelData)
                contentItem: Item {
                    Column {
                        id: column
                        anchors.centerIn: parent
                        spacing: Theme.tight
                        Icon {
                            name: tab.modelData
                            color: tab.on ? Theme.ink : Theme.inkSoft
                            width: Theme.icon
                            height: Theme.icon
                            anchors.horizontalCenter: parent.horizontalCenter
                        }
                        Text {
                            text: tab.text
                            font.family: Theme.family
                            font.pixelSize: Math.min(Theme.tiny, tab.width / 5)
                            font.weight: tab.on ? Theme.strong : Font.Normal
                            color: tab.on ? Theme.ink : Theme.inkSoft
                            anchors.horizontalCenter: parent.horizontalCenter
                            Accessible.ignored: true
                        }
                    }
                }
                background: Rectangle {
                    color: tab.down ? Theme.cardPressed : Theme.clear
                    Rectangle {
                        x: bar.upright ? (tab.mirrored ? parent.width - width : 0) : (parent.width - width) / 2
                        y: bar.upright ? (parent.height - height) / 2 : 0
                        width: bar.upright ? Theme.focusLine : Theme.iconLarge
                        height: bar.upright ? Theme.iconLarge : Theme.focusLine
                        color: Theme.now
                        visible: tab.on
                    }
                    FocusFrame { of: tab; anchors.fill: parent; anchors.margins: Theme.focusLine }
                }
            }
        }
    }
}
