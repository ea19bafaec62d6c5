import QtQuick
import QtQuick.Layouts
import Firstdew

// A file of one kind: from the system's own chooser, or where there is none from the person's documents.
ColumnLayout {
    id: choice
    property string ending: "" // one or more, parted by spaces
    property string path: ""
    property string title: qsTr("Choose a file")
    property int request: 0
    property var files: KeepModel.canChoose ? [] : KeepModel.filesEnding(ending)
    readonly property string name: path.substring(path.lastIndexOf("/") + 1)
    Layout.fillWidth: true
    spacing: Theme.small
    Connections {
        target: KeepModel
        function onFileChosen(request, path) {
            if (request === choice.request && path !== "")
                choice.path = path
        }
    }
    ActionButton { visible: KeepModel.canChoose; text: choice.title; Layout.fillWidth: true; onClicked: choice.request = KeepModel.chooseFile(choice.title, choice.ending) }
    Label { visible: KeepModel.canChoose && choice.path !== ""; Layout.fillWidth: true; text: qsTr("Chosen: %1").arg(Appearance.phrases.asWritten(choice.name)) }
    Label { visible: !KeepModel.canChoose && choice.files.length === 0; role: Label.Small; Layout.fillWidth: true; text: qsTr("Put a file that ends in %1 into %2, then look again.").arg(Appearance.phrases.asWritten(choice.ending.split(" ").map(e => "." + e).join(", "))).arg(Appearance.phrases.asWritten(KeepModel.folder)) }
    OneOf { visible: choice.files.length > 0; options: choice.files.map(f => ({ value: f.path, text: f.name })); value: choice.path; onChosen: v => choice.path = v }
    ActionButton { visible: !KeepModel.canChoose; kind: ButtonFace.Quiet; text: qsTr("Look again"); Accessible.description: Appearance.phrases.asWritten("." + choice.ending); onClicked: choice.files = KeepModel.filesEnding(choice.ending) }
}
