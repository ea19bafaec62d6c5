import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    title: Look.words.dayFull(Store.today)
    titleRole: "title"
    readonly property var sites: TodayModel.sites
    readonly property var matters: TodayModel.first >= 0 ? sites[TodayModel.first] : null
    readonly property bool call: matters !== null && ["first-dew-top-up", "top-up-due", "restart-course"].includes(matters.advice)
    property string circumstancesOf: ""

    header: RowLayout {
        IconButton {
            visible: page.sites.length > 0
            iconName: "share"
            text: qsTr("Summary for your prescriber")
            onClicked: Router.page("SummaryPage", {})
        }
        IconButton {
            visible: Store.people.length > 1
            iconName: "person"
            text: qsTr("Change person, now %1").arg(Store.personName)
            onClicked: Router.page("People", {})
        }
    }

    Label {
        visible: Store.people.length > 1
        role: "label"
        text: Store.personName
        Layout.topMargin: -Theme.gap
    }

    DewCall {
        visible: page.call
        matter: page.call ? page.matters : null
    }

    // Nothing in use yet.
    SetUpFirst {
        visible: page.sites.length === 0
        title: qsTr("Welcome to Firstdew")
        purpose: qsTr("Firstdew leads you through treating sweating hands, feet or armpits with tap water and a small current, and tells you when the next bath is due. Setting it up takes two minutes and can be left at any point.")
    }

    // First start was left in the middle.
    Card {
        visible: page.sites.length > 0 && (!PlanModel.machine.known || PlanModel.screeningRows.some(r => !r.asked))
        Label { role: "lead"; text: qsTr("Not everything is set up yet"); Layout.fillWidth: true; Accessible.role: Accessible.Heading }
        Label { text: qsTr("Before a bath, Firstdew has to know your machine and your answers to the health questions."); Layout.fillWidth: true }
        ActionButton { kind: "main"; text: qsTr("Go on with the set-up"); Layout.fillWidth: true; onClicked: Router.page("FirstStart", {}) }
    }

    Repeater {
        model: page.sites.length // the cards stay, and with them the keyboard's place, when one is answered
        CheckInCard {
            required property int index
            entry: page.sites[index] || null
        }
    }

    NextAction {
        visible: page.matters !== null && !page.call
        matter: page.matters
    }

    Card {
        visible: page.sites.length > 0
        Label { role: "lead"; text: qsTr("The next fourteen days"); Layout.fillWidth: true; Accessible.role: Accessible.Heading }
        OutlookStrip { days: TodayModel.strip; Layout.fillWidth: true }
    }

    Card {
        visible: page.sites.length > 0
        Label { role: "lead"; text: qsTr("The last seven days"); Layout.fillWidth: true; Accessible.role: Accessible.Heading }
        DaysBack { days: TodayModel.lately; Layout.fillWidth: true }
    }
}
