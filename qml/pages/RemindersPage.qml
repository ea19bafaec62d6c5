import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    canGoBack: true
    title: qsTr("Reminders")
    readonly property int half: 30
    readonly property int day: 1440
    property bool on: true
    property int checkIn: 0
    property int sessions: 0
    property int quietFrom: 0
    property int quietUntil: 0
    property bool backupMonthly: false
    Component.onCompleted: {
        const r = PlanModel.reminders
        on = r.on; checkIn = r.checkIn; sessions = r.sessions; quietFrom = r.quietFrom; quietUntil = r.quietUntil; backupMonthly = r.backupMonthly
    }
    function moved(minutes, by) { return (minutes + day + by) % day }
    Card {
        OneOf { label: qsTr("Reminders"); options: [{ value: "on", text: qsTr("On") }, { value: "off", text: qsTr("Off") }]; value: page.on ? "on" : "off"; onChosen: v => page.on = v === "on" }
        Stepper { label: qsTr("Daily check-in"); shown: Words.clock(page.checkIn); onLess: page.checkIn = page.moved(page.checkIn, -page.half); onMore: page.checkIn = page.moved(page.checkIn, page.half) }
        Stepper { label: qsTr("Baths"); shown: Words.clock(page.sessions); onLess: page.sessions = page.moved(page.sessions, -page.half); onMore: page.sessions = page.moved(page.sessions, page.half) }
        Stepper { label: qsTr("Quiet from"); shown: Words.clock(page.quietFrom); onLess: page.quietFrom = page.moved(page.quietFrom, -page.half); onMore: page.quietFrom = page.moved(page.quietFrom, page.half) }
        Stepper { label: qsTr("Quiet until"); shown: Words.clock(page.quietUntil); onLess: page.quietUntil = page.moved(page.quietUntil, -page.half); onMore: page.quietUntil = page.moved(page.quietUntil, page.half) }
        OneOf { label: qsTr("Remind of a back-up each month"); options: [{ value: "on", text: qsTr("Yes") }, { value: "off", text: qsTr("No") }]; value: page.backupMonthly ? "on" : "off"; onChosen: v => page.backupMonthly = v === "on" }
    }
    ActionButton {
        kind: "main"
        text: qsTr("Save")
        Layout.fillWidth: true
        onClicked: if (PlanModel.setReminders(page.on, page.checkIn, page.sessions, page.quietFrom, page.quietUntil, page.backupMonthly)) Router.back()
    }
}
