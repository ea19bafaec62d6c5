import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    title: Appearance.phrases.dayFull(Store.today)
    titleRole: Label.Title
    readonly property siteToday matter: TodayModel.matter
    readonly property int sites: TodayModel.sites.length

    header: Late {
        wanted: Router.drawn
        part: Part.TodayHeaderPart
        visible: true // its room is kept from the first picture on
        Layout.fillWidth: false
        Layout.minimumHeight: Theme.target
    }

    Late {
        wanted: page.matter.calls
        part: Part.DewCallPart
    }

    // Nothing in use yet, or the first start was left in the middle.
    Late {
        wanted: page.sites === 0 || TodayModel.unready
        part: page.sites === 0 ? Part.WelcomePart : Part.SetUpGoOnPart
    }

    Repeater {
        model: page.sites // the cards stay, and with them the keyboard's place, when one is answered
        CheckInCard {
            required property int index
            entry: TodayModel.sites[index] ?? Empty.siteToday
        }
    }

    // The check-in can be given before the rest is there.
    Late {
        wanted: Router.drawn && page.matter.known && !page.matter.calls
        part: Part.NextActionPart
        onLoaded: item.later = Qt.binding(() => TodayModel.unready)
    }

    Late {
        wanted: Router.drawn && page.sites > 0
        part: Part.DaysAroundPart
    }
}
