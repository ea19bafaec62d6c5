import QtQuick
import QtQuick.Layouts
import Firstdew

// Instead of all places where the record could not be opened: what happened, what is safe, and what to do.
Frame {
    id: page
    personal: false
    property fileResult result
    readonly property bool damaged: Store.trouble === Trouble.Damaged
    title: qsTr("Your record could not be opened")
    function what(trouble: int): string {
        switch (trouble) {
        case Trouble.Damaged: return qsTr("The file with your record is damaged.")
        case Trouble.Newer: return qsTr("A newer Firstdew wrote this record.")
        case Trouble.Busy: return qsTr("Another program is using your record.")
        case Trouble.ReadOnly: return qsTr("Your record cannot be written to.")
        case Trouble.Foreign: return qsTr("The file in its place is not a Firstdew record, or is damaged at its very beginning.")
        case Trouble.Unreadable: return qsTr("The file with your record is not there or cannot be read.")
        default: return Store.errorText
        }
    }
    function wayOut(trouble: int): string {
        switch (trouble) {
        case Trouble.Damaged: return qsTr("Firstdew can put what is still readable, and what a copy beside it holds, into a new file. The damaged file is kept.")
        case Trouble.Newer: return qsTr("Update Firstdew, then open it again.")
        case Trouble.Busy: return qsTr("Close that program, then try again.")
        case Trouble.ReadOnly: return qsTr("Let yourself write to the file and its folder, then try again.")
        case Trouble.Foreign: return qsTr("Move that file elsewhere, put your record in its place, then try again.")
        case Trouble.Unreadable: return qsTr("Look whether the folder is there and belongs to you, then try again.")
        default: return qsTr("Try again in a moment.")
        }
    }
    Card {
        kind: Card.Danger
        Label { role: Label.Strong; Layout.fillWidth: true; text: page.what(Store.trouble) }
        Label { Layout.fillWidth: true; text: qsTr("Nothing was changed in it.") }
        Label { Layout.fillWidth: true; text: page.wayOut(Store.trouble) }
        Label { role: Label.Small; Layout.fillWidth: true; text: Appearance.phrases.asWritten(Store.file) }
    }
    Label { Layout.fillWidth: true; text: qsTr("Leave the machine off until your record is open: your limits and answers stand in it.") }
    Label { visible: page.result.tried && !page.result.ok; role: Label.Strong; color: Theme.danger; Layout.fillWidth: true; text: page.result.message }
    ActionButton { visible: page.damaged; kind: ButtonFace.Now; text: qsTr("Repair the record"); Layout.fillWidth: true; onClicked: page.result = KeepModel.repair() }
    ActionButton { kind: page.damaged ? ButtonFace.Plain : ButtonFace.Now; text: qsTr("Try again"); Layout.fillWidth: true; onClicked: Store.reopen() }
    Card {
        visible: page.damaged
        Heading { text: qsTr("Restore a back-up") }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("It takes the place of the damaged file, which is kept.") }
        FileChoice { id: backup; ending: "pgp" }
        Field { id: opening; label: qsTr("Passphrase of the back-up"); echoMode: TextInput.Password }
        ActionButton { text: qsTr("Restore"); Layout.fillWidth: true; enabled: backup.path !== "" && opening.text !== ""; onClicked: page.result = KeepModel.restore(backup.path, opening.text) }
    }
}
