import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    canGoBack: true
    title: qsTr("Health questions")
    Label { Layout.fillWidth: true; text: qsTr("Some answers mean no session until a clinician has said yes. Your answers stay on this phone.") }
    Repeater {
        model: PlanModel.blocking
        Card {
            id: card
            required property healthQuestion modelData
            kind: Card.Danger
            Heading { text: qsTr("Not approved: %1").arg(Appearance.phrases.screeningShort(card.modelData.row)) }
            property int said: Store.today
            Field { id: who; label: qsTr("Who said that it is safe?"); hint: qsTr("Name of the doctor or nurse. It goes into your record.") }
            DayPick { label: qsTr("On which day?"); day: card.said; first: card.modelData.since; last: Store.today; onPicked: day => card.said = day }
            ActionButton { text: qsTr("Record the approval"); Layout.fillWidth: true; enabled: who.text.trim() !== ""; onClicked: PlanModel.clearance(card.modelData.row, who.text, card.said) }
        }
    }
    HealthForm { id: form }
    dock: ActionButton { kind: ButtonFace.Now; text: qsTr("Save"); Layout.fillWidth: true; enabled: form.complete; onClicked: { if (form.save()) Router.back() } }
}
