import QtQuick
import QtQuick.Layouts

// A part that is made when it is first wanted, and stays: what is not made costs no start any time.
Loader {
    property bool wanted: false
    property bool made: false
    active: wanted || made
    visible: wanted
    onLoaded: made = true
    Layout.fillWidth: true
}
