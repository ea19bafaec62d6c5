import QtQuick
import QtQuick.Layouts
import Firstdew

// The ways out of a running session, always within one touch: side by side as far as their longest word allows, Stop on a line
// of its own where that does not do, or where there is room for letters that are read from two metres.
ColumnLayout {
    id: exits
    property int open: Exits.StopOnly
    property bool alarm: false
    property string out
    property bool far: false // there is that room
    readonly property bool flowing: open === Exits.All
    readonly property string stop: open === Exits.TapAnywhere ? qsTr("Stop: a tap anywhere") : qsTr("Stop")
    readonly property var words: (flowing ? [qsTr("It is unpleasant"), out, stop] : [stop]).join(" ").split(" ")
    readonly property real third: (far ? (width - Theme.small) / 2 : (width - 2 * Theme.small) / 3) - 2 * Theme.tight
    function fits(metrics) { return words.every(word => metrics.advanceWidth(word) <= third) }
    readonly property bool asUsual: fits(usual)
    readonly property bool smaller: !asUsual && !Theme.largeText && fits(small)
    readonly property real textSize: smaller ? Theme.label : Theme.shared
    readonly property bool beside: flowing && !far && (asUsual || smaller)
    // As large as its room allows.
    readonly property real stopSize: far ? Math.min(Theme.numerals, Math.floor(Theme.numerals * (width - 4 * Theme.tight) / farthest.advanceWidth(qsTr("Stop"))))
                                   : !beside || large.advanceWidth(stop) <= third ? Theme.title : textSize
    spacing: Theme.small
    FontMetrics { id: usual; font.family: Theme.family; font.pixelSize: Theme.shared; font.weight: Theme.strong }
    FontMetrics { id: small; font.family: Theme.family; font.pixelSize: Theme.label; font.weight: Theme.strong }
    FontMetrics { id: large; font.family: Theme.family; font.pixelSize: Theme.title; font.weight: Theme.strong }
    FontMetrics { id: farthest; font.family: Theme.family; font.pixelSize: Theme.numerals; font.weight: Theme.strong }
    component Exit: ActionButton { leastHigh: Theme.bathTarget; side: Theme.tight; textSize: exits.textSize; Layout.fillWidth: true; Layout.preferredWidth: 1 }
    component Stop: Exit { kind: exits.alarm ? ButtonFace.Alarm : ButtonFace.Danger; textSize: exits.stopSize; text: exits.far ? qsTr("Stop") : exits.stop; Accessible.name: exits.stop; onClicked: BathModel.stopUnlessSlip() }
    RowLayout {
        visible: exits.flowing
        Layout.fillWidth: true
        spacing: Theme.small
        Exit { text: qsTr("It is unpleasant"); onClicked: BathModel.discomfort() }
        Exit { text: exits.out; onClicked: BathModel.outOfWater() }
        Stop { visible: exits.beside }
    }
    Label { visible: exits.far && exits.open === Exits.TapAnywhere; text: qsTr("A tap anywhere stops."); color: exits.alarm ? Theme.alarmInk : Theme.ink; horizontalAlignment: Text.AlignHCenter; Layout.fillWidth: true; Accessible.ignored: true }
    // Qt 6.4: measured at no width first, a button may keep the height that it has then.
    Stop { visible: !exits.beside; Layout.maximumHeight: exits.far ? Math.max(Theme.bathTarget, exits.stopSize * 1.25) : Infinity }
}
