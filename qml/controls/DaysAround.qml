import QtQuick
import QtQuick.Layouts
import Firstdew

// The days ahead and the days behind.
ColumnLayout {
    spacing: Theme.margin
    Card {
        Label { role: Label.Lead; text: qsTr("The next fourteen days"); Layout.fillWidth: true; Accessible.role: Accessible.Heading }
        OutlookStrip { Layout.fillWidth: true }
    }
    Card {
        Label { role: Label.Lead; text: qsTr("The last seven days"); Layout.fillWidth: true; Accessible.role: Accessible.Heading }
        DaysBack { Layout.fillWidth: true }
    }
}
