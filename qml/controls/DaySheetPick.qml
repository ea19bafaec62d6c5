import QtQuick
import QtQuick.Layouts
import Firstdew

// Ten years, year, month, day: each choice goes on to the next.
Sheet {
    id: sheet
    property bool longAgo: false
    property int first: 0
    property int last: 0
    property int start: 0
    signal picked(int day)
    enum View { Decades, Years, Months, Days }
    property int view: DaySheetPick.Days
    property int year: 2000
    property int month: 0
    readonly property int dayMs: 86400000
    readonly property int leading: (7 + new Date(year, month, 1).getDay() - Appearance.phrases.firstWeekday()) % 7
    readonly property int length: new Date(year, month + 1, 0).getDate()
    function number(y: int, m: int, d: int): int { return Math.round(Date.UTC(y, m, d) / dayMs) }
    function yearOf(day: int): int { return new Date(day * dayMs).getUTCFullYear() }
    function written(d: date, format: string): string { return d.toLocaleDateString(Qt.locale(), format) }
    function open_(y: int, m: int): bool { return number(y, m + 1, 0) >= first && number(y, m, 1) <= last }
    function turn(by: int) { const d = new Date(year, month + by, 1); year = d.getFullYear(); month = d.getMonth() }
    function decades(): var {
        const out = []
        for (let y = Math.floor(yearOf(last) / 10) * 10; y + 9 >= yearOf(first); y -= 10)
            out.push({ value: y, text: "%1–%2".arg(written(new Date(y, 0, 1), "yyyy")).arg(written(new Date(y + 9, 0, 1), "yyyy")), spoken: "", fits: true })
        return out
    }
    function cells(): var {
        const out = []
        switch (view) {
        case DaySheetPick.Decades: return decades()
        case DaySheetPick.Years:
            for (let y = year; y < year + 10; ++y)
                out.push({ value: y, text: written(new Date(y, 0, 1), "yyyy"), spoken: "", fits: y >= yearOf(first) && y <= yearOf(last) })
            return out
        case DaySheetPick.Months:
            for (let m = 0; m < 12; ++m)
                out.push({ value: m, text: Qt.locale().standaloneMonthName(m, Locale.LongFormat), spoken: "", fits: open_(year, m) })
            return out
        }
        for (let i = 0; i < leading; ++i)
            out.push({ value: 0, text: "", spoken: "", fits: false })
        for (let d = 1; d <= length; ++d) {
            const n = number(year, month, d)
            out.push({ value: n, text: written(new Date(year, month, d), "d"), spoken: new Date(year, month, d).toLocaleDateString(Qt.locale(), Locale.LongFormat), fits: n >= first && n <= last })
        }
        return out
    }
    function choose(value) {
        switch (view) {
        case DaySheetPick.Decades: year = value; view = DaySheetPick.Years; return
        case DaySheetPick.Years: year = value; view = DaySheetPick.Months; return
        case DaySheetPick.Months: month = value; view = DaySheetPick.Days; return
        }
        close()
        picked(value)
    }
    onAboutToShow: {
        const d = new Date(start * dayMs)
        year = d.getUTCFullYear()
        month = d.getUTCMonth()
        view = longAgo ? DaySheetPick.Decades : DaySheetPick.Days
    }
    Item {
        visible: sheet.view === DaySheetPick.Days
        Layout.fillWidth: true
        implicitHeight: Math.max(Theme.target, name.implicitHeight)
        IconButton { id: before; anchors.left: parent.left; iconName: "back"; text: qsTr("The month before"); enabled: sheet.open_(sheet.year, sheet.month - 1); onClicked: sheet.turn(-1) }
        ActionButton { id: name; kind: ButtonFace.Quiet; anchors.horizontalCenter: parent.horizontalCenter; text: sheet.written(new Date(sheet.year, sheet.month, 1), "MMMM yyyy"); onClicked: sheet.view = DaySheetPick.Decades }
        IconButton { anchors.right: parent.right; iconName: "next"; text: qsTr("The month after"); enabled: sheet.open_(sheet.year, sheet.month + 1); onClicked: sheet.turn(1) }
    }
    Row {
        visible: sheet.view === DaySheetPick.Days
        Layout.fillWidth: true
        Repeater {
            model: 7
            Label { required property int index; role: Label.Tiny; width: days.cell; horizontalAlignment: Text.AlignHCenter; text: Qt.locale().standaloneDayName((Appearance.phrases.firstWeekday() + index) % 7, Locale.NarrowFormat); Accessible.ignored: true }
        }
    }
    Grid {
        id: days
        readonly property int across: sheet.view === DaySheetPick.Days ? 7 : sheet.view === DaySheetPick.Months ? 2 : sheet.view === DaySheetPick.Years ? 3 : 2
        readonly property real cell: Math.floor(width / across)
        Layout.fillWidth: true
        columns: across
        Repeater {
            model: sheet.cells()
            Item {
                id: cell
                required property var modelData
                width: days.cell
                height: Math.max(Theme.target, face.implicitHeight) + Theme.tight
                ActionButton {
                    id: face
                    readonly property bool gap: true // seven share one line
                    visible: cell.modelData.text !== ""
                    anchors { fill: parent; margins: Theme.tight / 2 }
                    kind: sheet.view === DaySheetPick.Days && cell.modelData.value === sheet.start ? ButtonFace.Main : sheet.view === DaySheetPick.Days ? ButtonFace.Bare : ButtonFace.Plain
                    side: 0
                    leastHigh: Theme.target
                    text: cell.modelData.text
                    Accessible.name: cell.modelData.spoken !== "" ? cell.modelData.spoken : text
                    enabled: cell.modelData.fits
                    onClicked: sheet.choose(cell.modelData.value)
                }
            }
        }
    }
}
