import QtQuick
import QtQuick.Layouts
import Firstdew

// After practice: nothing to write down.
Frame {
    title: qsTr("That was practice")
    Label { Layout.fillWidth: true; text: qsTr("Nothing of it was recorded.") }
    Label { Layout.fillWidth: true; text: qsTr("After a real session you dry your skin and the kit, say how it felt, and look at your skin.") }
    Card {
        visible: BathModel.practiceBar !== ""
        Label { Layout.fillWidth: true; text: BathModel.practiceBar }
    }
    dock: [
        ActionButton { text: qsTr("Practise again"); Layout.fillWidth: true; onClicked: BathModel.beginPractice() },
        ActionButton { kind: ButtonFace.Now; text: qsTr("Leave practice"); Layout.fillWidth: true; onClicked: BathModel.leavePractice() }
    ]
}
