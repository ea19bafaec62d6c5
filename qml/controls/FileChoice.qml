import QtQuick
import QtQuick.Layouts
import Firstdew

// Files of one kind in the person's documents.
ColumnLayout {
    id: choice
    property string ending: ""
    property string path: ""
    property var files: KeepModel.filesEnding(ending)
    Layout.fillWidth: true
    spacing: Theme.small
    Label { visible: choice.files.length === 0; role: Label.Small; Layout.fillWidth: true; text: qsTr("Put a file that ends in %1 into %2, then look again.").arg(Appearance.phrases.asWritten("." + choice.ending)).arg(Appearance.phrases.asWritten(KeepModel.folder)) }
    OneOf { visible: choice.files.length > 0; options: choice.files.map(f => ({ value: f.path, text: f.name })); value: choice.path; onChosen: v => choice.path = v }
    ActionButton { kind: ButtonFace.Quiet; text: qsTr("Look again"); onClicked: choice.files = KeepModel.filesEnding(choice.ending) }
}
