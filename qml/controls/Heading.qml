import QtQuick
import QtQuick.Layouts
import Firstdew

Label {
    role: Label.Lead
    font.weight: Theme.strong
    Layout.fillWidth: true
    Accessible.role: Accessible.Heading
}
