import QtQuick
import QtQuick.Layouts
import Firstdew

// Why a call for a top-up is not followed.
Sheet {
    id: notNow
    property string site: ""
    title: qsTr("Not this time")
    Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("What speaks against it? The answer goes into your record; the call comes back when a later check-in asks for it.") }
    Repeater {
        model: [{ key: "explained", text: qsTr("The dampness has another cause") }, { key: "skin", text: qsTr("My skin needs a rest") },
                { key: "no-time", text: qsTr("No time") }, { key: "away", text: qsTr("I am away from the machine") }, { key: "other", text: qsTr("Something else") }]
        ActionButton {
            required property var modelData
            text: modelData.text
            Layout.fillWidth: true
            onClicked: { notNow.close(); TodayModel.answer(notNow.site, "not-this-time", modelData.key) }
        }
    }
}
