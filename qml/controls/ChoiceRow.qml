import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Firstdew

// One of several, as a line with a hint below it and a mark when it is the chosen one.
T.RadioButton {
    id: control
    property string hint: ""
    Layout.fillWidth: true
    implicitHeight: Math.max(Theme.target, words.implicitHeight + 2 * Theme.gap)
    implicitWidth: words.implicitWidth + Theme.vast + Theme.margin
    autoExclusive: false
    checkable: false // what is chosen is bound from outside
    Accessible.name: text
    Accessible.description: hint
    Accessible.checked: checked
    Accessible.onPressAction: if (enabled) clicked()
    Accessible.onToggleAction: if (enabled) clicked()
    Keys.onReturnPressed: clicked()
    contentItem: RowLayout {
        spacing: Theme.gap
        Rectangle {
            Layout.leftMargin: Theme.gap
            implicitWidth: Theme.icon
            implicitHeight: Theme.icon
            radius: Theme.icon / 2
            color: Theme.clear
            border.width: 2
            border.color: control.checked ? Theme.main : Theme.edge
            Rectangle { anchors.centerIn: parent; width: Theme.gap; height: Theme.gap; radius: Theme.gap / 2; color: Theme.main; visible: control.checked }
        }
        ColumnLayout {
            id: words
            Layout.rightMargin: Theme.gap
            spacing: Theme.tight / 2
            Label { role: Label.Strong; text: control.text; color: control.enabled ? Theme.ink : Theme.inkSoft; Layout.fillWidth: true; Accessible.ignored: true }
            Label { role: Label.Small; visible: text !== ""; text: control.hint; Layout.fillWidth: true; Accessible.ignored: true }
        }
    }
    background: Rectangle {
        radius: Theme.radius
        color: !control.enabled ? Theme.sunken : control.down ? Theme.cardPressed : Theme.card
        border.width: control.checked ? 2 : Theme.hair
        border.color: control.checked ? Theme.main : Theme.line
        FocusFrame { of: control; anchors.fill: parent }
    }
}
