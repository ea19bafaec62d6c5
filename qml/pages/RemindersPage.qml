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
    property real risk: PlanModel.risk
    readonly property var chances: [0.1, 0.2, 0.3, 0.4]
    Component.onCompleted: {
        on = PlanModel.reminders.on
        checkIn = PlanModel.reminders.checkIn
        sessions = PlanModel.reminders.sessions
        quietFrom = PlanModel.reminders.quietFrom
        quietUntil = PlanModel.reminders.quietUntil
        backupMonthly = PlanModel.reminders.backupMonthly
    }
    function moved(minutes, by) { return (minutes + day + by) % day }
    Card {
        OneOf { label: qsTr("Reminders"); options: [{ value: true, text: qsTr("On") }, { value: false, text: qsTr("Off") }]; value: page.on; onChosen: v => page.on = v }
        Stepper { label: qsTr("Daily check-in"); shown: Appearance.phrases.clock(page.checkIn); onLess: page.checkIn = page.moved(page.checkIn, -page.half); onMore: page.checkIn = page.moved(page.checkIn, page.half) }
        Stepper { label: qsTr("Baths"); shown: Appearance.phrases.clock(page.sessions); onLess: page.sessions = page.moved(page.sessions, -page.half); onMore: page.sessions = page.moved(page.sessions, page.half) }
        Stepper { label: qsTr("Quiet from"); shown: Appearance.phrases.clock(page.quietFrom); onLess: page.quietFrom = page.moved(page.quietFrom, -page.half); onMore: page.quietFrom = page.moved(page.quietFrom, page.half) }
        Stepper { label: qsTr("Quiet until"); shown: Appearance.phrases.clock(page.quietUntil); onLess: page.quietUntil = page.moved(page.quietUntil, -page.half); onMore: page.quietUntil = page.moved(page.quietUntil, page.half) }
        OneOf { label: qsTr("Remind of a back-up each month"); options: [{ value: true, text: qsTr("Yes") }, { value: false, text: qsTr("No") }]; value: page.backupMonthly; onChosen: v => page.backupMonthly = v }
    }
    Card {
        OneOf {
            label: qsTr("A top-up counts as due when the chance of dampness reaches")
            options: page.chances.map(c => ({ value: c, text: Appearance.phrases.percent(c) }))
            value: page.risk
            onChosen: v => page.risk = v
        }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("Lower: top-ups come earlier and more often. Higher: fewer baths, more clammy days. Usual: 20 %.") }
    }
    ActionButton {
        kind: ButtonFace.Main
        text: qsTr("Save")
        Layout.fillWidth: true
        onClicked: { PlanModel.setRisk(page.risk); if (PlanModel.setReminders(page.on, page.checkIn, page.sessions, page.quietFrom, page.quietUntil, page.backupMonthly)) Router.back() }
    }
}
