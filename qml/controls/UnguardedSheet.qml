import QtQuick
import QtQuick.Layouts
import Firstdew

// The app lock is on, but this device cannot ask for its owner. The record is shown, so that nobody is locked out, and this says so.
Sheet {
    id: told
    title: qsTr("The app lock does not work here")
    Label { Layout.fillWidth: true; text: qsTr("It is switched on, but this phone has no lock that Firstdew can ask for. So your diary opened without it.") }
    Label { Layout.fillWidth: true; text: qsTr("Set a screen lock in the phone's own settings, or switch the app lock off under Settings.") }
    ActionButton { kind: ButtonFace.Main; text: qsTr("Close"); Layout.fillWidth: true; onClicked: told.close() }
}
