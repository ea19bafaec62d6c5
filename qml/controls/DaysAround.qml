import QtQuick
import QtQuick.Layouts
import Firstdew

// The days ahead and the days behind.
ColumnLayout {
    spacing: Theme.margin
    Card {
        Heading { text: qsTr("The next fourteen days") }
        OutlookStrip { Layout.fillWidth: true }
    }
    Card {
        Heading { text: qsTr("The last seven days") }
        DaysBack { Layout.fillWidth: true }
    }
}
