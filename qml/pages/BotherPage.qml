import QtQuick
import QtQuick.Layouts
import Firstdew

// The four-step severity scale, in our own plain words; the number is kept.
Frame {
    id: page
    canGoBack: true
    title: qsTr("How much the sweating bothers you")
    property int site: DiaryModel.sites[0] ?? DiarySite.Hands
    SiteOf { site: page.site; onChosen: v => page.site = v }
    Label { Layout.fillWidth: true; text: qsTr("Over the last week, which comes nearest?") }
    Repeater {
        model: [qsTr("I hardly notice it, and it never gets in my way"), qsTr("I can live with it, and now and then it gets in my way"),
                qsTr("I can barely live with it, and it often gets in my way"), qsTr("I cannot live with it; it is always in my way")]
        ActionButton {
            required property string modelData
            required property int index
            text: (index + 1) + "  " + modelData
            Layout.fillWidth: true
            onClicked: if (DiaryModel.addHdss(page.site, index + 1)) Router.back()
        }
    }
}
