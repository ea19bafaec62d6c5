import QtQuick
import QtQuick.Layouts
import Firstdew

// Over every picture of practice, with the way out.
Rectangle {
    implicitHeight: Math.max(row.implicitHeight + 2 * Theme.tight, Theme.target)
    height: implicitHeight
    color: Theme.nowWash
    Rectangle { anchors { left: parent.left; right: parent.right; bottom: parent.bottom } height: 2; color: Theme.now }
    RowLayout {
        id: row
        anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter; leftMargin: Theme.margin; rightMargin: Theme.tight }
        spacing: Theme.small
        Label { role: Label.Strong; text: qsTr("Practice: machine stays off"); Layout.fillWidth: true; Accessible.role: Accessible.AlertMessage }
        IconButton { iconName: "close"; text: qsTr("Leave practice"); onClicked: BathModel.leavePractice() }
    }
}
