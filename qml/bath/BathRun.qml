import QtQuick
import QtQuick.Layouts
import Firstdew

// The running session: one thing to do, readable from two metres, a way out always within one touch.
Item {
    id: page
    readonly property runningPage r: BathModel.running
    readonly property string person: Store.several ? Store.personName : ""
    readonly property bool alarm: r.alarm
    readonly property bool under: r.exits === Exits.TapAnywhere
    readonly property bool wide: width > height
    readonly property color ink: alarm ? Theme.alarmInk : Theme.ink
    readonly property bool tall: height > Theme.tall || (wide && width > Theme.tall && height >= Theme.lowSession)
    // Both are read from two metres: the digits by their size, the word by as much of it as fits.
    readonly property string digits: alarm ? r.meter.reading : r.timed ? r.remaining : r.kind === StepKind.Raise && !BathModel.practice ? r.meter.target : ""
    function dashed(lines: var): string { return lines.map(line => "– " + line).join("\n") }
    function joined(parts: var, by: string): string { return parts.filter(part => part).join(by) }
    // With the hands under, any key stops as well as a tap anywhere.
    onUnderChanged: if (under) forceActiveFocus()
    Component.onCompleted: if (under) forceActiveFocus()
    Keys.enabled: under
    Keys.onPressed: event => { event.accepted = true; BathModel.stopUnlessSlip() }
    Accessible.role: Accessible.Pane
    Accessible.name: r.step
    ToEdges { color: page.alarm ? Theme.alarm : Theme.paper }

    // Placed by hand: in Qt 6.4 a layout within another's falls over lines that come and go.
    Item {
        id: whole
        readonly property real side: page.wide ? (width - Theme.margin) / 2 : width
        readonly property real otherSide: page.wide ? width - side : 0
        anchors { fill: parent; margins: Theme.small }

        Scroller {
            id: flick
            x: Appearance.rightToLeft ? whole.otherSide : 0
            width: whole.side
            height: whole.height - (page.wide ? 0 : buttons.height + Theme.small)
            contentHeight: Math.max(height, column.implicitHeight)
            ColumnLayout {
                id: column
                width: flick.width
                height: flick.contentHeight
                spacing: Theme.small
                Label { text: page.joined([page.person, BathModel.siteName, page.r.waveform, page.r.phase, page.r.side, page.r.all], "\u00a0· "); font.pixelSize: Theme.shared; color: page.ink; Layout.fillWidth: true }
                Label {
                    visible: page.alarm || BathModel.twin === "" // what was just said stands in its place
                    role: page.tall ? Label.Title : Label.Strong
                    Layout.fillWidth: true
                    text: page.alarm ? qsTr("Too high. Turn it down on the machine now.") : page.r.sentence
                    color: page.ink
                    Accessible.role: Accessible.Heading
                }
                Label { visible: text !== "" && page.tall; text: BathModel.practiceLength; color: page.ink; Layout.fillWidth: true }
                Label { visible: text !== ""; text: page.r.note; color: page.ink; Layout.fillWidth: true }
                // One text: in Qt 6.4 a layout within another's falls over lines that come and go.
                Label { visible: text !== ""; text: page.dashed(page.r.list); color: page.ink; Layout.fillWidth: true }
                Item {
                    id: clock
                    readonly property real side: Math.min(width, height, Theme.ring)
                    // As large as the height allows that everything else on the page leaves.
                    readonly property int lines: digits.visible ? 2 : 1
                    readonly property real far: Math.max(Theme.display, Math.min(page.tall ? Theme.numerals : Theme.display * 1.5, Math.floor(height / lines / letters.lineHigh)))
                    visible: page.r.list.length === 0
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    readonly property real words: verb.implicitHeight + (digits.visible ? digits.implicitHeight : 0)
                    Layout.minimumHeight: lines * Theme.display * letters.lineHigh
                    FontMetrics { id: letters; readonly property real lineHigh: lineSpacing / font.pixelSize; font.family: Theme.family; font.pixelSize: Theme.numerals; font.weight: Theme.strong }
                    Ring {
                        id: ring
                        readonly property bool fits: Math.hypot(Math.max(verb.paintedWidth, digits.visible ? digits.implicitWidth : 0), 0.75 * clock.words) < clock.side - 2 * stroke // letters fill that much of their lines
                        visible: page.r.timed && fits
                        anchors.centerIn: parent
                        width: clock.side
                        height: clock.side
                        share: 1 - page.r.progress
                        color: page.alarm ? Theme.alarmInk : Theme.now
                        track: page.alarm ? Theme.alarm : Theme.sunken
                    }
                    // What is left, as a bar where letters that are read from two metres leave no room for the ring.
                    Rectangle {
                        visible: page.r.timed && !ring.fits && !page.alarm && clock.height - clock.words > 4 * height
                        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
                        height: ring.stroke
                        radius: height / 2
                        color: Theme.sunken
                        Rectangle { anchors { left: parent.left; top: parent.top; bottom: parent.bottom } width: parent.width * (1 - page.r.progress); radius: parent.radius; color: Theme.now }
                    }
                    Column {
                        anchors.centerIn: parent
                        width: parent.width
                        Text {
                            id: verb
                            text: page.alarm ? qsTr("Down") : BathModel.verb
                            width: parent.width
                            x: (parent.width - width) / 2
                            color: page.ink
                            font.family: Theme.family
                            font.pixelSize: clock.far
                            minimumPixelSize: Theme.title
                            fontSizeMode: Text.HorizontalFit
                            font.weight: Theme.strong
                            horizontalAlignment: Text.AlignHCenter
                            lineHeight: 0.9
                            Accessible.ignored: true // the heading says it
                        }
                        Drawings {
                            width: parent.width
                            height: Math.min(Theme.drawing * 1.5, clock.height - clock.words)
                            visible: !page.r.timed && !page.alarm && height > Theme.bathTarget
                            subjects: page.r.drawings
                        }
                        Text {
                            id: digits
                            visible: text !== "" && (page.tall || page.alarm || page.r.timed) // the aim stands below as well
                            anchors.horizontalCenter: parent.horizontalCenter
                            text: page.digits
                            color: page.ink
                            font.family: Theme.family
                            font.pixelSize: clock.far
                            font.weight: Theme.strong
                            Accessible.role: Accessible.StaticText
                            Accessible.name: page.alarm ? page.r.meter.reading : page.r.timed ? page.r.remainingSpoken : text
                        }
                    }
                }
                Label { visible: text !== "" && !page.alarm; role: Label.Title; text: BathModel.twin; color: page.ink; horizontalAlignment: Text.AlignHCenter; Layout.fillWidth: true; Accessible.role: Accessible.AlertMessage }
                Label { visible: page.alarm; role: Label.Strong; text: qsTr("Down to %1 or less. Then enter what the meter shows.").arg(page.r.meter.target); color: page.ink; horizontalAlignment: Text.AlignHCenter; Layout.fillWidth: true }
                Label { visible: page.r.next !== "" && !page.alarm && page.r.main === MainButton.None && BathModel.twin === ""; text: qsTr("Next: %1").arg(Appearance.phrases.within(page.r.next)); color: page.ink; horizontalAlignment: Text.AlignHCenter; Layout.fillWidth: true }
                Item { id: below; visible: page.r.canRead && !page.wide; implicitHeight: readings.implicitHeight; Layout.fillWidth: true }
                Label { visible: page.r.silent; role: Label.Strong; text: qsTr("You cannot hear Firstdew right now. Watch the screen, or stop."); color: page.ink; Accessible.role: Accessible.AlertMessage; Layout.fillWidth: true }
                Label { visible: page.r.unsaved; role: Label.Strong; text: qsTr("The last steps could not be saved yet. The session goes on; it is tried again."); color: page.ink; Layout.fillWidth: true }
                Label { visible: BathModel.refusal !== ""; role: Label.Strong; text: BathModel.refusal; color: page.alarm ? Theme.alarmInk : Theme.danger; Layout.fillWidth: true }
            }
        }

        ColumnLayout {
            id: buttons
            x: Appearance.rightToLeft ? 0 : whole.otherSide
            y: whole.height - height
            width: whole.side
            spacing: Theme.small
            Item { id: above; visible: page.r.canRead && page.wide; implicitHeight: readings.implicitHeight; Layout.fillWidth: true }
            ActionButton {
                visible: page.r.main !== MainButton.None
                kind: ButtonFace.Now
                textSize: Theme.title
                leastHigh: Theme.bathTarget
                text: page.r.mainText
                Layout.fillWidth: true
                onClicked: BathModel.primary()
            }
            ActionButton {
                readonly property meterView meter: page.r.meter
                visible: page.r.main === MainButton.None && page.r.canRead && meter.hasReading && !page.under && !page.alarm
                textSize: Theme.title
                leastHigh: Theme.bathTarget
                text: qsTr("Still %1").arg(meter.reading)
                Layout.fillWidth: true
                onClicked: BathModel.reading(meter.lastReading)
            }
            BathExits { far: page.tall && (page.wide || page.height >= Theme.tallest); open: page.r.exits; alarm: page.alarm; outText: page.r.out; Layout.fillWidth: true }
        }
    }
    // Below the digits, or above the buttons of a phone on its side.
    BathMeter { id: readings; parent: page.wide ? above : below; width: parent.width; visible: page.r.canRead; view: page.r.meter; under: page.under; roomy: page.height > Theme.tall }
    // With the hands under, a tap anywhere stops.
    ToEdges {
        color: Theme.clear
        visible: page.under
        MouseArea { anchors.fill: parent; enabled: page.under && BathModel.stopsIn === 0; onClicked: BathModel.stopUnlessSlip() }
    }
    // Nothing moves while a stop can be taken back: what to do now, and the way back away from where Stop lay.
    Item {
        anchors.fill: parent
        visible: BathModel.stopsIn > 0
        ToEdges { color: Theme.alarm; MouseArea { anchors.fill: parent } }
        ColumnLayout {
            anchors { fill: parent; margins: Theme.margin }
            spacing: Theme.margin
            Label { role: Label.Display; text: BathModel.stoppedText; color: Theme.alarmInk; Layout.fillWidth: true; Accessible.role: Accessible.AlertMessage }
            ActionButton { leastHigh: Theme.bathTarget; textSize: Theme.title; text: qsTr("That was a slip: go on (%1)").arg(BathModel.stopsIn); Layout.fillWidth: true; onClicked: BathModel.takeBackStop() }
            Item { Layout.fillHeight: true }
        }
    }
}
