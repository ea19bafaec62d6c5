import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    readonly property runningPage running: BathModel.running
    title: qsTr("Welcome back")
    function joined(parts: var, by: string): string { return parts.filter(part => part).join(by) }
    Label { Layout.fillWidth: true; role: Label.Lead; text: qsTr("The session was interrupted: %1. The current may still be flowing.").arg(page.joined([Appearance.phrases.within(BathModel.siteName), Appearance.phrases.within(page.running.phase), Appearance.phrases.within(page.running.step)], ", ")) }
    Heading { text: qsTr("What did the machine do meanwhile?") }
    ActionButton { leastHigh: Theme.bathTarget; text: page.running.keptRunning; Layout.fillHeight: false; Layout.fillWidth: true; onClicked: BathModel.meanwhile(Meanwhile.KeptRunning) }
    ActionButton { leastHigh: Theme.bathTarget; text: qsTr("I switched it off"); Layout.fillWidth: true; onClicked: BathModel.meanwhile(Meanwhile.SwitchedOff) }
    ActionButton { leastHigh: Theme.bathTarget; text: page.running.pads ? page.running.out : qsTr("I took hands or feet out"); Layout.fillWidth: true; onClicked: BathModel.meanwhile(Meanwhile.LimbsOut) }
    ActionButton { leastHigh: Theme.bathTarget; text: qsTr("I do not know"); Layout.fillWidth: true; onClicked: BathModel.meanwhile(Meanwhile.DoNotKnow) }
    Label { Layout.fillWidth: true; text: qsTr("If you are unsure: machine off now. Switched off less than ten minutes ago, the session goes on; otherwise it starts again or ends, and what you did is kept.") }
    dock: ActionButton { leastHigh: Theme.bathTarget; kind: ButtonFace.Danger; textSize: Theme.title; text: qsTr("Stop"); Layout.fillWidth: true; onClicked: BathModel.stop() }
}
