import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    canGoBack: true
    title: qsTr("Reminders")
    property bool on: true
    property int checkIn: 0
    property int sessions: 0
    property int quietFrom: 0
    property int quietUntil: 0
    property bool backupMonthly: false
    property real risk: PlanModel.risk
    readonly property var chances: [1 / 9, 0.2, 1 / 3, 0.5]
    Component.onCompleted: {
        on = PlanModel.reminders.on
        checkIn = PlanModel.reminders.checkIn
        sessions = PlanModel.reminders.sessions
        quietFrom = PlanModel.reminders.quietFrom
        quietUntil = PlanModel.reminders.quietUntil
        backupMonthly = PlanModel.reminders.backupMonthly
    }
    Card {
        OneOf { label: qsTr("Reminders"); options: [{ value: true, text: qsTr("On") }, { value: false, text: qsTr("Off") }]; value: page.on; onChosen: v => page.on = v }
        TimePick { label: qsTr("Daily check-in"); minutes: page.checkIn; onPicked: minutes => page.checkIn = minutes }
        TimePick { label: qsTr("Sessions"); minutes: page.sessions; onPicked: minutes => page.sessions = minutes }
        TimePick { label: qsTr("Quiet from"); minutes: page.quietFrom; onPicked: minutes => page.quietFrom = minutes }
        TimePick { label: qsTr("Quiet until"); minutes: page.quietUntil; onPicked: minutes => page.quietUntil = minutes }
        OneOf { label: qsTr("Remind of a back-up each month"); options: [{ value: true, text: qsTr("Yes") }, { value: false, text: qsTr("No") }]; value: page.backupMonthly; onChosen: v => page.backupMonthly = v }
    }
    Card {
        OneOf {
            label: qsTr("How many sessions is one damp spell worth to you?")
            options: page.chances.map(c => ({ value: c, text: Appearance.phrases.shortNumber(PlanModel.returnCostAt(c)) }))
            value: page.risk
            onChosen: v => page.risk = v
        }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("More: top-ups come earlier and more often. Fewer: fewer sessions, more damp days. Usual: 2.") }
    }
    dock: ActionButton {
        kind: ButtonFace.Now
        text: qsTr("Save")
        Layout.fillWidth: true
        onClicked: { PlanModel.setRisk(page.risk); if (PlanModel.setReminders(page.on, page.checkIn, page.sessions, page.quietFrom, page.quietUntil, page.backupMonthly)) Router.back() }
    }
}
