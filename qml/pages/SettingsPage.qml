import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    canGoBack: true
    title: qsTr("Appearance and language")
    Card {
        OneOf { label: qsTr("Theme"); options: [{ value: "system", text: qsTr("As the phone") }, { value: "light", text: qsTr("Light") }, { value: "dark", text: qsTr("Dark") }]; value: Look.theme; onChosen: v => Look.theme = v }
        OneOf {
            label: qsTr("Text size")
            options: [{ value: "0.85", text: qsTr("Small") }, { value: "1", text: qsTr("Normal") }, { value: "1.3", text: qsTr("Large") }, { value: "1.6", text: qsTr("Larger") }, { value: "2", text: qsTr("Largest") }]
            value: String(Look.textScale)
            onChosen: v => Look.textScale = Number(v)
        }
        OneOf {
            label: qsTr("Language")
            options: Look.words.languages.map(l => ({ value: l, text: Look.words.languageName(l) }))
            value: Look.language
            onChosen: v => Look.language = v
        }
    }
}
