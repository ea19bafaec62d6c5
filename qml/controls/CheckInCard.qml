import QtQuick
import QtQuick.Layouts
import Firstdew

// One site's check-in of today: four levels; once chosen, what went with it, and undo.
Card {
    id: card
    property siteToday entry
    property bool changing: false
    property bool low: false // there is little height
    margin: low ? Theme.gap : Theme.margin
    spacing: low ? Theme.small : Theme.gap
    readonly property bool done: entry.checkedIn && !changing
    Heading { visible: !card.done; text: qsTr("%1 today?").arg(Appearance.phrases.site(card.entry.site)) }
    Deferred {
        wanted: card.done
        part: Part.CheckedInPart
        onLoaded: { item.entry = Qt.binding(() => card.entry); item.change.connect(() => card.changing = true) }
    }
    LevelChoice {
        visible: !card.done
        site: card.entry.site
        dense: card.low
        level: card.entry.checkedIn ? card.entry.level : -1
        onChosen: level => { card.changing = false; TodayModel.checkIn(card.entry.site, level, Store.today) }
    }
}
