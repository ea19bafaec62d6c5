import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Firstdew

// A person of the caseload: the name, why a call is needed, and whether this is the page shown beside the list.
T.Button {
    id: control
    property caseLine person
    property bool chosen: false
    readonly property color mark: person.skin ? Theme.danger : person.call ? Theme.now : Theme.line
    function sentences(lines: var): string { return lines.join(". ") }
    text: person.name !== "" ? person.name : qsTr("Name not given")
    Layout.fillWidth: true
    implicitHeight: Math.max(Theme.barHeight, texts.implicitHeight + 2 * Theme.gap)
    Accessible.role: Accessible.Button
    Accessible.name: control.text
    Accessible.description: sentences(person.why)
    Accessible.onPressAction: if (enabled) clicked()
    Keys.onReturnPressed: clicked()
    contentItem: Item {
        Rectangle {
            id: bar
            anchors { left: parent.left; top: parent.top; bottom: parent.bottom; leftMargin: Theme.small; topMargin: Theme.gap; bottomMargin: Theme.gap }
            width: Theme.tight
            radius: width / 2
            color: control.mark
        }
        Column {
            id: texts
            anchors { left: bar.right; right: arrow.left; verticalCenter: parent.verticalCenter; leftMargin: Theme.gap; rightMargin: Theme.small }
            spacing: Theme.tight
            Label { width: parent.width; role: Label.Strong; text: control.text; Accessible.ignored: true }
            Repeater {
                model: control.person.why
                Label { required property string modelData; required property int index; width: texts.width; role: Label.Small; color: control.person.skin && index === 0 ? Theme.danger : control.person.call ? Theme.ink : Theme.inkSoft; text: modelData; Accessible.ignored: true }
            }
        }
        Icon {
            id: arrow
            anchors { right: parent.right; verticalCenter: parent.verticalCenter; rightMargin: Theme.gap }
            width: Theme.icon
            height: Theme.icon
            name: "next"
            color: Theme.inkSoft
            mirrored: control.mirrored
        }
    }
    background: Rectangle {
        radius: Theme.radius
        color: control.down ? Theme.cardPressed : Theme.card
        border.width: control.chosen ? 2 : Theme.hair
        border.color: control.chosen ? Theme.main : Theme.line
        FocusFrame { of: control; anchors.fill: parent }
    }
}
