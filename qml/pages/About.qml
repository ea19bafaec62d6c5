import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    canGoBack: true
    personal: false
    title: qsTr("About and cautions")
    Card { CautionList {} }
    Card {
        Heading { text: qsTr("Privacy") }
        Label { Layout.fillWidth: true; text: qsTr("No account, no network. Nothing leaves this phone unless you share it.") }
    }
    Card {
        Heading { text: qsTr("Firstdew %1").arg(Appearance.version) }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("Free software under the Apache licence 2.0. Typefaces Inter and Noto Sans Arabic under the SIL Open Font Licence 1.1.") }
    }
}
