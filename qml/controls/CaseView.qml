import QtQuick
import QtQuick.Layouts
import Firstdew

// One person of the caseload: why a call is needed, the summary as it would be printed, and a care sheet for them.
// Not a layout: in Qt 6.4 one within another keeps the height that its words had at no width.
Column {
    id: view
    readonly property caseLine person: CaseloadModel.shown
    property string message: ""
    Layout.fillWidth: true
    spacing: Theme.gap
    Repeater {
        model: view.person.why
        Label { required property string modelData; required property int index; role: Label.Strong; width: view.width; color: view.person.skin && index === 0 ? Theme.danger : Theme.ink; text: modelData }
    }
    ActionButton { kind: ButtonFace.Main; text: qsTr("Make a care sheet"); width: view.width; onClicked: { SheetModel.beginForShown(); Router.page(Part.MakeSheetPagePart) } }
    ActionButton {
        iconName: "share"
        text: qsTr("Share the summary")
        width: view.width
        onClicked: CaseloadModel.shareSummary()
    }
    Connections { target: CaseloadModel; function onSummaryWent(result) { view.message = result.message } }
    Label { visible: text !== ""; width: view.width; text: view.message }
    PagePreview {
        width: view.width
        height: width * Math.SQRT2
        source: CaseloadModel
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("The summary of %1").arg(view.person.name)
    }
}
