import QtQuick
import QtQuick.Layouts
import Firstdew

// First start was left in the middle.
Card {
    Heading { text: qsTr("Not everything is set up yet") }
    Label { text: qsTr("Before a session, Firstdew has to know your machine and your answers to the health questions."); Layout.fillWidth: true }
    ActionButton { kind: ButtonFace.Now; text: qsTr("Continue the set-up"); Layout.fillWidth: true; onClicked: Router.page(Part.FirstStartPart) }
}
