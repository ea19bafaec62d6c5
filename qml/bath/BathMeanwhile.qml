import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    readonly property var running: BathModel.running
    title: qsTr("Welcome back")
    Label { Layout.fillWidth: true; role: Label.Lead; text: qsTr("The session was interrupted: %1. The current may still be flowing.").arg([BathModel.siteName, page.running.phase, page.running.step].filter(s => s).join(", ")) }
    Heading { text: qsTr("What did the machine do meanwhile?") }
    ActionButton { leastHigh: Theme.bathTarget; text: BathModel.running.keptRunning || ""; Layout.fillWidth: true; onClicked: BathModel.meanwhile("kept-running") }
    ActionButton { leastHigh: Theme.bathTarget; text: qsTr("I switched it off"); Layout.fillWidth: true; onClicked: BathModel.meanwhile("switched-off") }
    ActionButton { leastHigh: Theme.bathTarget; text: BathModel.running.pads === true ? BathModel.running.out : qsTr("I took hands or feet out"); Layout.fillWidth: true; onClicked: BathModel.meanwhile("limbs-out") }
    ActionButton { leastHigh: Theme.bathTarget; text: qsTr("I do not know"); Layout.fillWidth: true; onClicked: BathModel.meanwhile("do-not-know") }
    Label { Layout.fillWidth: true; text: qsTr("If you are unsure: machine off now. Switched off less than ten minutes ago, the session goes on; otherwise it starts again or ends, and what you did is kept.") }
    ActionButton { leastHigh: Theme.bathTarget; kind: ButtonFace.Danger; text: qsTr("Stop"); Layout.fillWidth: true; onClicked: BathModel.stop() }
}
