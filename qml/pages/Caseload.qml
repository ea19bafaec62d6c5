import QtQuick
import QtQuick.Layouts
import Firstdew

// The people whom somebody teaches, who needs a call first; with room enough, the chosen one beside the list.
Item {
    id: page
    readonly property bool beside: width >= Theme.twoColumns && !Theme.largeText
    readonly property real listWidth: beside ? Math.round(width * 0.42) : width
    readonly property list<caseLine> people: CaseloadModel.people
    readonly property list<unreadFile> unread: CaseloadModel.unread
    function show(id: string) {
        CaseloadModel.show(id)
        if (!page.beside)
            Router.page(Part.CasePagePart)
    }
    Component.onCompleted: CaseloadModel.open()
    Frame {
        width: page.listWidth
        height: page.height
        x: Appearance.rightToLeft ? page.width - width : 0
        canGoBack: true
        personal: false
        title: qsTr("Caseload")
        ColumnLayout {
            visible: CaseloadModel.reading
            Layout.fillWidth: true
            spacing: Theme.small
            Label { Layout.fillWidth: true; text: qsTr("Reading file %1 of %2").arg(Math.min(CaseloadModel.filesRead + 1, CaseloadModel.filesAll)).arg(CaseloadModel.filesAll) }
            Rectangle {
                Layout.fillWidth: true
                implicitHeight: Theme.tight
                color: Theme.sunken
                Rectangle { x: Appearance.rightToLeft ? parent.width - width : 0; width: CaseloadModel.filesAll > 0 ? parent.width * CaseloadModel.filesRead / CaseloadModel.filesAll : 0; height: parent.height; color: Theme.main }
            }
        }
        Label { visible: CaseloadModel.trouble !== ""; Layout.fillWidth: true; color: Theme.danger; text: CaseloadModel.trouble }
        Label {
            visible: page.people.length > 0
            role: Label.Strong
            Layout.fillWidth: true
            text: CaseloadModel.calls > 0 ? qsTr("%1 of %2 need a call.").arg(CaseloadModel.calls).arg(page.people.length) : qsTr("All are doing well.")
        }
        Label { visible: page.unread.length > 0; Layout.fillWidth: true; text: qsTr("%n file(s) could not be read. See the end of the list.", "", page.unread.length) }
        Label { visible: page.people.length === 0 && !CaseloadModel.reading; Layout.fillWidth: true; text: CaseloadModel.filesAll > 0 ? qsTr("There are no records in these files.") : qsTr("Ask the people you teach for their record or back-up, and put the files into one folder. They are read here and stay as they are.") }
        ColumnLayout {
            visible: page.people.length > 0
            Layout.fillWidth: true
            spacing: Theme.small
            Repeater {
                model: page.people
                CaseRow { required property caseLine modelData; person: modelData; chosen: page.beside && CaseloadModel.shown.id === modelData.id; onClicked: page.show(modelData.id) }
            }
        }
        Card {
            visible: page.unread.length > 0
            Heading { text: qsTr("Not read") }
            Repeater {
                model: page.unread
                ColumnLayout {
                    id: file
                    required property unreadFile modelData
                    Layout.fillWidth: true
                    spacing: Theme.tight
                    Label { role: Label.Strong; Layout.fillWidth: true; text: Appearance.phrases.asWritten(file.modelData.name) }
                    Label { role: Label.Small; Layout.fillWidth: true; text: file.modelData.why }
                }
            }
            Field { id: phrase; visible: CaseloadModel.locked; label: qsTr("Passphrase of the back-ups"); hint: qsTr("It is forgotten when you close Firstdew."); echoMode: TextInput.Password }
            ActionButton { visible: CaseloadModel.locked; text: qsTr("Open with this passphrase"); Layout.fillWidth: true; enabled: phrase.text !== "" && !CaseloadModel.reading; onClicked: { CaseloadModel.unlock(phrase.text); phrase.text = "" } }
        }
        Card {
            Heading { text: qsTr("Where the records are") }
            Label { visible: CaseloadModel.folder !== ""; role: Label.Small; Layout.fillWidth: true; text: Appearance.phrases.asWritten(CaseloadModel.folder) }
            ActionButton { visible: CaseloadModel.canChooseFolder; kind: CaseloadModel.folder === "" ? ButtonFace.Main : ButtonFace.Plain; text: qsTr("Choose the folder"); Layout.fillWidth: true; onClicked: CaseloadModel.chooseFolder(text) }
            ActionButton { visible: CaseloadModel.canChoose; text: qsTr("Add a file"); Layout.fillWidth: true; onClicked: CaseloadModel.chooseFile(text) }
            ActionButton { visible: CaseloadModel.filesAll > 0; enabled: !CaseloadModel.reading; text: qsTr("Read the files again"); Layout.fillWidth: true; onClicked: CaseloadModel.readAgain() }
            ActionButton { visible: !CaseloadModel.canChoose; text: qsTr("Read the files in %1").arg(Appearance.phrases.asWritten(KeepModel.folder)); Layout.fillWidth: true; onClicked: CaseloadModel.useDocuments() }
        }
        ActionButton { text: qsTr("Make a care sheet"); Layout.fillWidth: true; onClicked: { SheetModel.begin(); Router.page(Part.MakeSheetPagePart) } }
    }
    Rectangle { visible: page.beside; x: Appearance.rightToLeft ? page.width - page.listWidth : page.listWidth; width: Theme.hair; height: page.height; color: Theme.line }
    Loader {
        active: page.beside
        width: page.width - page.listWidth - Theme.hair
        height: page.height
        x: Appearance.rightToLeft ? 0 : page.width - width
        sourceComponent: Frame {
            personal: false
            titleRole: Label.Title
            title: CaseloadModel.shown.id === "" ? qsTr("Choose somebody from the list.") : CaseloadModel.shown.name !== "" ? CaseloadModel.shown.name : qsTr("Name not given")
            CaseView { visible: CaseloadModel.shown.id !== "" }
        }
    }
}
