import QtQuick
import Firstdew

// The ways out of a running session, always within one touch: side by side as far as their longest word allows, Stop on a line
// of its own where that does not do, or where there is room for letters that are read from two metres.
// Placed by hand: in Qt 6.4 a layout within another's falls over lines that come and go.
Item {
    id: exits
    property int open: Exits.StopOnly
    property bool alarm: false
    property string outText
    property bool far: false // there is that room
    readonly property bool flowing: open === Exits.All
    readonly property string stop: open === Exits.TapAnywhere ? qsTr("Stop: a tap anywhere") : qsTr("Stop")
    readonly property var texts: flowing ? [qsTr("It is unpleasant"), outText, stop] : [stop]
    readonly property var words: texts.join(" ").split(/[ \u00ad]/)
    readonly property real third: (far ? (width - Theme.small) / 2 : (width - 2 * Theme.small) / 3) - 2 * Theme.tight
    function fits(metrics) { return words.every(word => metrics.advanceWidth(word) <= third) }
    readonly property bool asUsual: fits(usual)
    readonly property bool smaller: !asUsual && !Theme.largeText && fits(small)
    readonly property real textSize: smaller ? Theme.label : Theme.shared
    readonly property bool beside: flowing && !far && (asUsual || smaller)
    // As large as its room allows.
    readonly property real stopSize: far ? Math.min(Theme.numerals, Math.floor(Theme.numerals * (width - 4 * Theme.tight) / farthest.advanceWidth(qsTr("Stop"))))
                                   : !beside || large.advanceWidth(stop) <= third ? Theme.title : textSize
    readonly property real gap: Theme.small
    readonly property int across: beside ? 3 : 2
    readonly property real cell: (width - (across - 1) * gap) / across
    readonly property real firstHigh: !flowing ? 0 : Math.max(unpleasant.implicitHeight, out.implicitHeight, beside ? last.implicitHeight : 0)
    readonly property real hintHigh: hint.visible ? hint.implicitHeight + gap : 0
    // Measured at no width first, a button may keep the height that it has then.
    readonly property real lastHigh: far ? Math.max(Theme.bathTarget, stopSize * 1.25) : last.implicitHeight
    implicitHeight: beside ? firstHigh : last.y + lastHigh
    function placeOf(k: int): real { return Appearance.rightToLeft ? width - k * (cell + gap) - cell : k * (cell + gap) }
    FontMetrics { id: usual; font.family: Theme.family; font.pixelSize: Theme.shared; font.weight: Theme.strong }
    FontMetrics { id: small; font.family: Theme.family; font.pixelSize: Theme.label; font.weight: Theme.strong }
    FontMetrics { id: large; font.family: Theme.family; font.pixelSize: Theme.title; font.weight: Theme.strong }
    FontMetrics { id: farthest; font.family: Theme.family; font.pixelSize: Theme.numerals; font.weight: Theme.strong }
    component Exit: ActionButton { y: 0; width: exits.cell; height: exits.firstHigh; visible: exits.flowing; leastHigh: Theme.bathTarget; side: Theme.tight; textSize: exits.textSize }
    Exit { id: unpleasant; x: exits.placeOf(0); text: qsTr("It is unpleasant"); onClicked: BathModel.discomfort() }
    Exit { id: out; x: exits.placeOf(1); text: exits.outText; onClicked: BathModel.outOfWater() }
    Label { id: hint; visible: exits.far && exits.open === Exits.TapAnywhere; width: exits.width; text: qsTr("A tap anywhere stops."); color: exits.alarm ? Theme.alarmInk : Theme.ink; horizontalAlignment: Text.AlignHCenter; Accessible.ignored: true }
    ActionButton {
        id: last
        x: exits.beside ? exits.placeOf(2) : 0
        y: exits.beside ? 0 : exits.flowing ? exits.firstHigh + exits.gap : exits.hintHigh
        width: exits.beside ? exits.cell : exits.width
        height: exits.beside ? exits.firstHigh : exits.lastHigh
        leastHigh: Theme.bathTarget
        side: Theme.tight
        textSize: exits.stopSize
        kind: exits.alarm ? ButtonFace.Alarm : ButtonFace.Danger
        text: exits.far ? qsTr("Stop") : exits.stop
        Accessible.name: exits.stop
        onClicked: BathModel.stopUnlessSlip()
    }
}
