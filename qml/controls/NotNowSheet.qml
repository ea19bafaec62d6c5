import QtQuick
import QtQuick.Layouts
import Firstdew

// Why a call for a top-up is not followed.
Sheet {
    id: notNow
    title: qsTr("Not this time")
    Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("What's the reason? The answer goes into your record; the call comes back when a later check-in asks for it.") }
    Repeater {
        model: [{ key: NotNow.Explained, text: qsTr("The dampness has another cause") }, { key: NotNow.Skin, text: qsTr("My skin needs a rest") },
                { key: NotNow.NoTime, text: qsTr("No time") }, { key: NotNow.Away, text: qsTr("I am away from the machine") }, { key: NotNow.Other, text: qsTr("Something else") }]
        ActionButton {
            required property var modelData
            text: modelData.text
            Layout.fillWidth: true
            onClicked: { notNow.close(); TodayModel.notThisTime(Router.site, modelData.key) }
        }
    }
}
