import QtQuick
import Firstdew

// To where one came from.
IconButton {
    iconName: "back"
    text: qsTr("Back")
    onClicked: Router.back()
}
