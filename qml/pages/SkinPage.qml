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
    OneOf { visible: options.length > 1; options: DiaryModel.sites.map(s => ({ value: s, text: Appearance.phrases.site(s) })); value: page.site; onChosen: v => page.site = v }
    SomeOf {
        tokens: Appearance.phrases.skinFindings
        name: token => Appearance.phrases.skin(token)
        chosen: page.skin
        alone: "fine"
        onToggled: now => page.skin = now
    }
    Card {
        visible: page.serious
        kind: "danger"
        Label { Layout.fillWidth: true; text: qsTr("Burns or blisters: no bath there until a clinician has looked at it.") }
    }
    Field { id: note; label: qsTr("Note"); hint: qsTr("May stay empty.") }
    ActionButton { kind: ButtonFace.Main; text: qsTr("Save"); Layout.fillWidth: true; enabled: page.skin.length > 0; onClicked: if (DiaryModel.addSideEffect(page.site, page.skin, note.text)) Router.back() }
}
