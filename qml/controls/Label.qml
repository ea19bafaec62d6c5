import QtQuick
import Firstdew

// Running text; `role` picks its size and weight.
Text {
    enum Role { Body, Display, Title, Lead, Strong, Small, Tiny }
    property int role: Label.Body
    font.family: Theme.family
    property real room: 0 // where it is known beforehand, no word of a heading breaks in two that fits when it is smaller
    font.pixelSize: role === Label.Display ? Theme.fitted(text, Theme.display, Theme.strong, room) : role === Label.Title ? Theme.fitted(text, Theme.title, Theme.strong, room)
                  : role === Label.Lead ? Theme.fitted(text, Theme.lead, Theme.strong, room) : role === Label.Small ? Theme.label : role === Label.Tiny ? Theme.tiny : Theme.body
    font.weight: role === Label.Display || role === Label.Title || role === Label.Strong ? Theme.strong : Font.Normal
    color: role === Label.Small || role === Label.Tiny ? Theme.inkSoft : Theme.ink
    wrapMode: Text.Wrap
    lineHeight: 1.15
    textFormat: Text.PlainText
    horizontalAlignment: Text.AlignLeft
    Accessible.role: Accessible.StaticText
    Accessible.name: text
    Accessible.ignored: text === ""
}
