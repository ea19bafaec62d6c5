import QtQuick
import QtQuick.Templates as T
import Firstdew

// A small thing that is on or off.
T.Button {
    id: control
    checkable: true
    implicitHeight: Math.max(Theme.target, words.implicitHeight + 2 * Theme.small)
    implicitWidth: Math.max(Theme.target, words.implicitWidth + 2 * Theme.margin + (checked ? Theme.iconSmall + Theme.tight : 0))
    Accessible.role: Accessible.CheckBox
    Accessible.name: text
    Accessible.checked: checked
    Accessible.onPressAction: click()
    Accessible.onToggleAction: click()
    Keys.onReturnPressed: click()
    contentItem: Item {
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
