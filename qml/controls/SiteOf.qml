import QtQuick
import Firstdew

// Which of the sites in use; nothing to choose where there is one.
OneOf {
    id: choice
    property int site: 0
    function names(sites: var): var { return sites.map(s => ({ value: s, text: Appearance.phrases.site(s) })) }
    visible: DiaryModel.sites.length > 1
    options: names(DiaryModel.sites)
    value: choice.site
}
