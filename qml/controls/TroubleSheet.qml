import QtQuick
import QtQuick.Layouts
import Firstdew

Sheet {
    id: trouble
    title: qsTr("That could not be saved")
    Label { text: Store.errorText; Layout.fillWidth: true }
    Label { text: qsTr("What was recorded before is safe. Make room on the phone or restart the app, then try again."); role: Label.Small; Layout.fillWidth: true }
    ActionButton { text: qsTr("Close"); kind: ButtonFace.Main; Layout.fillWidth: true; onClicked: trouble.close() }
}
