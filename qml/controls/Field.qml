import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Firstdew

// A line of text to fill in, with its name above and what is wrong below.
// Not a layout: in Qt 6.4 one within another's card may keep the height that its words had at no width.
Column {
    id: field
    property string label: ""
    property string hint: ""
    property string problem: ""
    property alias text: input.text
    property alias echoMode: input.echoMode
    property alias inputMethodHints: input.inputMethodHints
    signal edited(string text)
    signal accepted()
    function takeKeyboard() { input.forceActiveFocus(Qt.OtherFocusReason) }
    onProblemChanged: if (problem !== "" && input.activeFocus) Announce.refused(problem)
    Layout.fillWidth: true
    Layout.fillHeight: false
    spacing: Theme.tight
    Label { role: Label.Small; text: field.label; width: field.width; Accessible.ignored: field.echoMode === TextInput.Normal }
    T.TextField {
        id: input
        width: field.width
        implicitHeight: Math.max(Theme.target, contentHeight + 2 * Theme.gap)
        leftPadding: Theme.gap
        rightPadding: Theme.gap
        horizontalAlignment: TextInput.AlignLeft // below its name, on the right where one reads from there
        verticalAlignment: Text.AlignVCenter
        font.family: Theme.family
        font.pixelSize: Theme.body
        color: Theme.ink
        selectionColor: Theme.now
        selectedTextColor: Theme.nowInk
        Accessible.role: Accessible.EditableText
        Accessible.name: field.label
        // A screen reader is told this as the description; nothing draws it. Qt 6.4 tells no name of a field whose letters are
        // hidden, so that there the description begins with it.
        placeholderText: together(hidden ? field.label : "", field.problem !== "" ? field.problem : field.hint)
        function together(first: string, second: string): string { return first !== "" && second !== "" ? first + ". " + second : first + second }
        readonly property bool hidden: echoMode !== TextInput.Normal
        onTextEdited: field.edited(text)
        onAccepted: field.accepted()
        background: Rectangle {
            radius: Theme.radiusSmall
            color: Theme.paper
            border.width: input.activeFocus ? Theme.focusLine : Theme.hair
            border.color: field.problem !== "" ? Theme.danger : input.activeFocus ? Theme.focus : Theme.edge
        }
    }
    Label { width: field.width; visible: text !== ""; role: Label.Small; color: field.problem !== "" ? Theme.danger : Theme.inkSoft; text: field.problem !== "" ? field.problem : field.hint }
}
