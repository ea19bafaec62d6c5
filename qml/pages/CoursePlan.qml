import QtQuick
import QtQuick.Layouts
import Firstdew

// Choosing a first course, and moving its baths.
Frame {
    id: page
    canGoBack: true
    title: qsTr("Plan a course")
    property string site: "hands"
    property string plan: "seven"
    property string start: Store.today
    property var free: []
    readonly property var present: PlanModel.sites.find(s => s.treatedAs === site && s.sessions.length > 0)
    readonly property var known: PlanModel.sites.find(s => s.treatedAs === site)
    readonly property bool keepsDry: known !== undefined && ["keeping-dry", "first-dew"].includes(known.stage)
    readonly property bool running: present !== undefined && present.stage === "first-course"
    Label { role: Label.Lead; text: Appearance.phrases.bath(page.site); Layout.fillWidth: true }
    Card {
        visible: page.keepsDry
        kind: "now"
        Label { Layout.fillWidth: true; text: qsTr("You keep dry with single baths now. A whole course is for the beginning, or when full sweating is back.") }
    }
    Card {
        visible: page.running
        Heading { text: qsTr("Baths of this course") }
        Repeater {
            model: page.running ? page.present.sessions : []
            RowLayout {
                id: line
                required property var modelData
                Layout.fillWidth: true
                spacing: Theme.small
                Icon { name: line.modelData.done ? "check" : "clock"; color: line.modelData.done ? Theme.good : Theme.inkSoft; Layout.preferredWidth: Theme.icon; Layout.preferredHeight: Theme.icon }
                Label { text: Appearance.phrases.dayFull(line.modelData.date); Layout.fillWidth: true }
                ActionButton { visible: !line.modelData.done; kind: ButtonFace.Quiet; text: qsTr("Move"); Accessible.description: Appearance.phrases.dayFull(line.modelData.date); onClicked: { move.number = line.modelData.number; move.date = line.modelData.date; move.open() } }
            }
        }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("Ends by %1 at the latest if it can. A missed bath moves by itself; the rest is planned anew.").arg(Appearance.phrases.dayLong(page.running ? page.present.windowEnd : "")) }
    }
    Card {
        Heading { text: page.running ? qsTr("Begin anew") : qsTr("Choose") }
        OneOf { options: ["seven", "mwf", "daily"].map(v => ({ value: v, text: Appearance.phrases.course(v) })); value: page.plan; onChosen: v => page.plan = v }
        Stepper {
            label: qsTr("First bath")
            shown: Appearance.phrases.dayFull(page.start)
            onLess: if (page.start > Store.today) page.start = DiaryModel.plusDays(page.start, -1)
            onMore: page.start = DiaryModel.plusDays(page.start, 1)
        }
        Label { role: Label.Small; text: qsTr("Days on which a bath fits; none chosen means all"); Layout.fillWidth: true }
        Wrap {
            Layout.fillWidth: true
            spacing: Theme.small
            Repeater {
                model: Appearance.phrases.weekdays
                Chip {
                    required property string modelData
                    text: Appearance.phrases.weekday(modelData)
                    checked: page.free.includes(modelData)
                    onClicked: page.free = page.free.includes(modelData) ? page.free.filter(d => d !== modelData) : page.free.concat([modelData])
                }
            }
        }
        ActionButton {
            kind: page.running ? ButtonFace.Plain : ButtonFace.Now
            text: qsTr("Plan the course")
            Layout.fillWidth: true
            onClicked: { if (PlanModel.startCourse(page.site, page.plan, page.start, page.free)) Router.place("plan") }
        }
    }
    Sheet {
        id: move
        property int number: 1
        property string date: ""
        title: qsTr("Move bath %1").arg(number)
        Stepper {
            label: qsTr("New day")
            shown: Appearance.phrases.dayFull(move.date)
            onLess: if (move.date > Store.today) move.date = DiaryModel.plusDays(move.date, -1)
            onMore: move.date = DiaryModel.plusDays(move.date, 1)
        }
        ActionButton { kind: ButtonFace.Main; text: qsTr("Move"); Layout.fillWidth: true; onClicked: { move.close(); PlanModel.moveCourse(page.site, move.number, move.date) } }
    }
}
