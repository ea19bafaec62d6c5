import QtQuick
import QtQuick.Layouts
import Firstdew

Frame {
    id: page
    title: Appearance.phrases.dayFull(Store.today)
    titleRole: Label.Title
    readonly property siteToday matter: TodayModel.matter
    readonly property int sites: TodayModel.sites.length
    // On a small screen the check-ins of today are in view as well as the call, which opens when they are given.
    readonly property bool low: height < Theme.tall - 2 * Theme.vast && width < Theme.measure && !Theme.largeText
    readonly property bool asking: unanswered(TodayModel.sites)
    function unanswered(all: var): bool { return all.some(s => !s.checkedIn) }

    header: Deferred {
        wanted: Router.drawn
        part: Part.TodayHeaderPart
        visible: true // its room is kept from the first picture on
        Layout.fillWidth: false
        Layout.minimumHeight: Theme.target
    }

    Deferred {
        wanted: page.matter.calls
        part: Part.DewCallPart
        onLoaded: item.brief = Qt.binding(() => page.low && page.asking)
    }

    // Nothing in use yet, or the first start was left in the middle.
    Deferred {
        wanted: page.sites === 0 || TodayModel.unready
        part: page.sites === 0 ? Part.WelcomePart : Part.SetUpGoOnPart
    }

    Repeater {
        model: page.sites // the cards stay, and with them the keyboard's place, when one is answered
        CheckInCard {
            required property int index
            entry: TodayModel.sites[index] ?? Empty.siteToday
            low: page.low
        }
    }

    // The check-in can be given before the rest is there.
    Deferred {
        wanted: Router.drawn && page.matter.known && !page.matter.calls
        part: Part.NextActionPart
        onLoaded: item.later = Qt.binding(() => TodayModel.unready)
    }

    split: page.sites > 0
    aside: Deferred {
        wanted: Router.drawn && page.sites > 0
        part: Part.DaysAroundPart
    }
}
