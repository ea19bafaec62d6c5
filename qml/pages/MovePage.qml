import QtQuick
import QtQuick.Layouts
import Firstdew

// From one phone to another, a step at a time: a back-up there, shared; here its file, its passphrase, a look, and the check.
Frame {
    id: page
    canGoBack: true
    personal: false
    title: qsTr("Move to another phone")
    enum Step { Which, Phrase, Share, File, Look, Here }
    property int step: TodayModel.sites.length === 0 ? MovePage.File : MovePage.Which
    property fileResult made
    property backUpRead read
    readonly property bool empty: TodayModel.sites.length === 0
    Connections {
        target: KeepModel
        function onSaved(result) {
            page.made = result
            if (!result.ok)
                return
            phrase.text = ""
            page.step = MovePage.Share
        }
    }
    function look() {
        read = KeepModel.lookInto(file.path, opening.text)
        if (read.ok)
            step = MovePage.Look
    }
    function take() {
        read = KeepModel.takeOver(file.path, opening.text)
        if (!read.ok)
            return
        opening.text = ""
        step = MovePage.Here
    }

    ColumnLayout {
        visible: page.step === MovePage.Which
        Layout.fillWidth: true
        spacing: Theme.margin
        Label { Layout.fillWidth: true; text: qsTr("Your record goes to the other phone as one encrypted file. Which phone is this?") }
        ActionButton { text: qsTr("The old one: send from here"); Layout.fillWidth: true; onClicked: page.step = MovePage.Phrase }
        ActionButton { text: qsTr("The new one: bring it here"); Layout.fillWidth: true; onClicked: page.step = MovePage.File }
    }
    Card {
        visible: page.step === MovePage.Phrase
        Heading { text: qsTr("1. Choose a passphrase") }
        Label { Layout.fillWidth: true; text: qsTr("You type it once more on the new phone. Without it nobody can open the file – not even you.") }
        Field { id: phrase; property bool shown: false; label: qsTr("Passphrase"); echoMode: shown ? TextInput.Normal : TextInput.Password; hint: qsTr("At least eight characters.") }
        ActionButton { kind: ButtonFace.Quiet; Layout.fillWidth: Theme.largeText; text: phrase.shown ? qsTr("Hide what I type") : qsTr("Show what I type"); onClicked: phrase.shown = !phrase.shown }
        Label { visible: page.made.tried && !page.made.ok; color: Theme.danger; Layout.fillWidth: true; text: page.made.message }
    }
    Card {
        visible: page.step === MovePage.Share
        Heading { text: qsTr("2. Send the file to the new phone") }
        Label { Layout.fillWidth: true; text: qsTr("Use a cable, a memory card, or a message to yourself.") }
        Label { role: Label.Small; Layout.fillWidth: true; text: Appearance.phrases.asWritten(page.made.where) }
        Heading { text: qsTr("3. On the new phone") }
        Label { Layout.fillWidth: true; text: qsTr("Open Firstdew there and tap “Move from another phone”. Choose the file and type the passphrase. It then has to show these numbers:") }
        TallyLines { tally: page.made.ok ? KeepModel.tally() : Empty.recordTally }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("Keep this phone as it is until you have seen them.") }
    }
    Card {
        visible: page.step === MovePage.File
        Heading { text: qsTr("Bring the record here") }
        Label { Layout.fillWidth: true; text: qsTr("On the old phone, open Settings, “Move to another phone”, and send the file to this one. Then choose it here.") }
        FileChoice { id: file; ending: "pgp"; title: qsTr("Choose the file") }
        Field { id: opening; visible: file.path !== ""; label: qsTr("Its passphrase"); echoMode: TextInput.Password }
        Label { visible: page.read.tried && !page.read.ok; color: Theme.danger; Layout.fillWidth: true; text: page.read.message }
    }
    Card {
        visible: page.step === MovePage.Look
        Heading { text: qsTr("The file holds") }
        TallyLines { tally: page.read.tally }
        Label { visible: !page.empty; role: Label.Strong; Layout.fillWidth: true; text: qsTr("What is on this phone now is replaced. A copy of it is kept.") }
        Label { visible: page.read.tried && !page.read.ok; color: Theme.danger; Layout.fillWidth: true; text: page.read.message }
    }
    Card {
        visible: page.step === MovePage.Here
        LeadLine { iconName: "check"; iconColor: Theme.good; text: qsTr("Everything is here.") }
        TallyLines { tally: page.read.tally }
        Label { Layout.fillWidth: true; text: qsTr("Compare the numbers with the old phone. Then you can delete the record there.") }
        Label { visible: page.read.kept !== ""; role: Label.Small; Layout.fillWidth: true; text: qsTr("What was on this phone before is kept in %1").arg(Appearance.phrases.asWritten(page.read.kept)) }
    }
    dock: [
        ActionButton { visible: page.step === MovePage.Phrase; kind: ButtonFace.Now; text: qsTr("Make the file"); enabled: KeepModel.longEnough(phrase.text); Layout.fillWidth: true; onClicked: KeepModel.backUp(phrase.text) },
        ActionButton { visible: page.step === MovePage.Share; kind: ButtonFace.Now; iconName: "share"; text: qsTr("Send the file"); Layout.fillWidth: true; onClicked: SummaryModel.handOver(page.made.path) },
        ActionButton { visible: page.step === MovePage.File; kind: ButtonFace.Now; text: qsTr("Look into it"); enabled: file.path !== "" && opening.text !== ""; Layout.fillWidth: true; onClicked: page.look() },
        ActionButton { visible: page.step === MovePage.Look; kind: page.empty ? ButtonFace.Now : ButtonFace.Danger; text: page.empty ? qsTr("Use it here") : qsTr("Replace what is here"); Layout.fillWidth: true; onClicked: page.take() },
        ActionButton { visible: page.step === MovePage.Here; kind: ButtonFace.Now; text: qsTr("Go to Today"); Layout.fillWidth: true; onClicked: Router.place(Place.Today) }
    ]
}
