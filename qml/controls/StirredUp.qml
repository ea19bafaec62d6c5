import QtQuick
import QtQuick.Layouts
import Firstdew

// What went with a day's dampness.
ColumnLayout {
    id: stirred
    property var entry: null
    spacing: Theme.gap
    Label { role: Label.Small; text: qsTr("Did anything stir it up?"); Layout.fillWidth: true }
    SomeOf {
        tokens: Appearance.phrases.circumstances
        name: token => Appearance.phrases.circumstance(token)
        chosen: stirred.entry ? stirred.entry.with : []
        onToggled: now => TodayModel.setCircumstances(stirred.entry.site, now)
    }
}
