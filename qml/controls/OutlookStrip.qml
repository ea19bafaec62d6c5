import QtQuick
import QtQuick.Layouts
import Firstdew

// Fourteen days ahead: the chance of dampness grows as a rising bar; a planned bath stands above its day.
// Not a layout: in Qt 6.4 one within another's card is measured with lines that are already deleted, and falls over.
Column {
    id: strip
    spacing: Theme.gap
    function tells(all: var): bool { return all.some(a => a.known) }
    function plans(all: var): bool { return all.some(a => a.sessions.some(session => session)) }
    function names(all: var): string { return all.map(ahead => Appearance.phrases.site(ahead.site)).join(" · ") }
    /// A line for each day: the chance of dampness, and the session that is planned.
    function rowsOf(ahead: siteAhead): var {
        const session = qsTr("session planned")
        return ahead.chances.map((chance, day) => ({ what: Appearance.phrases.dayFull(Store.today + day), says: Appearance.phrases.listed([Appearance.phrases.percent(chance)].concat(ahead.sessions[day] ? [session] : [])) }))
    }
    /// The same of every site that has bars, each line with its site where there are several.
    function allRows(all: var): var {
        const known = all.filter(ahead => ahead.known)
        return known.flatMap(ahead => rowsOf(ahead).map(row => known.length === 1 ? row : ({ what: Appearance.phrases.pair(Appearance.phrases.site(ahead.site), row.what), says: row.says })))
    }
    Repeater {
        model: TodayModel.ahead.length
        ColumnLayout {
            id: line
            required property int index
            readonly property siteAhead ahead: TodayModel.ahead[index] ?? Empty.siteAhead
            spacing: Theme.tight
            width: strip.width
            GridLayout {
                columns: Theme.largeText ? 1 : 2
                Layout.fillWidth: true
                Label { role: Label.Small; text: Appearance.phrases.site(line.ahead.site) }
                Label {
                    role: Label.Small
                    Layout.fillWidth: true
                    horizontalAlignment: Theme.largeText ? Text.AlignLeft : Text.AlignRight
                    text: line.ahead.next === 0 ? qsTr("No session planned") : line.ahead.next === Store.today ? qsTr("Session today") : qsTr("Session %1").arg(Appearance.phrases.dayLong(line.ahead.next))
                }
            }
            OutlookBars {
                ahead: line.ahead
                barHeight: Theme.iconLarge
                gap: Theme.tight
                iconSize: Theme.iconSmall
                track: Theme.sunken
                bar: Theme.main
                bath: Theme.nowText
                Layout.fillWidth: true
                Layout.preferredHeight: Theme.iconLarge + Theme.iconSmall + Theme.tight
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("Chance of dampness by day, %1").arg(Appearance.phrases.site(line.ahead.site))
                Accessible.description: line.ahead.known ? strip.rowsOf(line.ahead).map(row => Appearance.phrases.pair(row.what, row.says)).join(". ") : qsTr("Bars come with the first session.")
            }
            Label { visible: !line.ahead.known; role: Label.Tiny; Layout.fillWidth: true; text: qsTr("Bars come with the first session.") }
        }
    }
    Row {
        id: dates
        width: strip.width
        layoutDirection: Appearance.rightToLeft ? Qt.RightToLeft : Qt.LeftToRight
        LayoutMirroring.enabled: false
        Repeater {
            model: TodayModel.daysAhead
            Text {
                required property int index
                readonly property bool shown: index % (Theme.textScale > 1.4 ? 4 : 2) === 0
                width: dates.width / TodayModel.daysAhead
                text: shown ? Appearance.phrases.dayNumber(Store.today + index) : ""
                font.family: Theme.family
                font.pixelSize: Theme.tiny
                font.weight: index === 0 ? Theme.strong : Font.Normal
                color: index === 0 ? Theme.ink : Theme.inkSoft
                horizontalAlignment: Text.AlignHCenter
            }
        }
    }
    AsTable { width: strip.width; visible: strip.tells(TodayModel.ahead); about: strip.names(TodayModel.ahead); rows: () => strip.allRows(TodayModel.ahead); asked: Store.today }
    Item {
        readonly property bool wanted: strip.tells(TodayModel.ahead)
        readonly property bool planned: strip.plans(TodayModel.ahead)
        visible: wanted
        width: strip.width
        implicitHeight: Math.max(sign.height, meaning.implicitHeight)
        Icon { id: sign; visible: parent.planned; anchors { left: parent.left; top: parent.top } width: Theme.iconSmall; height: Theme.iconSmall; name: "bath"; color: Theme.nowText }
        Label { id: meaning; role: Label.Tiny; anchors { left: parent.planned ? sign.right : parent.left; right: parent.right; leftMargin: parent.planned ? Theme.small : 0 } text: parent.planned ? qsTr("Planned session. The fuller a bar, the likelier it is damp by that day; after a session it starts again.") : qsTr("The fuller a bar, the likelier it is damp by that day.") }
    }
}
