import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    function names(languages: var): var { return languages.map(l => ({ value: l, text: Appearance.phrases.languageName(l) })) }
    canGoBack: true
    title: qsTr("Appearance and language")
    Card {
        OneOf { label: qsTr("Theme"); options: [{ value: ThemeChoice.System, text: qsTr("Match phone") }, { value: ThemeChoice.Light, text: qsTr("Light") }, { value: ThemeChoice.Dark, text: qsTr("Dark") }]; value: Appearance.theme; onChosen: v => Appearance.theme = v }
        OneOf {
            label: qsTr("Text size")
            options: [{ value: 0.85, text: qsTr("Small") }, { value: 1, text: qsTr("Normal") }, { value: 1.3, text: qsTr("Large") }, { value: 1.6, text: qsTr("Larger") }, { value: 2, text: qsTr("Largest") }]
            value: Appearance.textScale
            onChosen: v => Appearance.textScale = v
        }
        OneOf {
            label: qsTr("Language")
            options: page.names(Appearance.phrases.languages)
            value: Appearance.language
            onChosen: v => Appearance.language = v
        }
    }
}
