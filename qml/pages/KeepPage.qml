import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    canGoBack: true
    title: qsTr("Back-up, export and delete")
    property fileResult result
    Connections {
        target: KeepModel
        function onSaved(result) {
            page.result = result
            if (result.ok)
                phrase.text = ""
        }
    }
    Card {
        visible: page.result.tried
        kind: page.result.ok ? Card.Plain : Card.Danger
        Label { Layout.fillWidth: true; text: page.result.ok ? (page.result.where !== "" ? qsTr("Done: %1").arg(Appearance.phrases.asWritten(page.result.where)) : qsTr("Done.")) : page.result.message }
        ActionButton { visible: page.result.ok && page.result.path !== ""; iconName: "share"; text: qsTr("Share it"); Layout.fillWidth: true; onClicked: SummaryModel.handOver(page.result.path) }
        Label { visible: page.result.tried && !page.result.ok; role: Label.Small; Layout.fillWidth: true; text: qsTr("Your record is as it was.") }
    }
    Card {
        Heading { text: qsTr("Back-up") }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("One encrypted file (OpenPGP) with everything. Without the passphrase nobody can open it – not even you.") }
        Field { id: phrase; property bool shown: false; label: qsTr("Passphrase"); echoMode: shown ? TextInput.Normal : TextInput.Password; hint: qsTr("At least eight characters.") }
        ActionButton { kind: ButtonFace.Quiet; Layout.fillWidth: Theme.largeText; text: phrase.shown ? qsTr("Hide what I type") : qsTr("Show what I type"); onClicked: phrase.shown = !phrase.shown }
        ActionButton { kind: ButtonFace.Main; text: qsTr("Make a back-up"); Layout.fillWidth: true; enabled: KeepModel.longEnough(phrase.text); onClicked: KeepModel.backUp(phrase.text) }
    }
    Card {
        Heading { text: qsTr("Restore") }
        FileChoice { id: backup; ending: "pgp" }
        Field { id: opening; label: qsTr("Passphrase of the back-up"); echoMode: TextInput.Password }
        ActionButton { text: qsTr("Restore"); Layout.fillWidth: true; enabled: backup.path !== "" && opening.text !== ""; onClicked: sure.ask(qsTr("Restore"), qsTr("What is here now is replaced. A copy of it is kept."), () => page.result = KeepModel.restore(backup.path, opening.text)) }
    }
    Card {
        Heading { text: qsTr("Export") }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("These files are not encrypted; share them with care.") }
        ActionButton { text: qsTr("Everything, as JSON"); Layout.fillWidth: true; onClicked: KeepModel.exportAs(ExportFormat.Json) }
        ActionButton { text: qsTr("Tables for a spreadsheet, as CSV"); Layout.fillWidth: true; onClicked: KeepModel.exportAs(ExportFormat.Tables) }
        ActionButton { text: qsTr("For medical records, as FHIR"); Layout.fillWidth: true; onClicked: KeepModel.exportAs(ExportFormat.Fhir) }
        ActionButton { text: qsTr("Planned sessions, for a calendar"); Layout.fillWidth: true; onClicked: KeepModel.exportCalendar(qsTr("Firstdew sessions"), qsTr("A session is planned")) }
    }
    Card {
        Heading { text: qsTr("Import") }
        FileChoice { id: incoming; ending: "json" }
        ActionButton { text: qsTr("Add from this file"); Layout.fillWidth: true; enabled: incoming.path !== ""; onClicked: page.result = KeepModel.importFrom(incoming.path, false) }
        ActionButton { visible: page.result.otherPerson && incoming.path !== ""; text: qsTr("Add as a new person"); Layout.fillWidth: true; onClicked: page.result = KeepModel.importFrom(incoming.path, true) }
    }
    Card {
        Heading { text: qsTr("Delete") }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("Gone for good, here and in the copies on this phone. Files that you exported or shared stay where they are. Make a back-up first if in doubt.") }
        ActionButton { visible: Store.several; text: qsTr("Delete this person"); Layout.fillWidth: true; onClicked: sure.ask(text, qsTr("The record of %1 is deleted for good.").arg(Store.personName !== "" ? Store.personName : qsTr("this person")), () => page.result = KeepModel.forgetPerson()) }
        ActionButton { kind: ButtonFace.Danger; text: qsTr("Delete everything"); Layout.fillWidth: true; onClicked: sure.ask(text, qsTr("Every record on this phone is deleted for good."), () => { page.result = KeepModel.forgetAll(); Router.place(Place.Today) }) }
    }
    Sheet {
        id: sure
        property string question: ""
        property var act: null
        function go() { const then = act; then() }
        function ask(name, text, then) { title = name; question = text; act = then; open() }
        Label { Layout.fillWidth: true; text: sure.question }
        ActionButton { kind: ButtonFace.Danger; text: sure.title; Layout.fillWidth: true; onClicked: { sure.close(); sure.go() } }
        ActionButton { text: qsTr("Keep things as they are"); Layout.fillWidth: true; onClicked: sure.close() }
    }
}
