import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    canGoBack: true
    title: qsTr("Weighing")
    property int site: DiaryModel.sites[0] ?? DiarySite.Hands
    readonly property real before: Appearance.phrases.numberIn(first.text)
    readonly property real after: Appearance.phrases.numberIn(second.text)
    readonly property real minutes: Appearance.phrases.numberIn(time.text)
    readonly property bool good: first.text !== "" && second.text !== "" && before > 0 && after >= before && minutes > 0
    Label { Layout.fillWidth: true; text: qsTr("Weigh a paper, hold it to the skin for five minutes, weigh it again. It takes a scale that shows milligrams.") }
    SiteOf { site: page.site; onChosen: v => page.site = v }
    Field { id: first; label: qsTr("Before, in milligrams"); inputMethodHints: Qt.ImhFormattedNumbersOnly }
    Field { id: second; label: qsTr("After, in milligrams"); inputMethodHints: Qt.ImhFormattedNumbersOnly; problem: text !== "" && first.text !== "" && !(page.after >= page.before) ? qsTr("It cannot weigh less afterwards; weigh again.") : "" }
    Field { id: time; label: qsTr("Minutes"); text: "5"; inputMethodHints: Qt.ImhFormattedNumbersOnly }
    Label { visible: page.good; role: Label.Strong; Layout.fillWidth: true; text: page.good ? qsTr("%1 a minute").arg(Appearance.phrases.milligrams((page.after - page.before) / page.minutes, 1)) : "" }
    dock: ActionButton { kind: ButtonFace.Now; text: qsTr("Save"); Layout.fillWidth: true; enabled: page.good; onClicked: if (DiaryModel.addWeighing(page.site, page.before, page.after, page.minutes)) Router.back() }
}
