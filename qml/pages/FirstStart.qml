import QtQuick
import QtQuick.Layouts
import Firstdew

// First start, step by step; what is answered is kept at once, so that it can be left and resumed.
Frame {
    id: page
    canGoBack: true
    title: [qsTr("Before you begin"), qsTr("Who is it for?"), qsTr("Where?"), qsTr("Your machine"), qsTr("Health questions"), qsTr("Your daily hour")][step]
    property int step: 0
    property int hour: PlanModel.reminders.checkIn
    readonly property int steps: 6
    function missing() {
        if (Store.preferenceOr("cautions-read", "") === "") return 0
        if (!PlanModel.person.known) return 1
        if (PlanModel.sites.length === 0) return 2
        if (!PlanModel.machine.known) return 3
        if (PlanModel.screeningDue === "full") return 4
        return 5
    }
    Component.onCompleted: step = missing()
    readonly property bool ready: step === 0 || step === 5 || (step === 1 && who.complete) || (step === 2 && where.chosen.length > 0) || (step === 3 && machine.complete) || (step === 4 && health.complete)
    function next() {
        if (step === 0) Store.setPreference("cautions-read", Store.today)
        else if (step === 1) PlanModel.setPerson(who.name, who.birth, PlanModel.person.height, PlanModel.person.weight, who.adult)
        else if (step === 2) where.save()
        else if (step === 3) machine.save()
        else if (step === 4) health.save()
        else {
            const r = PlanModel.reminders
            PlanModel.setReminders(true, hour, r.sessions, r.quietFrom, r.quietUntil, r.backupMonthly)
            Router.place("today")
            return
        }
        step += 1
    }
    Label { role: Label.Small; text: qsTr("Step %1 of %2").arg(page.step + 1).arg(page.steps); Layout.fillWidth: true }
    CautionList { visible: page.step === 0 }
    PersonForm { id: who; visible: page.step === 1 }
    Label { visible: page.step === 2; Layout.fillWidth: true; text: qsTr("Choose every place you treat. It can be changed in Plan.") }
    SiteForm { id: where; visible: page.step === 2 }
    MachineForm { id: machine; visible: page.step === 3 }
    Label { visible: page.step === 4; Layout.fillWidth: true; text: qsTr("Some answers mean no bath until a clinician has said yes. Your answers stay on this phone.") }
    HealthForm { id: health; visible: page.step === 4 }
    Label { visible: page.step === 5; Layout.fillWidth: true; text: qsTr("Once a day Firstdew asks how damp your skin is. Two taps are enough.") }
    Stepper {
        visible: page.step === 5
        label: qsTr("Check-in at")
        shown: Appearance.phrases.clock(page.hour)
        onLess: page.hour = (page.hour + 1440 - 30) % 1440
        onMore: page.hour = (page.hour + 30) % 1440
    }
    ActionButton {
        kind: ButtonFace.Now
        Layout.fillWidth: true
        enabled: page.ready
        text: page.step === 0 ? qsTr("I have read this") : page.step === 5 ? qsTr("Done") : qsTr("Next")
        onClicked: page.next()
    }
    ActionButton { visible: page.step > 0; kind: ButtonFace.Quiet; Layout.fillWidth: true; text: qsTr("One step back"); onClicked: page.step -= 1 }
}
