import QtQuick
import QtQuick.Templates as T
import Firstdew

// How a chip looks; `of` is the control that it belongs to.
Item {
    id: face
    required property T.AbstractButton of
    // Room for the tick is kept, so that a choice moves nothing.
    readonly property real besides: 2 * Theme.gap + Theme.iconSmall + Theme.tight
    implicitHeight: words.implicitHeight + 2 * Theme.small
    implicitWidth: Math.ceil(measure.implicitWidth) + besides
    Rectangle {
        anchors.fill: parent
        radius: height / 2
        color: !face.of.enabled ? Theme.sunken : face.of.checked ? Theme.main : face.of.down ? Theme.cardPressed : Theme.paper
        border.width: Theme.hair
        border.color: face.of.checked ? Theme.main : Theme.edge
        FocusFrame { of: face.of; anchors.fill: parent; radius: height / 2 }
    }
    Text { id: measure; visible: false; text: face.of.text; font: words.font }
    Row {
        anchors.centerIn: parent
        spacing: Theme.tight
        Icon {
            visible: face.of.checked
            name: "check"
            color: Theme.mainInk
            width: Theme.iconSmall
            height: Theme.iconSmall
            anchors.verticalCenter: parent.verticalCenter
        }
        Text {
            id: words
            text: face.of.text
            font.family: Theme.family
            font.pixelSize: Theme.label
            font.weight: Theme.strong
            color: !face.of.enabled ? Theme.inkSoft : face.of.checked ? Theme.mainInk : Theme.ink
            wrapMode: Text.Wrap
            width: Math.min(Math.ceil(measure.implicitWidth), Math.max(1, face.width - face.besides))
            Accessible.ignored: true
        }
    }
}
