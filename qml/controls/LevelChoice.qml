import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Firstdew

// The four levels of the diary, as ripples and words.
GridLayout {
    id: choice
    property string site: ""
    property string level: ""
    property bool dense: false
    signal chosen(string level)
    // Asked again when the text grows: a call says nothing of what it depends on.
    readonly property real widest: metrics.height && Math.max(...Look.words.levels.map(l => metrics.advanceWidth(Look.words.level(l)))) + 2 * Theme.tight
    columns: width / 4 - Theme.small >= widest ? 4 : width / 2 - Theme.small >= widest ? 2 : 1
    FontMetrics { id: metrics; font.family: Theme.family; font.pixelSize: Theme.label; font.weight: Theme.strong }
    columnSpacing: Theme.small
    rowSpacing: Theme.small
    Layout.fillWidth: true
    Repeater {
        model: Look.words.levels
        T.Button {
            id: button
            required property string modelData
            required property int index
            readonly property bool on: choice.level === modelData
            checkable: false
            text: Look.words.level(modelData)
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            implicitHeight: Math.max(choice.dense ? Theme.target : Theme.bathTarget, contentItem.implicitHeight + 2 * Theme.small)
            implicitWidth: contentItem.implicitWidth + 2 * Theme.tight
            Accessible.role: Accessible.Button
            Accessible.name: Look.words.siteIs(choice.site, modelData)
            Accessible.onPressAction: if (enabled) clicked()
            Keys.onReturnPressed: clicked()
            onClicked: choice.chosen(modelData)
            contentItem: Item {
                implicitHeight: column.implicitHeight
                implicitWidth: column.implicitWidth
                Column {
                    id: column
                    anchors.centerIn: parent
                    spacing: Theme.small
                    Ripples {
                        level: button.index
                        color: button.on ? Theme.mainInk : Theme.ink
                        stroke: 2.4
                        width: Theme.iconLarge
                        height: choice.dense ? Theme.icon : Theme.iconLarge * 0.8
                        anchors.horizontalCenter: parent.horizontalCenter
                    }
                    Text {
                        text: button.text
                        font.family: Theme.family
                        font.pixelSize: Theme.label
                        font.weight: Theme.strong
                        color: button.on ? Theme.mainInk : Theme.ink
                        anchors.horizontalCenter: parent.horizontalCenter
                        Accessible.ignored: true
                    }
                }
            }
            background: Rectangle {
                radius: Theme.radius
                color: button.on ? Theme.main : button.down ? Theme.cardPressed : Theme.paper
                border.width: Theme.hair
                border.color: button.on ? Theme.main : Theme.edge
                FocusFrame { of: button; anchors.fill: parent }
            }
        }
    }
}
