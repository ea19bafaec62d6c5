import QtQuick
import QtQuick.Layouts
import Firstdew

// The call for a top-up: calm, at the top, not to be missed.
Card {
    id: call
    readonly property var matter: TodayModel.first >= 0 ? TodayModel.sites[TodayModel.first] : null
    readonly property bool thisEvening: matter !== null && matter.reasons.some(r => r.kind === "put-off" && r.date === Store.today)
    kind: "now"
    RowLayout {
        spacing: Theme.gap
        Layout.fillWidth: true
        Icon { name: "drop"; color: Theme.nowText; Layout.preferredWidth: Theme.iconLarge; Layout.preferredHeight: Theme.iconLarge; Layout.alignment: Qt.AlignTop }
        ColumnLayout {
            spacing: Theme.tight
            Layout.fillWidth: true
            Label { role: Label.Small; color: Theme.ink; text: call.matter ? Appearance.phrases.site(call.matter.site) : ""; Layout.fillWidth: true }
            Label { role: Label.Title; text: call.matter ? call.matter.title : ""; Layout.fillWidth: true; Accessible.role: Accessible.Heading }
        }
    }
    Label {
        Layout.fillWidth: true
        text: call.matter && call.matter.reasons.length > 0 ? call.matter.reasons[0].text : ""
    }
    Label {
        Layout.fillWidth: true
        visible: call.thisEvening
        role: Label.Strong
        text: qsTr("You put it off to this evening. A reminder will come.")
    }
    ActionButton {
        kind: ButtonFace.Now
        text: qsTr("Start now")
        Layout.fillWidth: true
        onClicked: {
            const m = call.matter
            TodayModel.answer(m.site, "start-now")
            Router.startBath(m.treatedAs)
        }
    }
    GridLayout {
        Layout.fillWidth: true
        columns: width > Theme.body * 18 ? 2 : 1
        columnSpacing: Theme.small
        rowSpacing: Theme.small
        ActionButton { visible: !call.thisEvening; text: qsTr("This evening"); Layout.fillWidth: true; Layout.preferredWidth: 1; onClicked: TodayModel.answer(call.matter.site, "this-evening") }
        ActionButton { text: qsTr("Tomorrow"); Layout.fillWidth: true; Layout.preferredWidth: 1; onClicked: TodayModel.answer(call.matter.site, "tomorrow") }
    }
    Wrap {
        Layout.fillWidth: true
        ActionButton { kind: ButtonFace.Quiet; text: qsTr("Not this time"); onClicked: Router.sheet("NotNowSheet", { site: call.matter.site }) }
        ActionButton { kind: ButtonFace.Quiet; text: qsTr("Why?"); iconName: "why"; onClicked: Router.page("WhyPage", { site: call.matter.site }) }
    }
}
