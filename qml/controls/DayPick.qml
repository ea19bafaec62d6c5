import QtQuick
import QtQuick.Layouts
import Firstdew

// A day, by the calendar of its month; one long ago by its ten years, year and month first.
PickRow {
    id: pick
    property int day: 0 // since 1970-01-01
    property bool given: true // false: none yet
    property bool longAgo: false // a birthday
    property int first: -60000
    property int last: 60000
    property string title: label
    signal picked(int day)
    shown: !given ? "" : !longAgo ? Appearance.phrases.dayFull(day) : day !== 0 ? Appearance.phrases.dayYear(day) : new Date(1970, 0, 1).toLocaleDateString(Qt.locale(), "d MMMM yyyy")
    sheet: DaySheetPick { title: pick.title; longAgo: pick.longAgo; first: pick.first; last: pick.last; start: pick.given ? pick.day : Math.max(pick.first, Math.min(pick.last, Store.today)); onPicked: day => pick.picked(day) }
}
