import QtQuick
import Firstdew

// Running text; `role` picks its size and weight.
Text {
    property string role: "body"
    font.family: Theme.family
    font.pixelSize: role === "display" ? Theme.display : role === "title" ? Theme.title : role === "lead" ? Theme.lead
                  : role === "label" ? Theme.label : role === "tiny" ? Theme.tiny : Theme.body
    font.weight: role === "display" || role === "title" || role === "strong" ? Theme.strong : Font.Normal
    color: role === "label" || role === "tiny" ? Theme.inkSoft : Theme.ink
    wrapMode: Text.Wrap
    lineHeight: 1.15
    textFormat: Text.PlainText
    horizontalAlignment: Text.AlignLeft
    Accessible.role: Accessible.StaticText
    Accessible.name: text
    Accessible.ignored: text === ""
}
