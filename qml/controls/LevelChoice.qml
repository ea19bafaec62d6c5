import QtQuick
import QtQuick.Layouts
import Firstdew

// The four levels of the diary, as ripples and words.
// Not a layout: in Qt 6.4 one whose columns follow its width keeps the old ones when it is widened within another's round.
Grid {
    id: choice
    property int site: 0
    property int level: -1 // none
    property bool dense: false
    signal chosen(int level)
    // Four in a line where their words fit, if need be somewhat smaller.
    readonly property real quarter: (width - 3 * Theme.small) / 4 - Theme.tight
    readonly property real widest: Appearance.phrases.widestLevel(Theme.label, Theme.strong)
    readonly property bool smaller: dense && widest > quarter && Appearance.phrases.widestLevel(Theme.tiny, Theme.strong) <= quarter
    columns: smaller || widest <= quarter ? 4 : width / 2 - Theme.small >= widest + 2 * Theme.tight ? 2 : 1
    readonly property real part: Math.max(1, Math.floor((width - Theme.small * (columns - 1)) / columns))
    columnSpacing: Theme.small
    rowSpacing: Theme.small
    Layout.fillWidth: true
    Repeater {
        model: Appearance.phrases.levels
        LevelButton {
            required property int modelData
            required property int index
            checked: choice.level === modelData
            text: Appearance.phrases.level(modelData)
            ripples: index
            pictureHigh: choice.dense ? Theme.icon : Theme.iconLarge * 0.8
            textSize: choice.smaller ? Theme.tiny : Theme.label
            side: Theme.tight / 2
            leastHigh: choice.dense ? Theme.target : Theme.bathTarget
            // What is left of a whole pixel goes to the last in a line.
            width: choice.part + (index % choice.columns === choice.columns - 1 ? choice.width - choice.part * choice.columns - Theme.small * (choice.columns - 1) : 0)
            Accessible.name: Appearance.phrases.siteIs(choice.site, modelData)
            onClicked: choice.chosen(modelData)
        }
    }
}
