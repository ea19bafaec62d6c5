import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    title: BathModel.blockedForGood ? qsTr("No session now") : qsTr("Ask a clinician first")
    Card {
        kind: Card.Danger
        Label { Layout.fillWidth: true; text: BathModel.blockedForGood ? qsTr("Because of this, there must be no session until a clinician has approved treatment:") : qsTr("Go on only with a clinician's word on this:") }
        Repeater {
            model: BathModel.blockedBy
            Label { required property string modelData; role: Label.Strong; text: "– " + modelData; Layout.fillWidth: true }
        }
        Label { Layout.fillWidth: true; text: qsTr("What is safe now: leave the machine off. Nothing is lost by waiting.") }
    }
    ActionButton { kind: ButtonFace.Main; text: qsTr("Back"); Layout.fillWidth: true; onClicked: BathModel.back() }
    Card {
        Heading { text: qsTr("A clinician has approved it") }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("Only if a doctor or nurse who knows of this and of your treatment said yes. The name goes onto the summary.") }
        Field { id: who; label: qsTr("Who approved it"); problem: BathModel.refusal }
        ActionButton { text: qsTr("Record and go on"); Layout.fillWidth: true; enabled: who.text.trim() !== ""; onClicked: BathModel.cleared(who.text) }
    }
}
