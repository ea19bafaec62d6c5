import QtQuick
import QtQuick.Layouts
import Firstdew

// Who it is: name, birthday, and for a child the adult beside them.
ColumnLayout {
    id: form
    property alias name: name.text
    property string birth: "" // year-month-day
    property alias adult: adult.text
    readonly property bool birthGood: birth !== "" && PlanModel.isPastDay(birth)
    readonly property bool child: birthGood && PlanModel.isChild(birth)
    /// Whether height and weight are asked for.
    property bool body: false
    readonly property real cm: tall.text.trim() === "" ? 0 : Appearance.phrases.numberIn(tall.text)
    readonly property real kg: heavy.text.trim() === "" ? 0 : Appearance.phrases.numberIn(heavy.text)
    readonly property bool tallGood: cm === 0 || (cm >= PlanModel.shortest && cm <= PlanModel.tallest)
    readonly property bool heavyGood: kg === 0 || (kg >= PlanModel.lightest && kg <= PlanModel.heaviest)
    readonly property bool complete: birthGood && tallGood && heavyGood && (!child || adult.text.trim() !== "")
    function setBody(cm, kg) {
        tall.text = cm > 0 ? Appearance.phrases.shortNumber(cm) : ""
        heavy.text = kg > 0 ? Appearance.phrases.shortNumber(kg) : ""
    }
    Layout.fillWidth: true
    spacing: Theme.margin
    Field { id: name; label: qsTr("First name, or what you like to be called"); hint: qsTr("Optional") }
    DayPick {
        label: qsTr("Birthday")
        hint: qsTr("It sets your current limit. Without it, the children's limits apply.")
        longAgo: true
        given: form.birthGood
        day: form.birthGood ? Math.round(Date.parse(form.birth) / 86400000) : 0
        first: Store.today - 36890 // a hundred and one years
        last: Store.today - 1
        onPicked: day => form.birth = new Date(day * 86400000).toISOString().slice(0, 10)
    }
    Field { id: tall; visible: form.body; label: qsTr("Height in centimetres"); hint: qsTr("Optional. With the weight it tells how large the treated skin is."); problem: form.tallGood ? "" : qsTr("Write a number from %1 to %2.").arg(PlanModel.shortest).arg(PlanModel.tallest); inputMethodHints: Qt.ImhFormattedNumbersOnly }
    Field { id: heavy; visible: form.body; label: qsTr("Weight in kilograms"); hint: qsTr("Optional"); problem: form.heavyGood ? "" : qsTr("Write a number from %1 to %2.").arg(PlanModel.lightest).arg(PlanModel.heaviest); inputMethodHints: Qt.ImhFormattedNumbersOnly }
    Field { id: adult; visible: form.child; label: qsTr("The adult beside the child"); hint: qsTr("Children are treated only with medical advice and an adult beside them.") }
}
