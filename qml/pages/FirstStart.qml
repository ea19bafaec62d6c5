import QtQuick
import QtQuick.Layouts
import Firstdew

// First start, step by step; what is answered is kept at once, so that it can be left and resumed.
Frame {
    id: page
    canGoBack: true
    title: [qsTr("Before you begin"), qsTr("Who is it for?"), qsTr("Where?"), qsTr("Your machine"), qsTr("Health questions"), qsTr("Your daily hour")][step]
    property int step: SetUpStep.Cautions
    property int hour: PlanModel.reminders.checkIn
    readonly property int steps: 6
    Component.onCompleted: step = PlanModel.setUpStep
    readonly property bool ready: step === SetUpStep.Cautions || step === SetUpStep.Hour || (step === SetUpStep.Person && who.complete) || (step === SetUpStep.Sites && where.chosen.length > 0) || (step === SetUpStep.Machine && machine.complete) || (step === SetUpStep.Health && health.complete)
    function next() {
        switch (step) {
        case SetUpStep.Cautions: PlanModel.cautionsRead(); break
        case SetUpStep.Person: PlanModel.setPerson(who.name, who.birth, PlanModel.person.height, PlanModel.person.weight, who.adult); break
        case SetUpStep.Sites: where.save(); break
        case SetUpStep.Machine: machine.save(); break
        case SetUpStep.Health: health.save(); break
        default:
            PlanModel.remindAt(hour)
            Router.place(Place.Today)
            return
        }
        step += 1
    }
    Label { role: Label.Small; text: qsTr("Step %1 of %2").arg(page.step + 1).arg(page.steps); Layout.fillWidth: true }
    CautionList { visible: page.step === SetUpStep.Cautions }
    PersonForm { id: who; visible: page.step === SetUpStep.Person }
    Label { visible: page.step === SetUpStep.Sites; Layout.fillWidth: true; text: qsTr("Choose every place you treat. It can be changed in Plan.") }
    SiteForm { id: where; visible: page.step === SetUpStep.Sites }
    MachineForm { id: machine; visible: page.step === SetUpStep.Machine }
    Label { visible: page.step === SetUpStep.Health; Layout.fillWidth: true; text: qsTr("Some answers mean no bath until a clinician has said yes. Your answers stay on this phone.") }
    HealthForm { id: health; visible: page.step === SetUpStep.Health }
    Label { visible: page.step === SetUpStep.Hour; Layout.fillWidth: true; text: qsTr("Once a day Firstdew asks how damp your skin is. Two taps are enough.") }
    Stepper {
        visible: page.step === SetUpStep.Hour
        label: qsTr("Check-in at")
        shown: Appearance.phrases.clock(page.hour)
        onLess: page.hour = (page.hour + 1440 - 30) % 1440
        onMore: page.hour = (page.hour + 30) % 1440
    }
    ActionButton {
        kind: ButtonFace.Now
        Layout.fillWidth: true
        enabled: page.ready
        text: page.step === SetUpStep.Cautions ? qsTr("I have read this") : page.step === SetUpStep.Hour ? qsTr("Done") : qsTr("Next")
        onClicked: page.next()
    }
    ActionButton { visible: page.step > 0; kind: ButtonFace.Quiet; Layout.fillWidth: true; text: qsTr("One step back"); onClicked: page.step -= 1 }
}
