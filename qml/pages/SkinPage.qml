import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    canGoBack: true
    title: qsTr("Skin after a bath")
    property string site: DiaryModel.sites.length > 0 ? DiaryModel.sites[0] : "hands"
    property var skin: []
    readonly property bool serious: skin.includes("blister") || skin.includes("burn")
    OneOf { visible: options.length > 1; options: DiaryModel.sites.map(s => ({ value: s, text: Look.words.site(s) })); value: page.site; onChosen: v => page.site = v }
    Wrap {
        Layout.fillWidth: true
        spacing: Theme.small
        Repeater {
            model: ["fine", "redness", "dryness", "itch", "blister", "burn"]
            Chip {
                required property string modelData
                text: Look.words.skin(modelData)
                checked: page.skin.includes(modelData)
                onClicked: page.skin = modelData === "fine" ? (checked ? [] : ["fine"]) : checked ? page.skin.filter(s => s !== modelData) : page.skin.filter(s => s !== "fine").concat([modelData])
            }
        }
    }
    Card {
        visible: page.serious
        kind: "danger"
        Label { Layout.fillWidth: true; text: qsTr("Burns or blisters: no bath there until a clinician has looked at it.") }
    }
    Field { id: note; label: qsTr("Note"); hint: qsTr("May stay empty.") }
    ActionButton { kind: "main"; text: qsTr("Save"); Layout.fillWidth: true; enabled: page.skin.length > 0; onClicked: if (DiaryModel.addSideEffect(page.site, page.skin, note.text)) Router.back() }
}
