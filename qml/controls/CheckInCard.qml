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
            Layout.preferredWidth: Theme.largeText ? 1 : implicitWidth
            visible: card.done && TodayModel.canUndo
            kind: "quiet"
            iconName: "undo"
            text: qsTr("Undo")
            Accessible.description: card.entry ? Look.words.site(card.entry.site) : ""
            onClicked: TodayModel.undo()
        }
        ActionButton {
            Layout.columnSpan: Theme.largeText ? 2 : 1
            Layout.fillWidth: Theme.largeText
            Layout.preferredWidth: Theme.largeText ? 1 : implicitWidth
            visible: card.done && !TodayModel.canUndo
            kind: "quiet"
            text: qsTr("Change")
            Accessible.description: card.entry ? Look.words.site(card.entry.site) : ""
            onClicked: card.changing = true
        }
    }
    LevelChoice {
        visible: !card.done
        site: card.entry ? card.entry.site : ""
        level: card.entry ? card.entry.level : ""
        onChosen: level => { card.changing = false; TodayModel.checkIn(card.entry.site, level) }
    }
    Label { visible: circumstances.visible; role: "label"; text: qsTr("Did anything stir it up?"); Layout.fillWidth: true }
    SomeOf {
        id: circumstances
        visible: card.done && card.entry.level !== "dry"
        tokens: Look.words.circumstances
        name: token => Look.words.circumstance(token)
        chosen: card.entry ? card.entry.with : []
        onToggled: now => TodayModel.setCircumstances(card.entry.site, now)
    }
}
