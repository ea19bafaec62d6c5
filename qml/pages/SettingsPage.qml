import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    canGoBack: true
    title: qsTr("Appearance and language")
    Card {
        OneOf { label: qsTr("Theme"); options: [{ value: "system", text: qsTr("As the phone") }, { value: "light", text: qsTr("Light") }, { value: "dark", text: qsTr("Dark") }]; value: Appearance.theme; onChosen: v => Appearance.theme = v }
        OneOf {
            label: qsTr("Text size")
            options: [{ value: "0.85", text: qsTr("Small") }, { value: "1", text: qsTr("Normal") }, { value: "1.3", text: qsTr("Large") }, { value: "1.6", text: qsTr("Larger") }, { value: "2", text: qsTr("Largest") }]
            value: String(Appearance.textScale)
            onChosen: v => Appearance.textScale = Number(v)
        }
        OneOf {
            label: qsTr("Language")
            options: Appearance.phrases.languages.map(l => ({ value: l, text: Appearance.phrases.languageName(l) }))
            value: Appearance.language
            onChosen: v => Appearance.language = v
        }
    }
}
