import QtQuick
import QtQuick.Layouts
import Firstdew

// A day or a time: its name, what it is now, and the sheet to choose another one from, made when it is first wanted.
ColumnLayout {
    id: row
    property string label: ""
    property string shown: ""
    property string hint: ""
    property Component sheet
    Layout.fillWidth: true
    Layout.fillHeight: false
    spacing: Theme.tight
    Label { role: Label.Small; text: row.label; Layout.fillWidth: true; Accessible.ignored: true }
    ActionButton {
        text: row.shown === "" ? qsTr("Choose") : row.shown
        Accessible.name: qsTr("%1: %2").arg(row.label).arg(text)
        Accessible.description: row.hint
        Layout.fillWidth: true
        Layout.maximumHeight: Theme.largeText ? Infinity : Theme.target // Qt 6.4: measured at no width first, it may keep that height
        onClicked: { chooser.active = true; chooser.shown.open() }
    }
    Label { visible: text !== ""; role: Label.Small; text: row.hint; Layout.fillWidth: true }
    Loader { id: chooser; readonly property var shown: item; active: false; visible: false; sourceComponent: row.sheet }
}
