import QtQuick
import QtQuick.Layouts
import Firstdew

// Who it is: name, birthday, and for a child the adult beside them.
ColumnLayout {
    id: form
    property alias name: name.text
    property alias birth: birth.text
    property alias adult: adult.text
    readonly property bool birthGood: birth.text !== "" && PlanModel.isPastDay(birth.text)
    readonly property bool child: birthGood && PlanModel.ageGroup(birth.text) === "child"
    readonly property bool complete: birthGood && (!child || adult.text.trim() !== "")
    Layout.fillWidth: true
    spacing: Theme.margin
    Field { id: name; label: qsTr("First name, or what you like to be called"); hint: qsTr("May stay empty.") }
    Field {
        id: birth
        label: qsTr("Birthday")
        hint: qsTr("Year-month-day, for example 1990-04-23. It decides which limits count.")
        problem: text.length >= 10 && !form.birthGood ? qsTr("That is no day that has been. Write it like 1990-04-23.") : ""
        inputMethodHints: Qt.ImhPreferNumbers
    }
    Field { id: adult; visible: form.child; label: qsTr("The adult beside the child"); hint: qsTr("Children are treated only with medical advice and an adult beside them.") }
}
