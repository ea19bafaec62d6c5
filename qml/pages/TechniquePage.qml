import QtQuick
import QtQuick.Layouts
import Firstdew

// How it is done, one check after the other: where a course brought no response, or the current will not rise.
Frame {
    id: page
    canGoBack: true
    title: qsTr("Check how you do it")
    readonly property int treated: Router.treated
    Label { Layout.fillWidth: true; text: qsTr("Go through this before your next session. One small thing is often the reason why it does not help, or why the current will not rise.") }
    Repeater {
        model: TodayModel.technique(page.treated)
        Card {
            id: card
            required property techniqueLine modelData
            Drawings { visible: card.modelData.drawings.length > 0; subjects: card.modelData.drawings; most: Theme.drawing }
            Label { Layout.fillWidth: true; text: card.modelData.text }
        }
    }
}
