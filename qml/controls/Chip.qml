import QtQuick
import QtQuick.Templates as T
import Firstdew

// A small thing that is on or off.
T.Button {
    id: control
    checkable: true
    implicitHeight: Math.max(Theme.target, words.implicitHeight + 2 * Theme.small)
    // Room for the tick is kept, so that a choice moves nothing.
    readonly property real besides: 2 * Theme.gap + Theme.iconSmall + Theme.tight
    implicitWidth: Math.max(Theme.target, Math.ceil(measure.implicitWidth) + besides)
    Accessible.role: Accessible.CheckBox
    Accessible.name: text
    Accessible.checked: checked
    Accessible.onPressAction: click()
    Accessible.onToggleAction: click()
    Keys.onReturnPressed: click()
    contentItem: Item {
        Text { id: measure; visible: false; text: control.text; font: words.font }
        Row {
            anchors.centerIn: parent
            spacing: Theme.tight
            Icon {
                visible: control.checked
                name: "check"
                color: Theme.mainInk
                width: Theme.iconSmall
                height: Theme.iconSmall
                anchors.verticalCenter: parent.verticalCenter
            }
            Text {
                id: words
                text: control.text
                font.family: Theme.family
                font.pixelSize: Theme.label
                font.weight: Theme.strong
                color: control.checked ? Theme.mainInk : Theme.ink
                wrapMode: Text.Wrap
                width: Math.min(Math.ceil(measure.implicitWidth), Math.max(1, control.width - control.besides))
                Accessible.ignored: true
            }
        }
    }
    background: Rectangle {
        radius: height / 2
        color: control.checked ? Theme.main : control.down ? Theme.cardPressed : Theme.paper
        border.width: Theme.hair
        border.color: control.checked ? Theme.main : Theme.edge
        FocusFrame { of: control; anchors.fill: parent; radius: height / 2 }
    }
}
