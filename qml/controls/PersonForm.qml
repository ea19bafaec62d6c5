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
    readonly property bool child: birthGood && PlanModel.isChild(birth.text)
    /// Whether height and weight are asked for.
    property bool body: false
    readonly property real cm: tall.text.trim() === "" ? 0 : Appearance.phrases.numberIn(tall.text)
    readonly property real kg: heavy.text.trim() === "" ? 0 : Appearance.phrases.numberIn(heavy.text)
    readonly property bool tallGood: cm === 0 || (cm >= 40 && cm <= 250)
    readonly property bool heavyGood: kg === 0 || (kg >= 2 && kg <= 350)
    readonly property bool complete: birthGood && tallGood && heavyGood && (!child || adult.text.trim() !== "")
    function setBody(cm, kg) {
        tall.text = cm > 0 ? Appearance.phrases.shortNumber(cm) : ""
        heavy.text = kg > 0 ? Appearance.phrases.shortNumber(kg) : ""
    }
    Layout.fillWidth: true
    spacing: Theme.margin
    Field { id: name; label: qsTr("First name, or what you like to be called"); hint: qsTr("May stay empty.") }
    Field {
        id: birth
        label: qsTr("Birthday")
        hint: qsTr("Year-month-day, for example 1990-04-23. It decides which limits count; without it those for children.")
        problem: text.length >= 10 && !form.birthGood ? qsTr("That is no day that has been. Write it like 1990-04-23.") : ""
        inputMethodHints: Qt.ImhPreferNumbers
    }
    Field { id: tall; visible: form.body; label: qsTr("Height in centimetres"); hint: qsTr("May stay empty. With the weight it tells how large the treated skin is."); problem: form.tallGood ? "" : qsTr("Write a number from 40 to 250."); inputMethodHints: Qt.ImhFormattedNumbersOnly }
    Field { id: heavy; visible: form.body; label: qsTr("Weight in kilograms"); hint: qsTr("May stay empty."); problem: form.heavyGood ? "" : qsTr("Write a number from 2 to 350."); inputMethodHints: Qt.ImhFormattedNumbersOnly }
    Field { id: adult; visible: form.child; label: qsTr("The adult beside the child"); hint: qsTr("Children are treated only with medical advice and an adult beside them.") }
}
