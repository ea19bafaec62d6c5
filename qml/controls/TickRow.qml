import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Firstdew

// A line to tick off.
T.CheckBox {
    id: control
    property bool worrying: false // ticked means danger, not done
    readonly property color mark: worrying ? Theme.danger : Theme.main
    Layout.fillWidth: true
    implicitHeight: Math.max(Theme.target, words.implicitHeight + 2 * Theme.gap)
    implicitWidth: words.implicitWidth + Theme.vast + Theme.margin
    nextCheckState: () => checkState // what is on is bound from outside
    Accessible.name: text
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
            radius: Theme.radiusSmall
            color: control.checked ? control.mark : Theme.clear
            border.width: 2
            border.color: !control.enabled ? Theme.line : control.checked ? control.mark : Theme.edge
            Icon { anchors.centerIn: parent; width: Theme.iconSmall; height: Theme.iconSmall; name: "check"; color: control.worrying ? Theme.dangerInk : Theme.mainInk; visible: control.checked }
        }
        Label { id: words; text: control.text; color: control.enabled ? Theme.ink : Theme.inkSoft; Layout.fillWidth: true; Layout.rightMargin: Theme.gap; Accessible.ignored: true }
    }
    background: Rectangle {
        radius: Theme.radius
        color: control.down ? Theme.cardPressed : Theme.card
        border.width: control.checked ? 2 : Theme.hair
        border.color: control.checked ? control.mark : Theme.line
        FocusFrame { of: control; anchors.fill: parent }
    }
}
