import QtQuick
import QtQuick.Layouts
import Firstdew

// Target, limit and the meter: less and more beside the last reading, which opens a number pad.
Rectangle {
    id: meter
    property meterView view
    property bool under: false // nobody can touch anything
    property bool roomy: false // for words that are read from two metres
    readonly property real farSize: roomy ? Theme.title : Theme.shared
    /// What is being set with less and more; -1 when nothing is.
    property real pending: -1
    readonly property real value: pending >= 0 ? pending : view.lastReading
    readonly property real step: 0.5
    readonly property real most: view.mostReading
    implicitHeight: column.implicitHeight + 2 * Theme.tight
    radius: Theme.radius
    color: Theme.card
    border.width: Theme.hair
    border.color: Theme.line
    function enter(mA) {
        leftAlone.stop()
        if (pending < 0 && mA <= view.limitMa)
            Announce.value(Appearance.phrases.milliamps(mA)) // above it the alarm says more
        pending = -1
        BathModel.reading(mA)
    }
    function change(by) {
        pending = Math.max(0, Math.min(most, value + by))
        // Above the limit nothing waits.
        if (pending > view.limitMa)
            enter(pending)
        else {
            Announce.value(Appearance.phrases.milliamps(pending))
            leftAlone.restart()
        }
    }
    Timer { id: leftAlone; interval: Theme.leftAlone; onTriggered: meter.enter(meter.pending) }

    ColumnLayout {
        id: column
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: Theme.tight }
        spacing: Theme.tight
        GridLayout {
            Layout.fillWidth: true
            columns: Theme.largeText && meter.roomy ? 1 : 2
            rowSpacing: 0
            Label { role: Label.Strong; font.pixelSize: meter.farSize; wrapMode: Text.NoWrap; text: qsTr("Aim %1").arg(meter.view.target); Layout.fillWidth: true }
            Label { role: Label.Strong; font.pixelSize: meter.farSize; wrapMode: Text.NoWrap; text: qsTr("Limit %1").arg(meter.view.limit); color: Theme.danger }
        }
        Label { visible: text !== ""; text: meter.view.watch; Layout.fillWidth: true }
        Label { visible: meter.under; text: qsTr("Meter: %1").arg(meter.view.reading); Layout.fillWidth: true }
        Label { visible: !meter.under && BathModel.practice; text: qsTr("Practice: enter any number"); Layout.fillWidth: true }
        RowLayout {
            visible: !meter.under
            Layout.fillWidth: true
            spacing: Theme.tight
            ActionButton { iconName: "minus"; text: ""; Accessible.name: qsTr("Meter shows less"); leastWide: Theme.bathTarget; leastHigh: Theme.bathTarget; side: 0; onClicked: meter.change(-meter.step) }
            ActionButton {
                text: meter.pending < 0 && !meter.view.hasReading ? qsTr("Enter meter reading") : meter.roomy ? qsTr("Meter: %1").arg(Appearance.phrases.milliamps(meter.value)) : Appearance.phrases.milliamps(meter.value).replace("\u00a0", " ") // may break into two lines
                Accessible.name: meter.pending < 0 && !meter.view.hasReading ? qsTr("Enter the meter reading") : qsTr("Enter the meter reading, now %1").arg(meter.pending < 0 ? meter.view.reading : Appearance.phrases.milliamps(meter.value))
                textSize: meter.pending < 0 && !meter.view.hasReading ? Theme.narrow : Theme.title
                leastHigh: Theme.bathTarget
                side: 0
                Layout.fillWidth: true
                onClicked: pad.open()
            }
            ActionButton { iconName: "plus"; text: ""; Accessible.name: qsTr("Meter shows more"); leastWide: Theme.bathTarget; leastHigh: Theme.bathTarget; side: 0; onClicked: meter.change(meter.step) }
        }
    }
    Sheet {
        id: pad
        title: qsTr("Meter reading, mA")
        property string typed: ""
        readonly property real mA: Appearance.phrases.numberIn(typed)
        onAboutToShow: typed = ""
        readonly property bool tooHigh: mA > meter.view.limitMa
        function add(key: string) { typed = (typed + key).slice(0, 5) }
        onOpened: typing.forceActiveFocus()
        // A keyboard types as well.
        Item {
            id: typing
            Keys.onPressed: event => {
                event.accepted = true
                if (event.key === Qt.Key_Backspace)
                    pad.typed = pad.typed.slice(0, -1)
                else if ((event.key === Qt.Key_Return || event.key === Qt.Key_Enter) && !isNaN(pad.mA)) {
                    const mA = pad.mA
                    pad.close()
                    meter.enter(mA)
                } else if (event.text !== "" && "0123456789.,".includes(event.text))
                    pad.add(event.text === "." || event.text === "," ? Appearance.phrases.decimalPoint() : event.text)
                else
                    event.accepted = false
            }
        }
        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.small
            Label { role: Label.Display; text: pad.typed === "" ? "–" : pad.typed; color: pad.tooHigh ? Theme.danger : Theme.ink; horizontalAlignment: Text.AlignHCenter; Layout.fillWidth: true }
            Label { role: Label.Strong; text: (pad.tooHigh ? qsTr("Above the limit of %1") : qsTr("Limit %1")).arg(meter.view.limit); color: Theme.danger; Layout.maximumWidth: parent.width / 2 }
        }
        GridLayout {
            columns: 3
            columnSpacing: Theme.small
            rowSpacing: Theme.small
            Layout.fillWidth: true
            LayoutMirroring.enabled: false
            LayoutMirroring.childrenInherit: true
            Repeater {
                model: ["1", "2", "3", "4", "5", "6", "7", "8", "9", Appearance.phrases.decimalPoint(), "0", ""]
                ActionButton {
                    required property string modelData
                    text: modelData
                    iconName: modelData === "" ? "undo" : ""
                    leastHigh: Theme.padKey
                    Accessible.name: modelData === "" ? qsTr("Delete") : modelData
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    onClicked: { if (modelData === "") pad.typed = pad.typed.slice(0, -1); else pad.add(modelData) }
                }
            }
        }
        // Neither the answer nor the way out scrolls away.
        dock: RowLayout {
            spacing: Theme.small
            Layout.fillWidth: true
            ActionButton {
                kind: ButtonFace.Now
                leastHigh: Theme.bathTarget
                text: qsTr("Enter")
                side: Theme.tight
                Layout.fillWidth: true
                Layout.preferredWidth: Theme.vast
                enabled: !isNaN(pad.mA)
                onClicked: { const mA = pad.mA; pad.close(); meter.enter(mA) }
            }
            ActionButton { kind: ButtonFace.Danger; leastHigh: Theme.bathTarget; side: Theme.tight; text: qsTr("Stop"); Layout.fillWidth: true; Layout.preferredWidth: Theme.vast; onClicked: { pad.close(); BathModel.stopUnlessSlip() } }
        }
    }
}
