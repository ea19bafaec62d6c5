import QtQuick
import QtQuick.Layouts
import Firstdew

// A care sheet that was made: as a code on the screen, as a page on paper, as a file.
Frame {
    id: page
    canGoBack: true
    personal: false
    title: qsTr("Hand it over")
    property fileResult result
    Connections { target: SheetModel; function onWent(result) { page.result = result } }
    Label { visible: !SheetModel.ready; Layout.fillWidth: true; text: qsTr("This care sheet is not complete. Go back and fill in what is marked.") }
    Card {
        visible: page.result.tried
        kind: page.result.ok ? Card.Plain : Card.Danger
        Label { Layout.fillWidth: true; text: page.result.message }
        ActionButton { visible: page.result.ok && page.result.path !== ""; text: qsTr("Look at it"); Layout.fillWidth: true; onClicked: SummaryModel.open(page.result.path) }
    }
    Card {
        visible: SheetModel.ready
        Heading { text: qsTr("On the screen") }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("In their Firstdew: Plan, Care sheet, Scan the code.") }
        QrPicture {
            text: SheetModel.code
            Layout.alignment: Qt.AlignHCenter
            Layout.fillWidth: true
            Layout.maximumWidth: Theme.ring * 1.5
            Layout.preferredHeight: width
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("The care sheet as a QR code")
        }
    }
    Card {
        visible: SheetModel.ready
        Heading { text: qsTr("On paper") }
        ActionButton { kind: ButtonFace.Main; iconName: "share"; text: qsTr("Print or share the page"); Layout.fillWidth: true; onClicked: SheetModel.shareHandout() }
        ActionButton { text: qsTr("Save the page"); Layout.fillWidth: true; onClicked: SheetModel.saveHandout() }
        PagePreview {
            Layout.fillWidth: true
            Layout.preferredHeight: width * Math.SQRT2
            source: SheetModel
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("The page as it will be printed")
        }
    }
    Card {
        visible: SheetModel.ready
        Heading { text: qsTr("As a file") }
        ActionButton { iconName: "share"; text: qsTr("Share the file"); Layout.fillWidth: true; onClicked: SheetModel.shareSheet() }
        ActionButton { text: qsTr("Save the file"); Layout.fillWidth: true; onClicked: SheetModel.saveSheet() }
    }
}
