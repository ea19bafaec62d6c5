import QtQuick
import QtQuick.Layouts
import Firstdew

// Whether it works at a site: the answer, a column for each dry spell, and the figures behind it.
Card {
    id: card
    property int site: 0
    property siteAnswer answer: DiaryModel.working(site)
    Connections { target: DiaryModel; function onChanged() { card.answer = DiaryModel.working(card.site) } }
    Label { role: Label.Small; text: Appearance.phrases.site(card.site); Layout.fillWidth: true }
    Label { role: Label.Lead; font.weight: Theme.strong; color: card.answer.works ? Theme.good : Theme.ink; text: card.answer.line; Layout.fillWidth: true; Accessible.role: Accessible.Heading }
    SpellColumnsChart {
        id: spells
        diary: DiaryModel
        site: card.site
        visible: count > 0
        Layout.fillWidth: true
        Layout.preferredHeight: Theme.ring / 4 + 3 * Theme.tiny
        ink: Theme.inkSoft
        faint: Theme.line
        line: Theme.main
        accent: Theme.nowText
        family: Theme.family
        textSize: Theme.tiny
        mirrored: Appearance.rightToLeft
        Accessible.role: Accessible.Chart
        Accessible.name: qsTr("Your dry spells, %1").arg(Appearance.phrases.site(card.site))
        Accessible.description: saying
    }
    Label { visible: spells.visible; role: Label.Tiny; Layout.fillWidth: true; text: qsTr("Dry days after each session, the latest last. A point on top: still dry when the next session came, or dry today.") }
    Label { visible: !spells.visible; role: Label.Small; Layout.fillWidth: true; text: qsTr("A bar for each dry spell comes here once the course is under way.") }
    Label { Layout.fillWidth: true; text: card.answer.detail }
}
