import QtQuick
import QtQuick.Layouts
import Firstdew

// What went with a day's dampness.
ColumnLayout {
    id: stirred
    property var entry: null
    spacing: Theme.gap
    Label { role: "label"; text: qsTr("Did anything stir it up?"); Layout.fillWidth: true }
    SomeOf {
        tokens: Look.words.circumstances
        name: token => Look.words.circumstance(token)
        chosen: stirred.entry ? stirred.entry.with : []
        onToggled: now => TodayModel.setCircumstances(stirred.entry.site, now)
    }
}
