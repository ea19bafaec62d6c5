import QtQuick
import QtQuick.Layouts
import Firstdew

// What went with a day's dampness.
ColumnLayout {
    id: stirred
    property siteToday entry
    spacing: Theme.gap
    Label { role: Label.Small; text: qsTr("Anything that might explain it?"); Layout.fillWidth: true }
    SomeOf {
        values: Appearance.phrases.circumstances
        name: value => Appearance.phrases.circumstance(value)
        chosen: stirred.entry.with
        onToggled: now => TodayModel.setCircumstances(stirred.entry.site, now, Store.today)
    }
}
