import QtQuick
import QtQuick.Layouts
import Firstdew

// One site's check-in of today: four levels; once chosen, what went with it, and undo.
Card {
    id: card
    property var entry: null
    property bool changing: false
    readonly property bool done: entry !== null && entry.checkedIn && !changing
    GridLayout {
        Layout.fillWidth: true
        columns: Theme.largeText ? 2 : 3
        columnSpacing: Theme.gap
        Ripples {
            visible: card.done
            level: card.entry ? Math.max(0, Look.words.levels.indexOf(card.entry.level)) : 0
            color: Theme.main
            stroke: 2.4
            Layout.preferredWidth: Theme.iconLarge
            Layout.preferredHeight: Theme.iconLarge * 0.8
        }
        Label {
            role: "lead"
            Layout.fillWidth: true
            text: !card.entry ? "" : card.done ? Look.words.siteIs(card.entry.site, card.entry.level) : qsTr("%1 today?").arg(Look.words.site(card.entry.site))
            Accessible.role: Accessible.Heading
        }
        ActionButton {
            Layout.columnSpan: Theme.largeText ? 2 : 1
            Layout.fillWidth: Theme.largeText
            visible: card.done
            kind: "quiet"
            iconName: TodayModel.canUndo ? "undo" : ""
            text: TodayModel.canUndo ? qsTr("Undo") : qsTr("Change")
            Accessible.description: card.entry ? Look.words.site(card.entry.site) : ""
            onClicked: if (TodayModel.canUndo) TodayModel.undo(); else card.changing = true
        }
    }
    LevelChoice {
        visible: !card.done
        site: card.entry ? card.entry.site : ""
        level: card.entry ? card.entry.level : ""
        onChosen: level => { card.changing = false; TodayModel.checkIn(card.entry.site, level) }
    }
    Late {
        wanted: card.done && card.entry.level !== "dry"
        part: "controls/StirredUp"
        onLoaded: item.entry = Qt.binding(() => card.entry)
    }
}
