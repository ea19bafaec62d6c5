import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    canGoBack: true
    title: qsTr("Machine and kit")
    Card {
        visible: PlanModel.machine.known && PlanModel.machine.power === PowerSource.Cells
        Heading { text: qsTr("Batteries") }
        Label { Layout.fillWidth: true; text: PlanModel.machine.sessionsLeft === 0 ? qsTr("The batteries are probably used up. Put in new ones.") : PlanModel.machine.sessionsLeft > 0 ? qsTr("About %n session(s) left. A set of four alkaline cells lasts about three.", "", PlanModel.machine.sessionsLeft) : qsTr("Say when you put in new ones, and Firstdew counts the sessions.") }
        ActionButton { text: qsTr("New batteries put in"); Layout.fillWidth: true; onClicked: PlanModel.cellsChanged() }
    }
    Card {
        Heading { text: qsTr("Machine") }
        MachineForm { id: form }
        ActionButton { kind: ButtonFace.Main; text: qsTr("Save"); Layout.fillWidth: true; enabled: form.complete; onClicked: { if (form.save()) Router.back() } }
    }
    Card {
        Heading { text: qsTr("Where it is used") }
        SiteForm { id: where }
        ActionButton { text: qsTr("Save"); Accessible.description: qsTr("Where it is used"); Layout.fillWidth: true; onClicked: { if (where.save()) Router.back() } }
    }
}
