import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    canGoBack: true
    personal: false
    title: qsTr("People")
    Label { Layout.fillWidth: true; text: qsTr("Each person has a record of their own; nothing is mixed.") }
    Repeater {
        model: Store.people
        Card {
            id: card
            required property personLine modelData
            GridLayout {
                columns: Theme.largeText ? 1 : 3
                Layout.fillWidth: true
                ColumnLayout {
                    Layout.fillWidth: true
                    spacing: Theme.tight
                    Label { role: Label.Strong; text: card.modelData.name !== "" ? card.modelData.name : qsTr("Me"); Layout.fillWidth: true }
                    Label { visible: card.modelData.adult !== ""; role: Label.Small; text: qsTr("Adult beside the child: %1").arg(card.modelData.adult); Layout.fillWidth: true }
                }
                Label { visible: card.modelData.here; role: Label.Small; text: qsTr("Shown now") }
                ActionButton { visible: !card.modelData.here; text: qsTr("Show"); Accessible.description: card.modelData.name; onClicked: { Store.showPerson(card.modelData.id); Router.place(Place.Today) } }
            }
        }
    }
    Card {
        Heading { text: qsTr("Your details") }
        PersonForm {
            id: mine
            body: true
            Component.onCompleted: { name = PlanModel.person.name; birth = PlanModel.person.birth; adult = PlanModel.person.adult; setBody(PlanModel.person.height, PlanModel.person.weight) }
        }
        ActionButton { text: qsTr("Save"); Layout.fillWidth: true; enabled: mine.complete; onClicked: PlanModel.setPerson(mine.name, mine.birth, mine.cm, mine.kg, mine.adult) }
    }
    ActionButton { text: qsTr("Add somebody"); Layout.fillWidth: true; onClicked: add.open() }
    Sheet {
        id: add
        title: qsTr("Add somebody")
        PersonForm { id: who }
        ActionButton {
            kind: ButtonFace.Main
            text: qsTr("Add")
            Layout.fillWidth: true
            enabled: who.complete && who.name.trim() !== ""
            onClicked: { add.close(); if (PlanModel.addPerson(who.name, who.birth, who.adult)) Router.page(Part.FirstStartPart) }
        }
    }
}
