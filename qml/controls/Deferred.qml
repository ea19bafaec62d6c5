import QtQuick
import QtQuick.Layouts
import Firstdew

// A part that is read and made when it is first wanted, and stays: what is not made costs no start any time.
Loader {
    property bool wanted: false
    property int part: Part.Nothing
    property bool made: false
    source: wanted || made ? Router.documentOf(part) : ""
    active: wanted || made
    visible: wanted
    onLoaded: made = true
    Layout.fillWidth: true
}
