import QtQuick
import QtQuick.Layouts
import Firstdew

// The long way: one thing a page, three questions of the skin first, then each line with its drawing.
Frame {
    id: page
    title: qsTr("Prepare: %1").arg(Appearance.phrases.within(BathModel.siteName))
    titleRole: Label.Title
    // Nothing is taken for said that was not.
    property int antiperspirant: LastAntiperspirant.NotSaid
    property int shaved: LastShave.NotSaid
    property int cuts: SmallCuts.NotSaid
    property int at: 0
    readonly property int questions: 3
    readonly property var lines: BathModel.preparation
    readonly property prepLine line: lines[at - questions] ?? Empty.prepLine
    readonly property bool asking: at < questions
    readonly property bool last: at >= questions + lines.length
    readonly property bool answered: [antiperspirant !== LastAntiperspirant.NotSaid, shaved !== LastShave.NotSaid, cuts !== SmallCuts.NotSaid][at] ?? true
    function back() { if (at > 0) --at; else BathModel.back() }
    function on() {
        if (!asking && !line.done)
            BathModel.tick(line.item)
        ++at
    }
    // An answer that asks for no wait goes on by itself.
    function said() { if (BathModel.waits.length === 0) ++at }
    Label { role: Label.Small; Layout.fillWidth: true; text: page.last ? qsTr("All checked") : qsTr("%1 of %2").arg(page.at + 1).arg(page.questions + page.lines.length) }
    OneOf {
        visible: page.at === 0
        label: qsTr("%1: antiperspirant with aluminium in the last 24 hours?").arg(BathModel.siteName)
        options: [{ value: LastAntiperspirant.No, text: qsTr("No") }, { value: LastAntiperspirant.HalfADay, text: qsTr("About 12 hours ago") }, { value: LastAntiperspirant.LastHours, text: qsTr("Within a few hours") }]
        value: page.antiperspirant
        onChosen: answer => { page.antiperspirant = answer; BathModel.setAntiperspirant(answer); page.said() }
    }
    OneOf {
        visible: page.at === 1
        label: qsTr("%1: shaved in the last three days?").arg(BathModel.siteName)
        options: [{ value: LastShave.No, text: qsTr("No") }, { value: LastShave.TwoDays, text: qsTr("Two days ago") }, { value: LastShave.Yesterday, text: qsTr("Yesterday") }, { value: LastShave.Today, text: qsTr("Today") }]
        value: page.shaved
        onChosen: answer => { page.shaved = answer; BathModel.setShaved(answer); page.said() }
    }
    OneOf {
        visible: page.at === 2
        label: qsTr("%1: small cuts on the skin?").arg(BathModel.siteName)
        options: [{ value: SmallCuts.No, text: qsTr("No") }, { value: SmallCuts.Yes, text: qsTr("Yes") }]
        value: page.cuts
        onChosen: answer => { page.cuts = answer; BathModel.setSmallCuts(answer); page.said() }
    }
    Repeater {
        model: BathModel.waits
        Card { id: wait; required property string modelData; kind: Card.Danger; Label { role: Label.Strong; text: wait.modelData; Layout.fillWidth: true } }
    }
    Drawings { visible: !page.asking && !page.last; subjects: page.line.drawings }
    Label { visible: !page.asking && !page.last; role: Label.Title; text: page.line.text; Layout.fillWidth: true; Accessible.role: Accessible.Heading }
    Card {
        visible: page.last
        Label { role: Label.Strong; text: BathModel.asLastText; Layout.fillWidth: true }
        Label { text: BathModel.limitText; Layout.fillWidth: true }
        Label { visible: text !== ""; text: BathModel.watchText; Layout.fillWidth: true }
        Label { text: BathModel.adviceText; Layout.fillWidth: true }
    }
    Card {
        visible: page.last && BathModel.way === WayOfWorking.HandsUnder
        kind: Card.Now
        Label { role: Label.Strong; Layout.fillWidth: true; text: qsTr("You raise and lower with the remote control. While your hands are in, any key or a tap anywhere on the screen, with elbow or nose, stops. For the swap: meter at zero, hands out, dry them, swap, tap. The phone waits. It cannot see the current: watch the meter yourself.") }
    }
    Label { visible: page.last && BathModel.hasBed; Layout.fillWidth: true; text: qsTr("A soft sound runs through the session. If it stops, turn the current to zero and switch the machine off.") }
    Label { visible: page.last && BathModel.cellsLow; role: Label.Strong; color: Theme.nowText; Layout.fillWidth: true; text: qsTr("The batteries are nearly empty. Have new ones at hand.") }
    ActionButton { visible: page.last; text: qsTr("Test the volume"); Layout.fillWidth: true; onClicked: BathModel.checkVolume() }
    dock: [
        Label { visible: BathModel.refusal !== ""; role: Label.Strong; color: Theme.danger; text: BathModel.refusal; Layout.fillWidth: true },
        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.small
            IconButton { iconName: "back"; text: qsTr("Back"); onClicked: page.back() }
            ActionButton { visible: page.asking; kind: ButtonFace.Now; text: qsTr("Next"); enabled: page.answered; Layout.fillWidth: true; onClicked: page.on() }
            ActionButton { visible: !page.asking && !page.last; kind: ButtonFace.Now; text: qsTr("Checked"); Layout.fillWidth: true; onClicked: page.on() }
            ActionButton { visible: page.last; kind: ButtonFace.Now; text: qsTr("Begin"); enabled: BathModel.ready; Layout.fillWidth: true; onClicked: BathModel.start() }
        }
    ]
}
