import QtQuick
import QtQuick.Layouts
import Firstdew

// The short way: as last time, one statement of health and skin, and the machine on.
Frame {
    id: page
    title: BathModel.follows ? qsTr("Next: %1").arg(Appearance.phrases.within(BathModel.siteName)) : BathModel.siteName
    titleRole: Label.Title
    // Qt 6.4: measured at no width first, a chip may keep the height that it has then.
    readonly property real chip: Theme.largeText ? Infinity : Theme.target
    // What was said is said for now, not for whenever this page is looked at again.
    onVisibleChanged: if (!visible) BathModel.setTold(false)
    header: ActionButton { kind: ButtonFace.Quiet; text: qsTr("Change"); onClicked: BathModel.change() }
    Card {
        spacing: Theme.tight
        Label { role: Label.Strong; text: BathModel.asLastText; Layout.fillWidth: true }
        Label { visible: text !== ""; role: Label.Strong; text: BathModel.comparedText; Layout.fillWidth: true }
        Label { text: BathModel.limitText; Layout.fillWidth: true }
        Label { visible: text !== ""; text: BathModel.watchText; Layout.fillWidth: true }
        Label { visible: PlanModel.person.child && PlanModel.person.adult !== ""; text: qsTr("Adult beside the child: %1").arg(PlanModel.person.adult); Layout.fillWidth: true }
    }
    Label { visible: BathModel.bar !== ""; role: Label.Strong; color: Theme.danger; text: BathModel.bar; Layout.fillWidth: true }
    ColumnLayout {
        visible: !BathModel.mustAsk && BathModel.bar === ""
        Layout.fillWidth: true
        spacing: Theme.tight
        Lines { texts: BathModel.statement }
    }
    ColumnLayout {
        visible: !BathModel.mustAsk && BathModel.bar === ""
        Layout.fillWidth: true
        spacing: Theme.tight
        Heading { text: qsTr("Set up, then switch on") }
        Lines { texts: BathModel.kit }
        Label { Layout.topMargin: Theme.small; text: BathModel.adviceText; Layout.fillWidth: true }
        Label { visible: BathModel.cellsLow; role: Label.Strong; color: Theme.nowText; Layout.fillWidth: true; text: qsTr("The batteries are nearly empty. Have new ones at hand.") }
    }
    ActionButton { visible: BathModel.canPractise && !BathModel.follows; kind: ButtonFace.Quiet; text: qsTr("Practice without current"); Layout.fillWidth: true; onClicked: BathModel.practise() }
    dock: [
        Label { visible: BathModel.refusal !== ""; role: Label.Strong; color: Theme.danger; text: BathModel.refusal; Layout.fillWidth: true },
        GridLayout {
            columns: Theme.largeText ? 1 : 2
            rowSpacing: Theme.small
            columnSpacing: Theme.small
            visible: !BathModel.mustAsk && BathModel.bar === ""
            Layout.fillWidth: true
            ChoiceChip { text: qsTr("True"); checked: BathModel.told; Layout.fillWidth: true; Layout.preferredWidth: 1; Layout.maximumHeight: page.chip; onClicked: BathModel.setTold(true) }
            ChoiceChip { text: qsTr("Not quite"); Layout.fillWidth: true; Layout.preferredWidth: 1; Layout.maximumHeight: page.chip; onClicked: BathModel.notQuite() }
        },
        ActionButton { visible: !BathModel.mustAsk && BathModel.bar === ""; kind: ButtonFace.Now; text: BathModel.beginText; enabled: BathModel.told; Layout.fillWidth: true; onClicked: BathModel.startAsLast() },
        ActionButton { visible: BathModel.mustAsk; kind: ButtonFace.Now; text: qsTr("Continue"); Layout.fillWidth: true; onClicked: BathModel.goOn() },
        ActionButton { visible: BathModel.follows; kind: ButtonFace.Quiet; text: qsTr("Enough for today"); Layout.fillWidth: true; onClicked: BathModel.enoughForNow() }
    ]
}
