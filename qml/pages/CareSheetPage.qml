import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    canGoBack: true
    title: qsTr("Care sheet")
    property sheetRead read
    property bool agreed: false
    property string scanned: "" // the text of a code that the camera read
    function accept() {
        if (!(page.scanned !== "" ? KeepModel.acceptScanned(page.scanned, page.agreed) : KeepModel.acceptSheet(file.path, page.agreed)))
            return
        page.read = Empty.sheetRead
        page.scanned = ""
        file.path = ""
    }
    Component.onDestruction: ScanModel.stop()
    Connections {
        target: ScanModel
        function onFound(text) {
            page.scanned = text
            page.agreed = false
            page.read = KeepModel.readScanned(text)
        }
    }
    Repeater {
        model: PlanModel.careSheets
        Card {
            id: inUse
            required property sheetInUse modelData
            Heading { text: qsTr("From %1, %2").arg(inUse.modelData.who).arg(Appearance.phrases.dayYear(inUse.modelData.given)) }
            Label { Layout.fillWidth: true; text: qsTr("In use for: %1").arg(inUse.modelData.sites) }
            Repeater {
                model: inUse.modelData.lines
                Label { required property string modelData; Layout.fillWidth: true; text: modelData }
            }
            ActionButton { text: qsTr("Show as a code to scan"); Layout.fillWidth: true; onClicked: { picture.text = inUse.modelData.code; code.open() } }
        }
    }
    Sheet {
        id: code
        title: qsTr("Care sheet")
        QrPicture {
            id: picture
            Layout.alignment: Qt.AlignHCenter
            Layout.preferredWidth: Math.min(Theme.ring, code.width - 2 * Theme.margin)
            Layout.preferredHeight: Layout.preferredWidth
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("The care sheet as a QR code")
        }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("It holds the whole care sheet. Show it only to those who treat you.") }
    }
    Card {
        Heading { text: qsTr("Add a care sheet") }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("From your prescriber: the code on paper or on another phone, a picture of it, or a file. No care sheet can raise the usual limits.") }
        ActionButton {
            visible: ScanModel.present
            text: ScanModel.looking ? qsTr("Stop the camera") : qsTr("Scan the code")
            Layout.fillWidth: true
            onClicked: ScanModel.looking ? ScanModel.stop() : ScanModel.start()
        }
        CameraPicture {
            visible: ScanModel.looking
            scan: ScanModel
            Layout.fillWidth: true
            Layout.preferredHeight: width * 0.75
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("What the camera sees. Hold the code in the middle.")
        }
        Label { visible: ScanModel.failed; color: Theme.danger; Layout.fillWidth: true; text: qsTr("The camera cannot be used. Take a picture of the code and choose that.") }
        FileChoice { id: file; ending: "json png jpg jpeg"; onPathChanged: { page.agreed = false; page.scanned = ""; page.read = path !== "" ? KeepModel.readSheet(path) : Empty.sheetRead } }
        Label { visible: page.read.tried && !page.read.ok; color: Theme.danger; Layout.fillWidth: true; text: page.read.message }
        Label { visible: page.read.ok && page.read.effects.length === 0; Layout.fillWidth: true; text: qsTr("This care sheet changes nothing: you already have it, or a newer one is in use.") }
        Repeater {
            model: page.read.effects
            ColumnLayout {
                id: effect
                required property sheetEffect modelData
                Layout.fillWidth: true
                Label { role: Label.Strong; Layout.fillWidth: true; text: effect.modelData.sites }
                Repeater {
                    model: effect.modelData.changes
                    Label {
                        required property sheetChange modelData
                        Layout.fillWidth: true
                        color: modelData.loosens ? Theme.danger : Theme.ink
                        text: modelData.loosens ? qsTr("Allows more than now. %1").arg(modelData.text) : modelData.text
                    }
                }
            }
        }
        Repeater {
            model: page.read.courses
            Label { required property string modelData; role: Label.Strong; Layout.fillWidth: true; text: modelData }
        }
        TickRow {
            visible: page.read.ok && page.read.loosens
            text: qsTr("My prescriber told me that more is allowed from now on")
            checked: page.agreed
            onClicked: page.agreed = !page.agreed
        }
        ActionButton {
            kind: ButtonFace.Main
            visible: page.read.ok && page.read.effects.length > 0
            enabled: !page.read.loosens || page.agreed
            text: qsTr("Use this care sheet")
            Layout.fillWidth: true
            onClicked: page.accept()
        }
    }
}
