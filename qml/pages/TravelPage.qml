import QtQuick
import QtQuick.Layouts
import Firstdew

// What to think of where the kit comes along.
Frame {
    id: page
    canGoBack: true
    title: qsTr("Taking the kit along")
    readonly property bool cells: PlanModel.machine.power === PowerSource.Cells
    Card {
        Heading { text: qsTr("Before you leave") }
        Drawings { subjects: [Subject.KitDrying]; most: Theme.drawing }
        Label { Layout.fillWidth: true; text: qsTr("Dry the kit completely before you pack it.") }
        Label { visible: page.cells; Layout.fillWidth: true; text: qsTr("Take the batteries out, and pack new ones.") }
        Label { Layout.fillWidth: true; text: qsTr("Pack the machine's instructions with it, for whoever asks at a border.") }
    }
    Card {
        Heading { text: qsTr("Where you stay") }
        Drawings { subjects: [Subject.TraysOnTable, Subject.TurnUp]; most: Theme.drawing }
        Label { Layout.fillWidth: true; text: qsTr("Set up as at home: dry hands, leads and machine away from the water, nothing of metal under the trays.") }
        Label { Layout.fillWidth: true; text: qsTr("Water differs from place to place. Turn up even more slowly than at home, and go by the meter.") }
        Label { Layout.fillWidth: true; text: qsTr("Very soft water conducts badly. Ask your nurse or prescriber what to do, and add nothing by yourself, not even salt.") }
    }
    ActionButton { text: qsTr("The current will not rise"); Layout.fillWidth: true; onClicked: Router.openTechnique(DiaryModel.treated()[0] ?? Site.Hands) }
}
