import QtQuick
import QtQuick.Layouts
import Firstdew

// What matters now, one thing, with its reason.
Card {
    id: card
    readonly property var matter: TodayModel.first >= 0 ? TodayModel.sites[TodayModel.first] : null
    property bool later: false // something else comes first
    readonly property string advice: matter ? matter.advice : ""
    GridLayout {
        columns: Theme.largeText ? 1 : 2
        Layout.fillWidth: true
        ColumnLayout {
            Layout.fillWidth: true
            spacing: Theme.tight
            Label { role: Label.Small; text: card.matter ? Appearance.phrases.site(card.matter.site) : ""; Layout.fillWidth: true }
            Label {
                role: Label.Title
                Layout.fillWidth: true
                Accessible.role: Accessible.Heading
                text: !card.matter ? "" : card.matter.stage === "not-started" && card.advice !== "blocked" ? qsTr("Plan the first course")
                    : card.advice === "none" && card.matter.next ? qsTr("Next bath: %1").arg(Appearance.phrases.dayLong(card.matter.next))
                    : card.matter.title
            }
        }
        ActionButton { kind: ButtonFace.Quiet; text: qsTr("Why?"); iconName: "why"; Layout.alignment: Qt.AlignTop; onClicked: Router.page("WhyPage", { site: card.matter.site }) }
    }
    // What the person chose comes before why it was asked.
    readonly property var putOff: matter ? matter.reasons.find(r => r.kind === "put-off") : undefined
    Label { Layout.fillWidth: true; visible: text !== ""; role: Label.Strong; text: card.putOff ? card.putOff.text : "" }
    Label { Layout.fillWidth: true; visible: text !== ""; text: card.matter && card.matter.reasons.length > 0 && card.matter.reasons[0] !== card.putOff ? card.matter.reasons[0].text : "" }
    ActionButton {
        visible: card.advice === "do-course-session"
        kind: ButtonFace.Now
        text: qsTr("Start the bath")
        Layout.fillWidth: true
        onClicked: Router.startBath(card.matter.treatedAs)
    }
    ActionButton {
        visible: card.matter !== null && card.matter.stage === "not-started" && card.advice !== "blocked"
        kind: card.later ? ButtonFace.Plain : ButtonFace.Now
        text: qsTr("Choose the course")
        Layout.fillWidth: true
        onClicked: Router.page("CoursePlan", { site: card.matter.treatedAs })
    }
    ActionButton {
        visible: card.advice === "review"
        kind: ButtonFace.Now
        text: qsTr("Go on to keeping dry")
        Layout.fillWidth: true
        onClicked: TodayModel.reviewDone(card.matter.treatedAs, true)
    }
    ActionButton {
        visible: card.advice === "blocked"
        text: qsTr("See the health questions")
        Layout.fillWidth: true
        onClicked: Router.page("HealthQuestions", {})
    }
}
