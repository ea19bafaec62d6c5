import QtQuick
import QtQuick.Layouts

// A part that is read and made when it is first wanted, and stays: what is not made costs no start any time.
Loader {
    property bool wanted: false
    property string part: "" // its file beside the pages
    property bool made: false
    source: part !== "" && (wanted || made) ? Qt.resolvedUrl("../" + part + ".qml") : ""
    active: wanted || made
    visible: wanted
    onLoaded: made = true
    Layout.fillWidth: true
}
