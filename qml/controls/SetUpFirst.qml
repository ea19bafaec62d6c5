import QtQuick
import QtQuick.Layouts
import Firstdew

// Where nothing is in use yet: what will stand here, and the way to it.
Card {
    id: card
    property string title: ""
    property string purpose: ""
    Label { role: Label.Title; visible: text !== ""; text: card.title; Layout.fillWidth: true; Accessible.role: Accessible.Heading }
    Label { text: card.purpose; Layout.fillWidth: true }
    ActionButton { kind: ButtonFace.Now; text: qsTr("Set up"); Layout.fillWidth: true; onClicked: Router.page(Part.FirstStartPart) }
}
