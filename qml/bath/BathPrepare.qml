import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    title: qsTr("Prepare: %1").arg(BathModel.siteName)
    // Nothing is taken for said that was not.
    property int antiperspirant: LastAntiperspirant.NotSaid
    property int shaved: LastShave.NotSaid
    property int cuts: SmallCuts.NotSaid
    Card {
        OneOf {
            label: qsTr("Antiperspirant with aluminium there in the last 24 hours?")
            options: [{ value: LastAntiperspirant.No, text: qsTr("No") }, { value: LastAntiperspirant.HalfADay, text: qsTr("About 12 hours ago") }, { value: LastAntiperspirant.LastHours, text: qsTr("In the last hours") }]
            value: page.antiperspirant
            onChosen: answer => { page.antiperspirant = answer; BathModel.setAntiperspirant(answer) }
        }
        OneOf {
            label: qsTr("Shaved there in the last three days?")
            options: [{ value: LastShave.No, text: qsTr("No") }, { value: LastShave.TwoDays, text: qsTr("Two days ago") }, { value: LastShave.Yesterday, text: qsTr("Yesterday") }, { value: LastShave.Today, text: qsTr("Today") }]
            value: page.shaved
            onChosen: answer => { page.shaved = answer; BathModel.setShaved(answer) }
        }
        OneOf {
            label: qsTr("Small cuts on the skin there?")
            options: [{ value: SmallCuts.No, text: qsTr("No") }, { value: SmallCuts.Yes, text: qsTr("Yes") }]
            value: page.cuts
            onChosen: answer => { page.cuts = answer; BathModel.setSmallCuts(answer) }
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
            readonly property prepLine line: BathModel.preparation[index] ?? Empty.prepLine
            text: line.text
            checked: line.done
            onClicked: BathModel.tick(line.item)
        }
    }
    Label { visible: BathModel.cellsLow; role: Label.Strong; color: Theme.nowText; Layout.fillWidth: true; text: qsTr("The batteries are near their end. Have new ones at hand.") }
    Card {
        visible: BathModel.way === WayOfWorking.HandsUnder
        kind: Card.Now
        Label { role: Label.Strong; Layout.fillWidth: true; text: qsTr("You raise and lower with the remote control. While your hands are in, any key or a tap anywhere on the screen, with elbow or nose, stops. For the swap: meter at zero, hands out, dry them, swap, tap. The phone waits. It cannot see the current: watch the meter yourself.") }
    }
    ActionButton { text: qsTr("Check how loud it is"); Layout.fillWidth: true; onClicked: BathModel.checkVolume() }
    Label { visible: BathModel.refusal !== ""; role: Label.Strong; color: Theme.danger; text: BathModel.refusal; Layout.fillWidth: true }
    ActionButton { kind: ButtonFace.Now; text: qsTr("Begin"); Layout.fillWidth: true; enabled: BathModel.ready; onClicked: BathModel.start() }
    ActionButton { kind: ButtonFace.Quiet; text: qsTr("Back"); Layout.fillWidth: true; onClicked: BathModel.back() }
}
