import QtQuick
import QtQuick.Layouts
import Firstdew

// Sessions of a course that crowd: said, with both ways to go on.
ColumnLayout {
    id: choice
    property sitePlan plan
    visible: plan.lastBetween !== 0
    Layout.fillWidth: true
    spacing: Theme.small
    Label { Layout.fillWidth: true; text: choice.plan.crowded }
    ActionButton { text: qsTr("Close together, done by %1").arg(Appearance.phrases.dayLong(choice.plan.lastDay)); Layout.fillWidth: true; onClicked: PlanModel.setPace(choice.plan.treatedAs, Pace.KeepWindow) }
    ActionButton { text: qsTr("A day between, done by %1").arg(Appearance.phrases.dayLong(choice.plan.lastBetween)); Layout.fillWidth: true; onClicked: PlanModel.setPace(choice.plan.treatedAs, Pace.DayBetween) }
}
