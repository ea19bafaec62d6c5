import QtQuick
import QtQuick.Layouts
import Firstdew

// What was said of a site today, the way to take it back, and what went with it.
ColumnLayout {
    id: said
    property var entry: null
    readonly property string site: entry ? entry.site : ""
    readonly property string level: entry ? entry.level : ""
    signal change
    spacing: Theme.gap
    GridLayout {
        Layout.fillWidth: true
        columns: Theme.largeText ? 2 : 3
        columnSpacing: Theme.gap
        Ripples {
            level: Math.max(0, Appearance.phrases.levels.indexOf(said.level))
            color: Theme.main
            stroke: 2.4
            Layout.preferredWidth: Theme.iconLarge
            Layout.preferredHeight: Theme.iconLarge * 0.8
        }
        Label {
            role: Label.Lead
            Layout.fillWidth: true
            text: Appearance.phrases.siteIs(said.site, said.level)
            Accessible.role: Accessible.Heading
        }
        ActionButton {
            Layout.columnSpan: Theme.largeText ? 2 : 1
            Layout.fillWidth: Theme.largeText
            kind: ButtonFace.Quiet
            iconName: TodayModel.canUndo ? "undo" : ""
            text: TodayModel.canUndo ? qsTr("Undo") : qsTr("Change")
            Accessible.description: Appearance.phrases.site(said.site)
            onClicked: if (TodayModel.canUndo) TodayModel.undo(); else said.change()
        }
    }
    Late {
        wanted: said.level !== "" && said.level !== "dry"
        part: "controls/StirredUp"
        onLoaded: item.entry = Qt.binding(() => said.entry)
    }
}
