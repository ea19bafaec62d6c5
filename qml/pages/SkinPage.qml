import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    canGoBack: true
    title: qsTr("Skin after a session")
    property int site: DiaryModel.sites[0] ?? DiarySite.Hands
    property var skin: []
    readonly property bool serious: skin.includes(SkinFinding.Blister) || skin.includes(SkinFinding.Burn)
    SiteOf { site: page.site; onChosen: v => page.site = v }
    SomeOf {
        values: Appearance.phrases.skinFindings
        name: value => Appearance.phrases.skin(value)
        chosen: page.skin
        alone: SkinFinding.Fine
        onToggled: now => page.skin = now
    }
    Card {
        visible: page.serious
        kind: Card.Danger
        Label { Layout.fillWidth: true; text: qsTr("Burns or blisters: no session there until a clinician has looked at it.") }
    }
    Field { id: note; label: qsTr("Note"); hint: qsTr("Optional") }
    dock: ActionButton { kind: ButtonFace.Now; text: qsTr("Save"); Layout.fillWidth: true; enabled: page.skin.length > 0; onClicked: if (DiaryModel.addSideEffect(page.site, page.skin, note.text)) Router.back() }
}
