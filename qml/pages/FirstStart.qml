import QtQuick
import QtQuick.Layouts
import Firstdew

// First start, step by step; what is answered is kept at once, so that it can be left and resumed.
Frame {
    id: page
    canGoBack: true
    title: [qsTr("Before you begin"), qsTr("Where?"), qsTr("Who is it for?"), qsTr("Your machine"), qsTr("Health questions"), qsTr("When should we ask?")][at]
    readonly property var order: [SetUpStep.Cautions, SetUpStep.Sites, SetUpStep.Person, SetUpStep.Machine, SetUpStep.Health, SetUpStep.Hour]
    property int at: 0
    readonly property int step: order[at]
    property int hour: PlanModel.reminders.checkIn
    readonly property bool anew: TodayModel.sites.length === 0 // once it is known where, check-ins can begin; the rest is asked before a session
    Component.onCompleted: {
        at = order.indexOf(PlanModel.setUpStep)
        who.name = PlanModel.person.name
        who.adult = PlanModel.person.adult
    }
    readonly property bool ready: step === SetUpStep.Cautions || step === SetUpStep.Hour || (step === SetUpStep.Person && who.complete) || (step === SetUpStep.Sites && where.chosen.length > 0) || (step === SetUpStep.Machine && machine.complete) || (step === SetUpStep.Health && health.complete)
    function next() {
        switch (step) {
        case SetUpStep.Cautions: PlanModel.cautionsRead(); break
        case SetUpStep.Person: PlanModel.setPerson(who.name, who.birth, PlanModel.person.height, PlanModel.person.weight, who.adult); break
        case SetUpStep.Sites: {
            const first = anew
            where.save()
            if (first) {
                Router.place(Place.Today)
                return
            }
            break
        }
        case SetUpStep.Machine: machine.save(); break
        case SetUpStep.Health: health.save(); break
        default:
            PlanModel.remindAt(hour)
            Router.place(Place.Today)
            return
        }
        at += 1
    }
    Label { role: Label.Small; text: qsTr("Step %1 of %2").arg(page.at + 1).arg(page.anew ? 2 : page.order.length); Layout.fillWidth: true }
    CautionList { visible: page.step === SetUpStep.Cautions }
    PersonForm { id: who; visible: page.step === SetUpStep.Person }
    Label { visible: page.step === SetUpStep.Sites; Layout.fillWidth: true; text: qsTr("Choose every place you treat. It can be changed in Settings.") }
    SiteForm { id: where; visible: page.step === SetUpStep.Sites }
    MachineForm { id: machine; visible: page.step === SetUpStep.Machine }
    Label { visible: page.step === SetUpStep.Health; Layout.fillWidth: true; text: qsTr("Some answers mean no session until a clinician has said yes. Your answers stay on this phone.") }
    HealthForm { id: health; visible: page.step === SetUpStep.Health }
    Label { visible: page.step === SetUpStep.Hour; Layout.fillWidth: true; text: qsTr("Once a day Firstdew asks how damp your skin is. Two taps are enough.") }
    TimePick { visible: page.step === SetUpStep.Hour; label: qsTr("Check-in at"); minutes: page.hour; onPicked: minutes => page.hour = minutes }
    dock: RowLayout {
        Layout.fillWidth: true
        spacing: Theme.small
        IconButton { visible: page.at > 0; iconName: "back"; text: qsTr("Back"); onClicked: page.at -= 1 }
        ActionButton {
            kind: ButtonFace.Now
            Layout.fillWidth: true
            enabled: page.ready
            text: page.step === SetUpStep.Cautions ? qsTr("I have read this") : page.step === SetUpStep.Hour ? qsTr("Done") : qsTr("Next")
            onClicked: page.next()
        }
    }
}
