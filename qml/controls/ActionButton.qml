import QtQuick
import Firstdew

// A labelled button. kind: "now" (the one thing to do), "main", "plain", "danger", "alarm" (danger on its own colour), "quiet".
Press {
    id: control
    property string kind: "plain"
    fill: !enabled ? Theme.sunken : kind === "now" ? Theme.now : kind === "main" ? Theme.main : kind === "danger" ? Theme.danger : kind === "alarm" ? Theme.dangerInk
        : kind === "quiet" ? Theme.clear : Theme.card
    fillDown: kind === "now" ? Theme.nowPressed : kind === "main" || kind === "danger" || kind === "alarm" ? Qt.darker(fill, 1.15) : Theme.cardPressed
    ink: !enabled ? Theme.inkSoft : kind === "now" ? Theme.nowInk : kind === "main" ? Theme.mainInk
       : kind === "danger" ? Theme.dangerInk : kind === "alarm" ? Theme.danger : kind === "quiet" ? Theme.main : Theme.ink
    edge: Theme.edge
    edgeWidth: kind === "plain" ? Theme.hair : 0
    radius: Theme.radius
    focusColor: Theme.main
    focusLine: Theme.focusLine
    focusOut: Theme.focusLine
    family: Theme.family
    textSize: Theme.body
    between: Theme.small
    side: kind === "quiet" ? Theme.gap : Theme.margin
    above: Theme.small
    pictureWide: Theme.icon
    pictureHigh: Theme.icon
    leastHigh: Theme.target
    leastWide: Theme.target
    Accessible.role: Accessible.Button
    Accessible.name: text
    // Qt 6.4 has no other way to tell a screen reader that nothing happens here yet.
    Accessible.focusable: enabled
    Accessible.description: enabled ? "" : qsTr("Not possible yet")
    Accessible.onPressAction: if (enabled) clicked()
}
