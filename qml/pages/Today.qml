import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    title: Look.words.dayFull(Store.today)
    titleRole: "title"
    readonly property bool unready: sites.length > 0 && (!PlanModel.machine.known || PlanModel.screeningRows.some(r => !r.asked))
    readonly property var sites: TodayModel.sites
    readonly property var matters: TodayModel.first >= 0 ? sites[TodayModel.first] : null
    readonly property bool call: matters !== null && ["first-dew-top-up", "top-up-due", "restart-course"].includes(matters.advice)
    /// Whether it was on the screen once.
    property bool shown: false
    Connections {
        target: page.Window.window
        enabled: !page.shown
        function onFrameSwapped() { page.shown = true }
    }

    header: RowLayout {
        IconButton {
            visible: page.sites.length > 0
            iconName: "share"
            text: qsTr("Summary for your prescriber")
            onClicked: Router.page("SummaryPage", {})
        }
        IconButton {
            visible: Store.several
            iconName: "person"
            text: qsTr("Change person, now %1").arg(Store.personName)
            onClicked: Router.page("People", {})
        }
    }

    Late {
        wanted: page.call
        sourceComponent: DewCall { matter: page.call ? page.matters : null }
    }

    // Nothing in use yet.
    Late {
        wanted: page.sites.length === 0
        sourceComponent: SetUpFirst {
            title: qsTr("Welcome to Firstdew")
            purpose: qsTr("Firstdew leads you through treating sweating hands, feet or armpits with tap water and a small current, and tells you when the next bath is due. Setting it up takes two minutes and can be left at any point.")
        }
    }

    // First start was left in the middle.
    Late {
        wanted: page.unready
        sourceComponent: Card {
            Label { role: "lead"; text: qsTr("Not everything is set up yet"); Layout.fillWidth: true; Accessible.role: Accessible.Heading }
            Label { text: qsTr("Before a bath, Firstdew has to know your machine and your answers to the health questions."); Layout.fillWidth: true }
            ActionButton { kind: "now"; text: qsTr("Go on with the set-up"); Layout.fillWidth: true; onClicked: Router.page("FirstStart", {}) }
        }
    }

    Repeater {
        model: page.sites.length // the cards stay, and with them the keyboard's place, when one is answered
        CheckInCard {
            required property int index
            entry: page.sites[index] || null
        }
    }

    // The check-in can be given before the rest is there.
    Late {
        wanted: page.shown && page.matters !== null && !page.call
        sourceComponent: NextAction { matter: page.matters; later: page.unready }
    }

    Late {
        wanted: page.shown && page.sites.length > 0
        sourceComponent: Card {
            Label { role: "lead"; text: qsTr("The next fourteen days"); Layout.fillWidth: true; Accessible.role: Accessible.Heading }
            OutlookStrip { days: TodayModel.strip; Layout.fillWidth: true }
        }
    }

    Late {
        wanted: page.shown && page.sites.length > 0
        sourceComponent: Card {
            Label { role: "lead"; text: qsTr("The last seven days"); Layout.fillWidth: true; Accessible.role: Accessible.Heading }
            DaysBack { days: TodayModel.lately; Layout.fillWidth: true }
        }
    }
}
