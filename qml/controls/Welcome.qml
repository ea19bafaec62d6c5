import QtQuick.Layouts
import Firstdew

// What stands on Today while nothing is in use.
SetUpFirst {
    title: qsTr("Welcome to Firstdew")
    purpose: qsTr("Firstdew leads you through treating sweating hands, feet or armpits with tap water and a small current. It tells you when the next session is due.")
    ActionButton { kind: ButtonFace.Quiet; text: qsTr("Move from another phone"); Layout.fillWidth: true; onClicked: Router.page(Part.MovePagePart) }
}
