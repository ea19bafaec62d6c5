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
    readonly property color ink: alarm ? Theme.dangerInk : Theme.ink
    function joined(parts: var, by: string): string { return parts.filter(part => part).join(by) }
    // With the hands under, any key stops as well as a tap anywhere.
    onUnderChanged: if (under) forceActiveFocus()
    Component.onCompleted: if (under) forceActiveFocus()
    Keys.enabled: under
    Keys.onPressed: event => { event.accepted = true; BathModel.stop() }
    Accessible.role: Accessible.Pane
    Accessible.name: r.step
    Rectangle { anchors.fill: parent; color: page.alarm ? Theme.danger : Theme.paper }

    GridLayout {
        anchors { fill: parent; margins: Theme.small }
        columns: page.wide ? 2 : 1
        columnSpacing: Theme.margin
        rowSpacing: Theme.small

        Flickable {
            id: flick
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: Theme.vast
            contentHeight: Math.max(height, column.implicitHeight)
            boundsBehavior: Flickable.StopAtBounds
            clip: true
            ColumnLayout {
                id: column
                width: flick.width
                height: flick.contentHeight
                spacing: Theme.small
                GridLayout {
                    Layout.fillWidth: true
                    columns: Theme.largeText ? 1 : 2
                    rowSpacing: 0
                    Label { text: page.joined([page.person, BathModel.siteName, page.r.waveform, page.r.phase, page.r.side], " · "); font.pixelSize: Theme.shared; color: page.ink; Layout.fillWidth: true; Layout.alignment: Qt.AlignTop }
                    Label { text: page.r.all; font.pixelSize: Theme.shared; color: page.ink; Layout.alignment: Qt.AlignTop }
                }
                Label {
                    role: page.height > Theme.tall ? Label.Display : Label.Title
                    Layout.fillWidth: true
                    text: page.alarm ? qsTr("Too high. Turn it down on the machine now.") : page.r.sentence
                    color: page.ink
                    Accessible.role: Accessible.Heading
                }
                Label { visible: text !== ""; text: page.r.note; color: page.ink; Layout.fillWidth: true }
                Repeater {
                    model: page.r.list
                    Label { required property string modelData; text: "– " + modelData; color: page.ink; Layout.fillWidth: true }
                }
                Item {
                    id: clock
                    visible: page.r.timed
                    readonly property real side: Math.min(width, height, Theme.ring)
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    Layout.minimumHeight: digits.implicitHeight
                    Ring {
                        visible: clock.side > digits.implicitWidth + 3 * stroke
                        anchors.centerIn: parent
                        width: clock.side
                        height: clock.side
                        share: 1 - page.r.progress
                        color: page.alarm ? Theme.dangerInk : Theme.now
                        track: page.alarm ? Theme.danger : Theme.sunken
                    }
                    Text {
                        id: digits
                        anchors.centerIn: parent
                        text: page.alarm ? page.r.meter.reading : page.r.remaining
                        color: page.ink
                        font.family: Theme.family
                        font.pixelSize: Theme.numerals
                        font.weight: Theme.strong
                        Accessible.role: Accessible.StaticText
                        Accessible.name: page.alarm ? page.r.meter.reading : page.r.remainingSpoken
                    }
                }
                // While it is raised, the aim is what is looked for.
                Item {
                    visible: !page.r.timed
                    Layout.fillHeight: true
                    Layout.fillWidth: true
                    Column {
                        visible: page.r.kind === StepKind.Raise && parent.height > implicitHeight
                        anchors.centerIn: parent
                        Label { text: qsTr("Aim"); font.pixelSize: Theme.title; color: page.ink; anchors.horizontalCenter: parent.horizontalCenter }
                        Text { text: page.r.meter.target; color: page.ink; font.family: Theme.family; font.pixelSize: Theme.numerals; font.weight: Theme.strong; anchors.horizontalCenter: parent.horizontalCenter; Accessible.ignored: true }
                    }
                }
                Label { visible: page.alarm; role: Label.Strong; text: qsTr("Down to %1 or less. Then enter what the meter shows.").arg(page.r.meter.target); color: page.ink; horizontalAlignment: Text.AlignHCenter; Layout.fillWidth: true }
                Label { visible: page.r.next !== "" && !page.alarm; text: qsTr("Next: %1").arg(page.r.next); color: page.ink; horizontalAlignment: Text.AlignHCenter; Layout.fillWidth: true }
                BathMeter { visible: page.r.canRead; view: page.r.meter; under: page.under; roomy: page.height > Theme.tall; Layout.fillWidth: true }
                Label { visible: page.r.silent; role: Label.Strong; text: qsTr("You cannot hear Firstdew right now. Watch the screen, or stop."); color: page.ink; Accessible.role: Accessible.AlertMessage; Layout.fillWidth: true }
                Label { visible: page.r.unsaved; role: Label.Strong; text: qsTr("The last steps could not be saved yet. The session goes on; it is tried again."); color: page.ink; Layout.fillWidth: true }
                Label { visible: BathModel.refusal !== ""; role: Label.Strong; text: BathModel.refusal; color: page.alarm ? Theme.dangerInk : Theme.danger; Layout.fillWidth: true }
            }
        }

        ColumnLayout {
            Layout.fillWidth: true
            Layout.fillHeight: page.wide
            Layout.preferredWidth: Theme.vast
            spacing: Theme.small
            ActionButton {
                visible: page.r.main !== MainButton.None
                kind: ButtonFace.Now
                textSize: Theme.title
                leastHigh: Theme.bathTarget
                text: page.r.mainText
                Layout.fillWidth: true
                onClicked: BathModel.primary()
            }
            BathExits { open: page.r.exits; alarm: page.alarm; out: page.r.out; Layout.fillWidth: true }
        }
    }
    // With the hands under, a tap anywhere stops.
    MouseArea { anchors.fill: parent; enabled: page.under; visible: page.under; onClicked: BathModel.stop() }
}
