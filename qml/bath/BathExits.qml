import QtQuick
import QtQuick.Layouts
import Firstdew

// The ways out of a running session, always within one touch; as many side by side as their longest word allows.
GridLayout {
    id: exits
    property int open: Exits.StopOnly
    property bool alarm: false
    property string out
    readonly property bool flowing: open === Exits.All
    readonly property string stop: open === Exits.TapAnywhere ? qsTr("Stop: a tap anywhere") : qsTr("Stop")
    readonly property var texts: flowing ? [qsTr("It is unpleasant"), out, stop] : [stop]
    readonly property var words: texts.join(" ").split(" ")
    readonly property real third: (width - 2 * columnSpacing) / 3 - 2 * Theme.tight
    function fits(metrics) { return words.every(word => metrics.advanceWidth(word) <= third) }
    readonly property bool asUsual: fits(usual)
    readonly property bool smaller: !asUsual && !Theme.largeText && fits(small)
    readonly property real textSize: smaller ? Theme.label : Theme.shared
    // Stop is read from further away, as far as its room allows.
    readonly property real stopSize: columns < 3 || large.advanceWidth(stop) <= third ? Theme.title : textSize
    columns: !flowing ? 1 : asUsual || smaller ? 3 : 2
    columnSpacing: Theme.small
    rowSpacing: Theme.small
    FontMetrics { id: usual; font.family: Theme.family; font.pixelSize: Theme.shared; font.weight: Theme.strong }
    FontMetrics { id: small; font.family: Theme.family; font.pixelSize: Theme.label; font.weight: Theme.strong }
    FontMetrics { id: large; font.family: Theme.family; font.pixelSize: Theme.title; font.weight: Theme.strong }
    ActionButton { visible: exits.flowing; leastHigh: Theme.bathTarget; side: Theme.tight; textSize: exits.textSize; text: qsTr("It is unpleasant"); Layout.fillWidth: true; Layout.preferredWidth: 1; onClicked: BathModel.discomfort() }
    ActionButton { visible: exits.flowing; leastHigh: Theme.bathTarget; side: Theme.tight; textSize: exits.textSize; text: exits.out; Layout.fillWidth: true; Layout.preferredWidth: 1; onClicked: BathModel.outOfWater() }
    ActionButton { leastHigh: Theme.bathTarget; kind: exits.alarm ? ButtonFace.Alarm : ButtonFace.Danger; side: Theme.tight; textSize: exits.stopSize; text: exits.stop; Layout.columnSpan: exits.columns === 2 ? 2 : 1; Layout.fillWidth: true; Layout.preferredWidth: 1; onClicked: BathModel.stopUnlessSlip() }
}
