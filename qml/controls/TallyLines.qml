import QtQuick
import QtQuick.Layouts
import Firstdew

// What a record holds, to compare on two phones.
ColumnLayout {
    id: lines
    property recordTally tally
    Layout.fillWidth: true
    spacing: Theme.tight
    Label { role: Label.Strong; Layout.fillWidth: true; text: qsTr("%n person(s)", "", lines.tally.people) }
    Label { role: Label.Strong; Layout.fillWidth: true; text: qsTr("%n check-in(s)", "", lines.tally.checkIns) }
    Label { role: Label.Strong; Layout.fillWidth: true; text: qsTr("%n session(s)", "", lines.tally.sessions) }
    Label { visible: lines.tally.last !== 0; Layout.fillWidth: true; text: qsTr("Last entry: %1").arg(Appearance.phrases.dayYear(lines.tally.last)) }
}
