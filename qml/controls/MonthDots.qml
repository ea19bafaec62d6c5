import QtQuick
import QtQuick.Layouts
import Firstdew

// One site's month as a calendar of dots. A tap opens the day; with the keyboard, arrows go to it.
ColumnLayout {
    id: whole
    property int site: 0
    property int back: 0
    property bool baths: true
    property var without: []
    signal dayTapped(int day)
    spacing: Theme.small
    readonly property string saying: DiaryModel.dampSaying(site, 28, back, baths, without, Store.today)
    function dayText(day) {
        const noted = DiaryModel.noted(site, day)
        return Appearance.phrases.pair(Appearance.phrases.dayFull(day), noted.known ? Appearance.phrases.level(noted.level) : qsTr("nothing noted"))
    }
    MonthChart {
        id: chart
        readonly property int days: 7
        diary: DiaryModel
        site: whole.site
        back: whole.back
        baths: whole.baths
        without: whole.without
        Layout.fillWidth: true
        Layout.preferredHeight: wantedHeight
        ink: Theme.ink
        faint: Theme.inkSoft
        line: Theme.main
        accent: Theme.nowText
        family: Theme.family
        textSize: Theme.tiny
        mirrored: Appearance.rightToLeft
        activeFocusOnTab: true
        onActiveFocusChanged: if (!activeFocus) selected = 0; else if (selected === 0) step(0)
        Keys.onShortcutOverride: event => event.accepted = event.key === Qt.Key_Up || event.key === Qt.Key_Down
        Keys.onLeftPressed: step(mirrored ? 1 : -1)
        Keys.onRightPressed: step(mirrored ? -1 : 1)
        Keys.onUpPressed: step(-days)
        Keys.onDownPressed: step(days)
        Keys.onReturnPressed: if (selected !== 0) whole.dayTapped(selected)
        Accessible.role: Accessible.Chart
        Accessible.name: qsTr("Dampness over time, %1").arg(Appearance.phrases.site(whole.site))
        Accessible.description: selected !== 0 ? whole.dayText(selected) : whole.saying
        TapHandler {
            onTapped: point => {
                const day = chart.dayAt(point.position.x, point.position.y)
                if (day !== 0)
                    whole.dayTapped(day)
            }
        }
    }
    Wrap {
        Layout.fillWidth: true
        spacing: Theme.gap
        Repeater {
            model: Appearance.phrases.levels
            Item {
                id: key
                required property int modelData
                readonly property real radius: chart.dotRadius(modelData)
                implicitWidth: dot.width + Theme.tight + word.implicitWidth
                implicitHeight: word.implicitHeight
                Rectangle {
                    id: dot
                    anchors { left: parent.left; verticalCenter: parent.verticalCenter }
                    width: 2 * key.radius
                    height: width
                    radius: key.radius
                    color: key.modelData === Level.Dry ? Theme.clear : Theme.main
                    border { width: key.modelData === Level.Dry ? 2 : 0; color: Theme.main }
                }
                Label { id: word; role: Label.Tiny; wrapMode: Text.NoWrap; anchors { left: dot.right; leftMargin: Theme.tight; verticalCenter: parent.verticalCenter } text: Appearance.phrases.level(key.modelData) }
            }
        }
    }
    AsTable { about: chart.Accessible.name; rows: () => DiaryModel.dampTable(whole.site, 28, whole.back, whole.baths, whole.without); asked: chart.levels + whole.back }
    Label { visible: chart.levels === 0; Layout.fillWidth: true; text: qsTr("No check-in in these weeks. Tap a day to add one.") }
    Label { visible: chart.levels > 0; role: Label.Tiny; Layout.fillWidth: true; text: whole.baths ? qsTr("A bar under a day is a session. Tap a day to see and correct it.") : qsTr("Tap a day to see and correct it.") }
}
