import QtQuick
import QtQuick.Layouts
import Firstdew

// The call for a top-up: calm, at the top, not to be missed.
Card {
    id: call
    readonly property siteToday matter: TodayModel.matter
    property bool brief: false
    property bool opened: false
    readonly property bool whole: !brief || opened
    kind: Card.Now
    margin: whole ? Theme.margin : Theme.gap
    spacing: whole ? Theme.gap : Theme.small
    Label { visible: !call.whole; role: Label.Strong; text: qsTr("%1: %2").arg(Appearance.phrases.site(call.matter.site)).arg(Appearance.phrases.within(call.matter.title)); Layout.fillWidth: true; Accessible.role: Accessible.Heading }
    RowLayout {
        visible: call.whole
        spacing: Theme.gap
        Layout.fillWidth: true
        Icon { name: "drop"; color: Theme.nowText; Layout.preferredWidth: Theme.iconLarge; Layout.preferredHeight: Theme.iconLarge; Layout.alignment: Qt.AlignTop }
        ColumnLayout {
            spacing: Theme.tight
            Layout.fillWidth: true
            Label { role: Label.Small; color: Theme.ink; text: Appearance.phrases.site(call.matter.site); Layout.fillWidth: true }
            Label { role: Label.Title; room: call.width - 2 * call.margin - Theme.iconLarge - Theme.gap; text: call.matter.title; Layout.fillWidth: true; Accessible.role: Accessible.Heading }
        }
    }
    Label {
        visible: call.whole
        Layout.fillWidth: true
        text: call.matter.reasons.length > 0 ? call.matter.reasons[0] : ""
    }
    Label {
        Layout.fillWidth: true
        visible: call.whole && call.matter.thisEvening
        role: Label.Strong
        text: qsTr("You put it off to this evening. A reminder will come.")
    }
    function start() {
        const treated = call.matter.treatedAs
        TodayModel.answer(call.matter.site, CallAnswer.StartNow)
        Router.startBath(treated)
    }
    ActionButton { kind: ButtonFace.Now; text: qsTr("Start now"); Layout.fillWidth: true; onClicked: call.start() }
    GridLayout {
        Layout.fillWidth: true
        columns: width > Theme.body * (call.whole ? 18 : 16) ? 2 : 1
        columnSpacing: Theme.small
        rowSpacing: Theme.small
        ActionButton { visible: !call.matter.thisEvening; text: qsTr("This evening"); side: Theme.tight; Layout.fillWidth: true; Layout.preferredWidth: 1; onClicked: TodayModel.answer(call.matter.site, CallAnswer.ThisEvening) }
        ActionButton { visible: call.matter.homeTomorrow; text: qsTr("Tomorrow"); side: Theme.tight; Layout.fillWidth: true; Layout.preferredWidth: 1; onClicked: TodayModel.answer(call.matter.site, CallAnswer.Tomorrow) }
    }
    Wrap {
        Layout.fillWidth: true
        ActionButton { kind: ButtonFace.Quiet; side: Theme.tight; text: qsTr("Not this time"); onClicked: Router.openNotNow(call.matter.site) }
        ActionButton { visible: call.whole; kind: ButtonFace.Quiet; side: Theme.tight; text: qsTr("I did one"); onClicked: Router.openDone(call.matter.treatedAs, Store.today, "") }
        ActionButton { visible: !call.whole; kind: ButtonFace.Quiet; side: Theme.tight; text: qsTr("More"); onClicked: call.opened = true }
        ActionButton { visible: call.whole; kind: ButtonFace.Quiet; side: Theme.tight; text: qsTr("Why?"); iconName: "why"; onClicked: Router.openWhy(call.matter.site) }
    }
}
