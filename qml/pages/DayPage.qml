import QtQuick
import QtQuick.Layouts
import Firstdew

// One day: everything noted, to be mended; what stood before is kept beside it.
Frame {
    id: page
    canGoBack: true
    property string date: Store.today
    title: Words.dayFull(date)
    titleRole: "title"
    property var entries: DiaryModel.day(date)
    Connections { target: DiaryModel; function onChanged() { page.entries = DiaryModel.day(page.date) } }
    Repeater {
        model: DiaryModel.sites
        Card {
            id: card
            required property string modelData
            readonly property var line: page.entries.filter(e => e.kind === "check-in" && e.site === modelData).pop()
            Heading { text: Words.site(card.modelData) }
            LevelChoice { dense: true; site: card.modelData; level: card.line ? card.line.level : ""; onChosen: level => TodayModel.checkIn(card.modelData, level, page.date) }
            Wrap {
                visible: card.line !== undefined
                Layout.fillWidth: true
                spacing: Theme.small
                Repeater {
                    model: ["heat", "exertion", "stress", "illness"]
                    Chip {
                        required property string modelData
                        text: Words.circumstance(modelData)
                        checked: card.line !== undefined && card.line.with.includes(modelData)
                        onClicked: TodayModel.setCircumstances(card.modelData, checked ? card.line.with.filter(w => w !== modelData) : card.line.with.concat([modelData]), page.date)
                    }
                }
            }
            Label { visible: card.line !== undefined && card.line.corrected; role: "label"; text: qsTr("Corrected; the first entry is kept beside it."); Layout.fillWidth: true }
        }
    }
    Repeater {
        model: page.entries.filter(e => e.kind !== "check-in")
        Card {
            id: other
            required property var modelData
            readonly property var e: modelData
            Heading { text: other.e.kind === "session" ? Words.bath(other.e.site) : Words.site(other.e.site) }
            Label {
                Layout.fillWidth: true
                text: other.e.kind === "session" ? (other.e.completed ? qsTr("Finished, %1").arg(Words.waveform(other.e.waveform)) : qsTr("Broken off, %1").arg(Words.waveform(other.e.waveform)))
                                                   + (other.e.comfortable >= 0 ? "\n" + qsTr("Comfortable at %1").arg(Words.milliamps(other.e.comfortable)) : "")
                                                   + (other.e.comfort ? "\n" + Words.comfort(other.e.comfort) : "")
                    : other.e.kind === "hdss" ? qsTr("Bother score %1 of 4").arg(other.e.score)
                    : qsTr("Skin: %1").arg(other.e.skin.map(s => Words.skin(s)).join(", "))
            }
            Label { visible: text !== ""; role: "label"; text: other.e.note || ""; Layout.fillWidth: true }
            ActionButton { kind: "quiet"; text: qsTr("Withdraw this entry"); onClicked: { withdraw.entry = other.e.id; withdraw.open() } }
        }
    }
    Sheet {
        id: withdraw
        property string entry: ""
        title: qsTr("Withdraw this entry?")
        Label { Layout.fillWidth: true; text: qsTr("It no longer counts. The record keeps that it was there.") }
        ActionButton { kind: "danger"; text: qsTr("Withdraw"); Layout.fillWidth: true; onClicked: { withdraw.close(); DiaryModel.withdraw(withdraw.entry) } }
        ActionButton { text: qsTr("Keep"); Layout.fillWidth: true; onClicked: withdraw.close() }
    }
}
