import QtQuick
import QtQuick.Layouts
import Firstdew

Label {
    role: Label.Lead
    room: parent ? parent.width : 0
    font.weight: Theme.strong
    Layout.fillWidth: true
    Accessible.role: Accessible.Heading
}
