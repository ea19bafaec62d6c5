import QtQuick
import QtQuick.Layouts
import Firstdew

// Choosing a first course, and moving its baths.
Frame {
    id: page
    canGoBack: true
    title: qsTr("Plan a course")
    property int site: Router.treated
    property int plan: CourseTemplate.Seven
    readonly property var plans: [CourseTemplate.Seven, CourseTemplate.MonWedFri, CourseTemplate.Daily]
    property int start: Store.today
    property var free: []
    property sitePlan present: PlanModel.planOf(site)
    readonly property bool keepsDry: present.stage === Stage.KeepingDry || present.stage === Stage.FirstDew
    readonly property bool running: present.sessions.length > 0 && present.stage === Stage.FirstCourse
    Connections { target: PlanModel; function onChanged() { page.present = PlanModel.planOf(page.site) } }
    Label { role: Label.Lead; text: Appearance.phrases.bath(page.site); Layout.fillWidth: true }
    Card {
        visible: page.keepsDry
        kind: Card.Now
        Label { Layout.fillWidth: true; text: qsTr("Single sessions keep you dry now. A whole course is for the beginning, or when full sweating is back.") }
    }
    Card {
        visible: page.running
        Heading { text: qsTr("Sessions of this course") }
        Label { visible: text !== ""; Layout.fillWidth: true; text: page.present.missed }
        PaceChoice { plan: page.present }
        Repeater {
            model: page.running ? page.present.sessions.length : 0
            RowLayout {
                id: line
                required property int index
                readonly property courseLine session: page.present.sessions[index] ?? Empty.courseLine
                Layout.fillWidth: true
                spacing: Theme.small
                Icon { name: line.session.done ? "check" : "clock"; color: line.session.done ? Theme.good : Theme.inkSoft; Layout.preferredWidth: Theme.icon; Layout.preferredHeight: Theme.icon }
                Label { text: Appearance.phrases.dayFull(line.session.day); Layout.fillWidth: true }
                ActionButton { visible: !line.session.done; kind: ButtonFace.Quiet; text: qsTr("Move"); Accessible.description: Appearance.phrases.dayFull(line.session.day); onClicked: { move.number = line.session.number; move.day = line.session.day; move.open() } }
            }
        }
        OneOf {
            visible: page.present.lastBetween === 0
            label: qsTr("Where sessions crowd")
            options: [{ value: Pace.KeepWindow, text: qsTr("Close together") }, { value: Pace.DayBetween, text: qsTr("A day between") }]
            value: page.present.pace
            onChosen: v => PlanModel.setPace(page.site, v)
        }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("Planned to end by %1. If you miss a session, the rest moves.").arg(Appearance.phrases.dayLong(page.present.windowEnd)) }
    }
    Card {
        Heading { text: page.running ? qsTr("Start again") : qsTr("Choose") }
        OneOf { options: page.plans.map(v => ({ value: v, text: Appearance.phrases.course(v) })); value: page.plan; onChosen: v => page.plan = v }
        DayPick { label: qsTr("First session"); day: page.start; first: Store.today; onPicked: day => page.start = day }
        Label { role: Label.Small; text: qsTr("Days that suit you (none = any day)"); Layout.fillWidth: true }
        Wrap {
            Layout.fillWidth: true
            spacing: Theme.small
            Repeater {
                model: Appearance.phrases.weekdays
                Chip {
                    required property int modelData
                    text: Appearance.phrases.weekday(modelData)
                    checked: page.free.includes(modelData)
                    onClicked: page.free = page.free.includes(modelData) ? page.free.filter(d => d !== modelData) : page.free.concat([modelData])
                }
            }
        }
    }
    Sheet {
        id: move
        property int number: 1
        property int day: 0
        title: qsTr("Move session %1").arg(number)
        DayPick { label: qsTr("New day"); day: move.day; first: Store.today; onPicked: day => move.day = day }
        ActionButton { kind: ButtonFace.Main; text: qsTr("Move"); Layout.fillWidth: true; onClicked: { move.close(); PlanModel.moveCourse(page.site, move.number, move.day) } }
    }
    dock: ActionButton {
        kind: page.running ? ButtonFace.Plain : ButtonFace.Now
        text: qsTr("Plan the course")
        Layout.fillWidth: true
        onClicked: { if (PlanModel.startCourse(page.site, page.plan, page.start, page.free)) Router.place(Place.Plan) }
    }
}
