import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    title: Appearance.phrases.place(Place.Plan)
    readonly property list<sheetInUse> sheets: PlanModel.careSheets
    function sheetText(): string {
        if (page.sheets.length === 0)
            return qsTr("None yet")
        let lines = []
        for (let i = 0; i < page.sheets.length; ++i)
            lines.push(qsTr("From %1, %2").arg(page.sheets[i].who).arg(Appearance.phrases.dayYear(page.sheets[i].given)))
        return lines.join("\n")
    }

    header: IconButton { iconName: "settings"; text: qsTr("Settings"); onClicked: Router.page(Part.SettingsPart) }
    SetUpFirst {
        visible: PlanModel.sites.length === 0
        purpose: qsTr("Say where you treat and with which machine; your limits and your plan then stand here.")
    }
    Repeater {
        model: PlanModel.sites.length // the cards stay, and with them the keyboard's place, when one is changed
        Card {
            id: card
            required property int index
            readonly property sitePlan line: PlanModel.sites[index] ?? Empty.sitePlan
            GridLayout {
                columns: Theme.largeText ? 1 : 2
                Layout.fillWidth: true
                Heading { text: Appearance.phrases.site(card.line.site) }
                Label { role: Label.Strong; color: Theme.main; text: Appearance.phrases.stage(card.line.stage); Layout.fillWidth: Theme.largeText }
            }
            Label {
                visible: card.line.next !== 0
                role: Label.Small
                Layout.fillWidth: true
                text: qsTr("Next session: %1").arg(Appearance.phrases.dayLong(card.line.next))
            }
            CourseDates { visible: card.line.stage === Stage.FirstCourse; site: card.line.treatedAs; sessions: card.line.sessions }
            Label { visible: card.line.stage === Stage.FirstCourse; role: Label.Small; Layout.fillWidth: true; text: qsTr("Tap a day to move its session.") }
            Label { visible: text !== ""; Layout.fillWidth: true; text: card.line.missed }
            Label { visible: !card.line.fits; Layout.fillWidth: true; color: Theme.danger; text: qsTr("The course will end %n day(s) late.", "", card.line.overrun) }
            Wrap {
                Layout.fillWidth: true
                spacing: Theme.small
                ActionButton { text: card.line.stage === Stage.NotStarted ? qsTr("Choose the course") : qsTr("Course"); Accessible.name: Appearance.phrases.pair(Appearance.phrases.site(card.line.site), text); onClicked: Router.openCourse(card.line.treatedAs) }
                ActionButton { text: card.line.paused ? qsTr("Continue") : qsTr("Pause"); Accessible.name: Appearance.phrases.pair(Appearance.phrases.site(card.line.site), text); onClicked: PlanModel.pause(card.line.treatedAs, !card.line.paused) }
            }
            PaceChoice { plan: card.line } // below, so that the buttons stay where they are when it goes
        }
    }

    split: PlanModel.limits.length > 0
    aside: Deferred { wanted: PlanModel.limits.length > 0; part: Part.LimitsCardPart }
    more: [
        PlanRow {
            title: qsTr("Health questions")
            value: PlanModel.screeningDue === ScreeningDue.Full ? qsTr("To be answered") : PlanModel.blocking.length > 0 ? qsTr("Needs a clinician's approval") : qsTr("Answered")
            onClicked: Router.page(Part.HealthQuestionsPart)
        },
        PlanRow {
            title: qsTr("Days away")
            value: PlanModel.away.length > 0 ? qsTr("%1 to %2").arg(Appearance.phrases.dayLong(PlanModel.away[0].from)).arg(Appearance.phrases.dayLong(PlanModel.away[0].to)) : qsTr("None")
            onClicked: Router.page(Part.AwayPagePart)
        },
        PlanRow {
            visible: PlanModel.sites.length > 0
            title: qsTr("Taught by somebody")
            value: TaughtModel.inShort !== "" ? TaughtModel.inShort : qsTr("Not marked")
            onClicked: Router.page(Part.TaughtPagePart)
        },
        PlanRow {
            visible: BathModel.canPractise
            title: qsTr("Practice")
            value: qsTr("A whole session with the machine off")
            onClicked: { BathModel.practise(); Router.place(Place.Session) }
        },
        PlanRow {
            title: qsTr("Care sheet")
            value: page.sheetText()
            onClicked: Router.page(Part.CareSheetPagePart)
        }
    ]
}
