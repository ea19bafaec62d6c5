import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    title: Appearance.phrases.dayFull(Store.today)
    titleRole: Label.Title
    readonly property var sites: TodayModel.sites
    readonly property var matters: TodayModel.first >= 0 ? sites[TodayModel.first] : null
    readonly property bool call: matters !== null && ["first-dew-top-up", "top-up-due", "restart-course"].includes(matters.advice)

    header: Late {
        wanted: Router.drawn
        part: "controls/TodayHeader"
        visible: true // its room is kept from the first picture on
        Layout.fillWidth: false
        Layout.minimumHeight: Theme.target
    }

    Late {
        wanted: page.call
        part: "controls/DewCall"
    }

    // Nothing in use yet, or the first start was left in the middle.
    Late {
        wanted: page.sites.length === 0 || TodayModel.unready
        part: page.sites.length === 0 ? "controls/Welcome" : "controls/SetUpGoOn"
    }

    Repeater {
        model: page.sites.length // the cards stay, and with them the keyboard's place, when one is answered
        CheckInCard {
            required property int index
            entry: page.sites[index] || null
        }
    }

    // The check-in can be given before the rest is there.
    Late {
        wanted: Router.drawn && page.matters !== null && !page.call
        part: "controls/NextAction"
        onLoaded: item.later = Qt.binding(() => TodayModel.unready)
    }

    Late {
        wanted: Router.drawn && page.sites.length > 0
        part: "controls/DaysAround"
    }
}
