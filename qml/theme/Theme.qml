pragma Singleton
import QtQuick

// Every colour, size and duration, by its role. Pages name roles, never values.
QtObject {
    // Set by Main from what the person chose.
    property bool dark: false
    property real textScale: 1
    property bool motion: true

    // Colours: slate-teal ink on warm paper; marigold for "now"; crimson for danger.
    readonly property color paper: dark ? "#0f1d21" : "#f6f1e6"
    readonly property color card: dark ? "#182b31" : "#fffcf5"
    readonly property color cardPressed: dark ? "#22393f" : "#efe8d8"
    readonly property color sunken: dark ? "#13252a" : "#ece5d5"
    readonly property color line: dark ? "#35505a" : "#d5cbb6"
    readonly property color edge: dark ? "#7d979e" : "#6f8187"
    readonly property color ink: dark ? "#edf2ec" : "#15323a"
    readonly property color inkSoft: dark ? "#adc0c4" : "#48606a"
    readonly property color inkFaint: dark ? "#7d979e" : "#6f8187"
    readonly property color main: dark ? "#7cc0c6" : "#1f5a66"
    readonly property color mainInk: dark ? "#08191d" : "#ffffff"
    readonly property color now: dark ? "#f2b544" : "#f0a82a"
    readonly property color nowPressed: dark ? "#d99a22" : "#d98f10"
    readonly property color nowInk: dark ? "#1c1300" : "#1d1a10"
    readonly property color nowText: dark ? "#f2b544" : "#7c4a00"
    readonly property color nowWash: dark ? "#33301f" : "#fbe9c4"
    readonly property color danger: dark ? "#f7a3a3" : "#a3182c"
    readonly property color dangerInk: dark ? "#33060b" : "#ffffff"
    readonly property color dangerWash: dark ? "#3b2024" : "#f8dfdc"
    readonly property color good: dark ? "#8fcf9f" : "#2a6a43"
    readonly property color veil: dark ? "#b0050a0c" : "#8015323a"
    readonly property color clear: "#00000000"

    // Sizes, in device-independent pixels.
    readonly property int target: 48
    readonly property int bathTarget: 96
    readonly property int hair: 1
    readonly property int focusLine: 3
    readonly property int tight: 4
    readonly property int small: 8
    readonly property int gap: 12
    readonly property int margin: 16
    readonly property int wide: 24
    readonly property int vast: 40
    readonly property int radius: 14
    readonly property int radiusSmall: 8
    readonly property int icon: 24
    readonly property int iconSmall: 18
    readonly property int iconLarge: 40
    readonly property int measure: 620 // widest column that reads well
    readonly property int barHeight: 64
    readonly property int barWidth: 88 // where the places stand beside the page
    readonly property int lowHeight: 480
    readonly property int tall: 700 // from here on a running session has room for large words
    readonly property int ring: 340 // widest clock of a running session
    readonly property int padKey: 64
    readonly property int curve: 160 // a chart without its labels

    // Type.
    readonly property var families: ["Inter", "Noto Sans Arabic"]
    readonly property string family: "Inter"
    readonly property real tiny: 12 * textScale
    readonly property real body: 16 * textScale
    readonly property real label: 14 * textScale
    readonly property real lead: 18 * textScale
    readonly property real shared: 16 * Math.min(textScale, 1.25) // words beside a current that share a line
    readonly property real narrow: 16 * Math.min(textScale, 1.1) // the word between less and more
    // Headings are large already and grow less, so that their words fit a small screen.
    readonly property real title: 22 * Math.min(textScale, 1.5)
    readonly property real display: 29 * Math.min(textScale, 1.2)
    readonly property bool largeText: textScale > 1.4
    readonly property real numerals: 72 * Math.min(textScale, 1.35)
    readonly property int strong: Font.DemiBold

    // Durations, ms; nothing moves where motion is off.
    readonly property int quick: motion ? 120 : 0
    readonly property int calm: motion ? 240 : 0
    readonly property int undoShown: 6000
    readonly property int settle: 1200 // a meter reading counts when it was left alone this long
}
