import QtQuick
import QtQuick.Layouts
import Firstdew

// What was said of a site today, the way to take it back, and what went with it.
ColumnLayout {
    id: said
    property siteToday entry
    signal change
    spacing: Theme.gap
    GridLayout {
        Layout.fillWidth: true
        columns: Theme.largeText ? 2 : 3
        columnSpacing: Theme.gap
        Ripples {
            level: said.entry.level
            color: Theme.main
            stroke: 2.4
            Layout.preferredWidth: Theme.iconLarge
            Layout.preferredHeight: Theme.iconLarge * 0.8
        }
        Label {
            role: Label.Lead
            Layout.fillWidth: true
            text: Appearance.phrases.siteIs(said.entry.site, said.entry.level)
            Accessible.role: Accessible.Heading
        }
        ActionButton {
            Layout.columnSpan: Theme.largeText ? 2 : 1
            Layout.fillWidth: Theme.largeText
            kind: ButtonFace.Quiet
            iconName: TodayModel.canUndo ? "undo" : ""
            text: TodayModel.canUndo ? qsTr("Undo") : qsTr("Change")
            Accessible.description: Appearance.phrases.site(said.entry.site)
            onClicked: if (TodayModel.canUndo) TodayModel.undo(); else said.change()
        }
    }
    Deferred {
        wanted: said.entry.checkedIn && said.entry.level !== Level.Dry
        part: Part.StirredUpPart
        onLoaded: item.entry = Qt.binding(() => said.entry)
    }
}
