import QtQuick
import QtQuick.Layouts
import Firstdew

// What matters now, one thing, with its reason.
Card {
    id: card
    readonly property siteToday matter: TodayModel.matter
    property bool later: false // something else comes first
    property sitePlan plan: PlanModel.planOf(matter.treatedAs)
    Connections { target: PlanModel; function onChanged() { card.plan = PlanModel.planOf(card.matter.treatedAs) } }
    onMatterChanged: plan = PlanModel.planOf(matter.treatedAs)
    readonly property bool onCourse: matter.stage === Stage.FirstCourse && matter.advice !== Advice.Blocked && plan.nextNumber > 0
    readonly property bool toBegin: matter.stage === Stage.NotStarted && matter.advice !== Advice.Blocked
    RowLayout {
        Layout.fillWidth: true
        Label { role: Label.Small; text: Appearance.phrases.site(card.matter.site); Layout.fillWidth: true }
        ActionButton { kind: ButtonFace.Quiet; text: qsTr("Why?"); iconName: "why"; onClicked: Router.openWhy(card.matter.site) }
    }
    Label {
        role: Label.Title
        room: card.width - 2 * card.margin
        Layout.fillWidth: true
        Accessible.role: Accessible.Heading
        text: card.toBegin ? qsTr("Plan the first course")
            : card.matter.advice === Advice.None && card.matter.next !== 0 ? qsTr("Next session: %1").arg(Appearance.phrases.dayLong(card.matter.next))
            : card.matter.title
    }
    // What the person chose comes before why it was asked.
    Label { Layout.fillWidth: true; visible: text !== ""; role: Label.Strong; text: card.matter.putOff }
    Label { Layout.fillWidth: true; visible: text !== ""; text: card.matter.why }
    ActionButton {
        visible: card.matter.advice === Advice.DoCourseSession
        kind: ButtonFace.Now
        text: qsTr("Start now")
        Layout.fillWidth: true
        onClicked: Router.startBath(card.matter.treatedAs)
    }
    PaceChoice { plan: card.plan; visible: card.onCourse && card.plan.lastBetween !== 0 }
    Wrap {
        Layout.fillWidth: true
        visible: card.onCourse
        ActionButton { kind: ButtonFace.Quiet; text: qsTr("Move it"); onClicked: { mover.active = true; mover.shown.open() } }
        ActionButton { kind: ButtonFace.Quiet; text: qsTr("I did one"); onClicked: Router.openDone(card.matter.treatedAs, Store.today, "") }
    }
    Loader {
        id: mover
        readonly property var shown: item
        active: false
        visible: false
        sourceComponent: DaySheetPick {
            title: qsTr("Move session %1").arg(card.plan.nextNumber)
            first: Store.today
            last: Store.today + 60
            start: card.matter.next
            onPicked: day => PlanModel.moveCourse(card.matter.treatedAs, card.plan.nextNumber, day)
        }
    }
    ActionButton {
        visible: card.toBegin
        kind: card.later ? ButtonFace.Plain : ButtonFace.Now
        text: qsTr("Choose the course")
        Layout.fillWidth: true
        onClicked: Router.openCourse(card.matter.treatedAs)
    }
    ActionButton {
        visible: card.matter.advice !== Advice.Blocked && !card.onCourse
        kind: ButtonFace.Quiet
        text: card.toBegin ? qsTr("I already treat") : qsTr("I did one")
        onClicked: Router.openDone(card.matter.treatedAs, Store.today, "")
    }
    ActionButton {
        visible: card.matter.advice === Advice.Review
        kind: card.matter.scoreNeeded ? ButtonFace.Plain : ButtonFace.Now
        text: qsTr("Go on to keeping dry")
        Layout.fillWidth: true
        onClicked: TodayModel.reviewDone(card.matter.treatedAs, true)
    }
    Label { Layout.fillWidth: true; visible: card.matter.atNoResponse !== ""; text: qsTr("Your care sheet says: %1").arg(card.matter.atNoResponse) }
    ActionButton {
        visible: card.matter.scoreNeeded
        kind: ButtonFace.Now
        text: qsTr("Say how it is now")
        Layout.fillWidth: true
        onClicked: Router.page(Part.BotherPagePart)
    }
    ActionButton {
        visible: card.matter.advice === Advice.TryFurther
        kind: ButtonFace.Now
        text: qsTr("Go on to twelve sessions")
        Layout.fillWidth: true
        onClicked: TodayModel.goOn(card.matter.treatedAs)
    }
    ActionButton {
        visible: card.matter.advice === Advice.TryFurther || card.matter.advice === Advice.AskPrescriber
        text: qsTr("Check how you do it")
        Layout.fillWidth: true
        onClicked: Router.openTechnique(card.matter.treatedAs)
    }
    ActionButton {
        visible: card.matter.advice === Advice.Blocked
        text: qsTr("See the health questions")
        Layout.fillWidth: true
        onClicked: Router.page(Part.HealthQuestionsPart)
    }
}
