import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    canGoBack: true
    title: qsTr("Care sheet")
    readonly property sheetInUse sheet: PlanModel.careSheet
    property sheetRead read
    function fieldName(field: int): string {
        switch (field) {
        case SheetField.Who: return qsTr("Prescriber")
        case SheetField.Given: return qsTr("Given")
        case SheetField.Sites: return qsTr("Sites")
        case SheetField.Plan: return qsTr("Course")
        case SheetField.Days: return qsTr("Days")
        case SheetField.Waveform: return qsTr("Current")
        case SheetField.DirectLimit: return qsTr("Limit, direct")
        case SheetField.PulsedLimit: return qsTr("Limit, pulsed")
        case SheetField.Raise: return qsTr("Time to raise")
        case SheetField.Lower: return qsTr("Time to lower")
        case SheetField.Swapping: return qsTr("Time to swap")
        case SheetField.Review: return qsTr("Review")
        default: return qsTr("Notes")
        }
    }
    Card {
        visible: page.sheet.known
        Heading { text: qsTr("From %1, %2").arg(page.sheet.who).arg(Appearance.phrases.dayYear(page.sheet.given)) }
        Label { visible: page.sheet.directLimit >= 0; Layout.fillWidth: true; text: qsTr("Direct current at most %1").arg(Appearance.phrases.milliamps(page.sheet.directLimit)) }
        Label { visible: page.sheet.pulsedLimit >= 0; Layout.fillWidth: true; text: qsTr("Pulsed current at most %1").arg(Appearance.phrases.milliamps(page.sheet.pulsedLimit)) }
        Label { visible: page.sheet.review !== 0; Layout.fillWidth: true; text: qsTr("Review on %1").arg(Appearance.phrases.dayLong(page.sheet.review)) }
        Label { visible: page.sheet.notes !== ""; Layout.fillWidth: true; text: page.sheet.notes }
        ActionButton { text: qsTr("Show as a code to scan"); Layout.fillWidth: true; onClicked: code.open() }
    }
    Sheet {
        id: code
        title: qsTr("Care sheet")
        QrPicture {
            text: page.sheet.line
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
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("A file from your prescriber. It can lower the limits, never raise them.") }
        FileChoice { id: file; ending: "json"; onPathChanged: page.read = path !== "" ? KeepModel.readSheet(path) : Empty.sheetRead }
        Label { visible: page.read.tried && !page.read.ok; color: Theme.danger; Layout.fillWidth: true; text: page.read.message }
        Repeater {
            model: page.read.changes
            Label { required property sheetChange modelData; Layout.fillWidth: true; text: qsTr("%1: %2 (before: %3)").arg(page.fieldName(modelData.field)).arg(modelData.after || "–").arg(modelData.before || "–") }
        }
        ActionButton { kind: ButtonFace.Main; visible: page.read.ok; text: qsTr("Use this care sheet"); Layout.fillWidth: true; onClicked: { if (KeepModel.acceptSheet(file.path)) { page.read = Empty.sheetRead; file.path = "" } } }
    }
}
