import QtQuick
import QtQuick.Templates as T
import Firstdew

// A labelled button. kind: "now" (the one thing to do), "main", "plain", "danger", "alarm" (danger on its own colour), "quiet".
T.Button {
    id: control
    property string kind: "plain"
    property string iconName: ""
    property real textSize: Theme.body
    readonly property color fill: kind === "now" ? Theme.now : kind === "main" ? Theme.main : kind === "danger" ? Theme.danger : kind === "alarm" ? Theme.dangerInk
                                : kind === "quiet" ? Theme.clear : Theme.card
    readonly property color fillPressed: kind === "now" ? Theme.nowPressed : kind === "main" || kind === "danger" || kind === "alarm" ? Qt.darker(fill, 1.15) : Theme.cardPressed
    readonly property color inkColor: !enabled ? Theme.inkSoft : kind === "now" ? Theme.nowInk : kind === "main" ? Theme.mainInk
                                : kind === "danger" ? Theme.dangerInk : kind === "alarm" ? Theme.danger : kind === "quiet" ? Theme.main : Theme.ink
    implicitHeight: Math.max(Theme.target, implicitContentHeight + topPadding + bottomPadding)
    implicitWidth: Math.max(Theme.target, implicitContentWidth + leftPadding + rightPadding)
    horizontalPadding: kind === "quiet" ? Theme.gap : Theme.margin
    verticalPadding: Theme.small
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.Button
    Accessible.name: text
    // Qt 6.4 has no other way to tell a screen reader that nothing happens here yet.
    Accessible.focusable: enabled
    Accessible.description: enabled ? "" : qsTr("Not possible yet")
    Accessible.onPressAction: if (enabled) clicked()
    Keys.onReturnPressed: clicked()
    Keys.onEnterPressed: clicked()

    contentItem: Item {
        implicitWidth: measure.implicitWidth + (control.iconName !== "" ? Theme.icon + Theme.small : 0)
        implicitHeight: Math.max(words.implicitHeight, control.iconName !== "" ? Theme.icon : 0)
        Text { id: measure; visible: false; text: control.text; font: words.font }
        Row {
            id: row
            anchors.centerIn: parent
            spacing: Theme.small
            Icon {
                visible: control.iconName !== ""
                name: control.iconName
                color: control.inkColor
                mirrored: control.mirrored && (name === "back" || name === "next" || name === "undo")
                width: visible ? Theme.icon : 0
                height: Theme.icon
                anchors.verticalCenter: parent.verticalCenter
            }
            Text {
                id: words
                text: control.text
                font.family: Theme.family
                font.pixelSize: control.textSize
                font.weight: Theme.strong
                color: control.inkColor
                wrapMode: Text.Wrap
                horizontalAlignment: Text.AlignHCenter
                width: Math.min(Math.ceil(measure.implicitWidth), Math.max(1, control.availableWidth - (control.iconName !== "" ? Theme.icon + Theme.small : 0)))
                anchors.verticalCenter: parent.verticalCenter
                Accessible.ignored: true
            }
        }
    }
    background: Rectangle {
        radius: Theme.radius
        color: !control.enabled ? Theme.sunken : control.down ? control.fillPressed : control.fill
        border.width: control.kind === "plain" ? Theme.hair : 0
        border.color: Theme.edge
        FocusFrame { of: control; anchors.fill: parent }
    }
}
