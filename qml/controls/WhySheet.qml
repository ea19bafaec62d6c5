import QtQuick
import QtQuick.Layouts
import Firstdew

// The evidence behind an advice.
Sheet {
    id: sheet
    property var matter: null
    title: qsTr("Why?")
    Repeater {
        model: sheet.matter ? sheet.matter.reasons : []
        LeadLine { required property var modelData; iconName: "check"; iconColor: Theme.main; text: modelData.text }
    }
    Label {
        visible: sheet.matter !== null && sheet.matter.lastSession !== ""
        role: "label"
        Layout.fillWidth: true
        text: sheet.matter ? qsTr("Reckoned from %n dry spell(s) in your diary.", "", sheet.matter.spells)
                             + (sheet.matter.due ? " " + qsTr("A top-up counts as due when the chance of dampness reaches %1: %2.").arg(Look.words.percent(sheet.matter.risk)).arg(Look.words.dayLong(sheet.matter.due)) : "") : ""
    }
    Label { role: "label"; Layout.fillWidth: true; text: qsTr("This is an estimate from your own notes, not a diagnosis. Your prescriber's word counts.") }
}
