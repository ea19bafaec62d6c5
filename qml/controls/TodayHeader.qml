import QtQuick
import QtQuick.Layouts
import Firstdew

// What stands beside the title of Today.
RowLayout {
    IconButton {
        visible: TodayModel.sites.length > 0
        iconName: "share"
        text: qsTr("Summary for your prescriber")
        onClicked: Router.page(Part.SummaryPagePart)
    }
    IconButton {
        visible: Store.several
        iconName: "person"
        text: qsTr("Change person, now %1").arg(Store.personName)
        onClicked: Router.page(Part.PeoplePart)
    }
}
