import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    title: Appearance.phrases.place(Place.Session)
    Label { visible: text !== ""; text: BathModel.longWayText; Layout.fillWidth: true }
    Heading { text: qsTr("Where") }
    Repeater {
        model: BathModel.sites.length
        ChoiceRow { required property int index; readonly property siteChoice line: BathModel.sites[index] ?? Empty.siteChoice; text: line.name; hint: line.minutes; checked: BathModel.site === line.site; onClicked: BathModel.chooseSite(line.site) }
    }
    Heading { text: qsTr("Current") }
    Repeater {
        model: BathModel.waveforms.length
        ChoiceRow { required property int index; readonly property waveformChoice line: BathModel.waveforms[index] ?? Empty.waveformChoice; text: line.name; hint: line.why; enabled: line.allowed; checked: BathModel.waveform === line.waveform; onClicked: BathModel.chooseWaveform(line.waveform) }
    }
    Heading { text: qsTr("Who can tap the phone") }
    Repeater {
        model: BathModel.ways.length
        ChoiceRow { required property int index; readonly property wayChoice line: BathModel.ways[index] ?? Empty.wayChoice; text: line.name; hint: line.hint; enabled: line.allowed; checked: BathModel.way === line.way; onClicked: BathModel.chooseWay(line.way) }
    }
    OneOf {
        visible: BathModel.sided
        label: qsTr("Which side first")
        options: [{ value: Side.Right, text: qsTr("Right side") }, { value: Side.Left, text: qsTr("Left side") }]
        value: BathModel.firstSide
        onChosen: side => BathModel.chooseSide(side)
    }
    Card {
        kind: BathModel.allowed ? Card.Plain : Card.Danger
        Label { role: Label.Strong; text: BathModel.limitText; Layout.fillWidth: true }
        Label { visible: text !== ""; text: BathModel.watchText; Layout.fillWidth: true }
        Label { role: Label.Small; text: BathModel.areaText; Layout.fillWidth: true }
        Label { visible: PlanModel.person.child && PlanModel.person.adult !== ""; text: qsTr("Adult beside the child: %1").arg(PlanModel.person.adult); Layout.fillWidth: true }
        Label { visible: text !== ""; text: BathModel.adviceText; Layout.fillWidth: true }
        Label { visible: text !== ""; role: Label.Strong; text: BathModel.comparedText; Layout.fillWidth: true }
        Label { visible: text !== ""; role: Label.Small; text: BathModel.lengthText; Layout.fillWidth: true }
    }
    ActionButton { visible: BathModel.canPractise; kind: ButtonFace.Quiet; text: qsTr("Practice without current"); Layout.fillWidth: true; onClicked: BathModel.practise() }
    dock: [
        Label { visible: text !== ""; role: Label.Strong; color: Theme.danger; text: BathModel.refusal; Layout.fillWidth: true },
        ActionButton { kind: ButtonFace.Now; text: qsTr("Continue"); Layout.fillWidth: true; enabled: BathModel.allowed; onClicked: BathModel.goOn() },
        ActionButton { visible: BathModel.follows; kind: ButtonFace.Quiet; text: qsTr("Enough for today"); Layout.fillWidth: true; onClicked: BathModel.enoughForNow() }
    ]
}
