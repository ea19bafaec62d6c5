import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    title: qsTr("Prepare: %1").arg(BathModel.siteName)
    // Nothing is taken for said that was not.
    property string antiperspirant: ""
    property string shaved: ""
    property string wounds: ""
    Card {
        OneOf {
            label: qsTr("Antiperspirant with aluminium there in the last 24 hours?")
            options: [{ value: "-1", text: qsTr("No") }, { value: "12", text: qsTr("About 12 hours ago") }, { value: "2", text: qsTr("In the last hours") }]
            value: page.antiperspirant
            onChosen: hours => { page.antiperspirant = hours; BathModel.setAntiperspirant(Number(hours)) }
        }
        OneOf {
            label: qsTr("Shaved there in the last three days?")
            options: [{ value: "-1", text: qsTr("No") }, { value: "2", text: qsTr("Two days ago") }, { value: "1", text: qsTr("Yesterday") }, { value: "0", text: qsTr("Today") }]
            value: page.shaved
            onChosen: days => { page.shaved = days; BathModel.setShaved(Number(days)) }
        }
        OneOf {
            label: qsTr("Small cuts on the skin there?")
            options: [{ value: "no", text: qsTr("No") }, { value: "yes", text: qsTr("Yes") }]
            value: page.wounds
            onChosen: answer => { page.wounds = answer; BathModel.setSmallWounds(answer === "yes") }
        }
    }
    Repeater {
        model: BathModel.waits
        Card { id: wait; required property string modelData; kind: Card.Danger; Label { role: Label.Strong; text: wait.modelData; Layout.fillWidth: true } }
    }
    Label { visible: !BathModel.skinTold; role: Label.Small; Layout.fillWidth: true; text: qsTr("Answer all three, then tick each line.") }
    Heading { text: qsTr("Tick each line") }
    Repeater {
        model: BathModel.preparation.length // the lines stay, and with them the keyboard's place, when one is ticked
        TickRow {
            required property int index
            readonly property var line: BathModel.preparation[index] || ({})
            text: line.text || ""
            checked: line.done === true
            onClicked: BathModel.tick(line.item)
        }
    }
    Label { visible: BathModel.cellsLow; role: Label.Strong; color: Theme.nowText; Layout.fillWidth: true; text: qsTr("The batteries are near their end. Have new ones at hand.") }
    Card {
        visible: BathModel.way === "hands-under"
        kind: Card.Now
        Label { role: Label.Strong; Layout.fillWidth: true; text: qsTr("You raise and lower with the remote control. While your hands are in, any key or a tap anywhere on the screen, with elbow or nose, stops. For the swap: meter at zero, hands out, dry them, swap, tap. The phone waits. It cannot see the current: watch the meter yourself.") }
    }
    ActionButton { text: qsTr("Check how loud it is"); Layout.fillWidth: true; onClicked: BathModel.checkVolume() }
    Label { visible: BathModel.refusal !== ""; role: Label.Strong; color: Theme.danger; text: BathModel.refusal; Layout.fillWidth: true }
    ActionButton { kind: ButtonFace.Now; text: qsTr("Begin"); Layout.fillWidth: true; enabled: BathModel.ready; onClicked: BathModel.start() }
    ActionButton { kind: ButtonFace.Quiet; text: qsTr("Back"); Layout.fillWidth: true; onClicked: BathModel.back() }
}
