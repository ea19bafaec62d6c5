import QtQuick
import QtQuick.Layouts
import Firstdew

// Somebody of the caseload, where there is no room beside the list.
Frame {
    canGoBack: true
    personal: false
    title: CaseloadModel.shown.name !== "" ? CaseloadModel.shown.name : qsTr("Name not given")
    CaseView { visible: CaseloadModel.shown.id !== "" }
    Label { visible: CaseloadModel.shown.id === ""; Layout.fillWidth: true; text: qsTr("Choose somebody from the caseload.") }
}
