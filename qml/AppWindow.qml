import QtQuick
import Firstdew

Window {
    id: window
    width: Appearance.startWidth
    height: Appearance.startHeight
    visible: true
    title: Router.drawn ? "Firstdew" : "" // X11 reads a table of letters for it
    color: Theme.paper
    property int place: Appearance.startPlace
    Component.onCompleted: {
        Router.watch(window)
        Router.place.connect(go)
        Router.page.connect(open)
        Router.back.connect(() => { if (covered) AppLock.leaveAsItIs(); else if (stack) closePage() })
        Router.sheet.connect(part => { if (covered) return; around.active = true; around.item.show(part) })
        Store.failed.connect(tellOfTrouble)
        AppLock.changed.connect(follow)
        // A session that was running comes first, and one that has not been written down yet.
        if (BathModel.page !== BathPage.Choose)
            place = Place.Session
        follow()
    }
    readonly property bool rightToLeft: Appearance.rightToLeft
    /// There is no record to show: nothing may look as if it were empty.
    readonly property bool troubled: Store.trouble !== Trouble.None
    /// The owner is asked for: nothing of the record is in the window, drawn or told. What was open is kept beside it.
    readonly property bool covered: AppLock.locked || AppLock.switching
    property bool uncovered: false // it was once: before that no place is made
    property bool told: false // that the lock does not hold here
    property bool troubleWaits: false
    function follow() {
        if (AppLock.sessionOnly && (place !== Place.Session || (stack && stack.depth > 0)))
            go(Place.Session)
        if (!covered)
            uncovered = true
        if (AppLock.unguarded && !told && Router.drawn && !BathModel.busy) {
            told = true
            Router.sheet(Part.UnguardedSheetPart)
        }
    }
    onCoveredChanged: {
        for (let i = Router.sheets; covered && i > 0; --i)
            Router.closeTopSheet()
        if (!covered && troubleWaits)
            tellOfTrouble()
        if (!covered)
            soon.restart()
    }
    function tellOfTrouble() {
        troubleWaits = covered
        if (covered || troubled)
            return
        around.active = true
        around.shown.tellOfTrouble()
    }
    LayoutMirroring.enabled: rightToLeft
    LayoutMirroring.childrenInherit: true

    readonly property var stack: over.item // a PageStack, made with the first page

    // How far page and place still are from where they belong: 1 at the edge that one reads to, -1 at the other, 0 there. They
    // take touches all the while.
    property real pageAway: 0
    property real placeAway: 0
    property real placeFaint: 0
    readonly property real way: (rightToLeft ? -1 : 1) * Theme.vast
    function come(what, from) { if (around.shown) around.shown.come(what, from) }

    /// What the on-screen keyboard covers.
    property real keyboardHeight: 0
    /// What notch, bars and keyboard leave.
    readonly property real freeWidth: width - Theme.safeLeft - Theme.safeRight
    readonly property real freeHeight: height - Theme.safeTop - Math.max(keyboardHeight, Theme.safeBottom)

    function go(where) {
        // A running session is left by its own exits alone.
        if ((AppLock.sessionOnly || (BathModel.busy && !BathModel.practice)) && where !== Place.Session)
            return
        const left = stack && stack.depth > 0
        if (left) {
            stack.leave()
            openers = []
        }
        const elsewhere = place !== where
        place = where
        if (elsewhere)
            Announce.place(where)
        if (elsewhere)
            come("placeFaint", 1)
        else if (left)
            come("placeAway", -1)
    }
    /// A notice, a shortcut or a second start asks for that place, which shows its top.
    function arrive(where) {
        go(where)
        if (place === where)
            arrived(where)
    }
    signal arrived(int where)
    /// Escape, and the system's way back: the sheet on top, then the page, then the place. False where there is nothing to leave.
    function goBack() {
        if (covered) {
            if (!AppLock.switching)
                return false
            AppLock.leaveAsItIs()
            return true
        }
        if (Router.closeTopSheet())
            return true
        if (BathModel.busy && place === Place.Session) {
            if (BathModel.practice)
                BathModel.leavePractice() // no current flows
            else if (BathModel.running.exits === Exits.TapAnywhere)
                BathModel.stop() // with the hands under, any key does
            return true
        }
        // A field gives back the keyboard first, with what was typed in it.
        if (activeFocusItem && activeFocusItem.cursorPosition !== undefined) {
            activeFocusItem.focus = false
            return true
        }
        if (stack && stack.depth > 0)
            closePage()
        else if (place === Place.Session && session.shown && session.shown.goBack())
            return true
        else if (place !== Place.Today)
            go(Place.Today)
        else
            return false
        return true
    }
    /// Whether goBack() would leave something.
    readonly property bool canGoBack: covered ? AppLock.switching : Router.sheets > 0 || place !== Place.Today || !!(stack && stack.depth > 0) || !!(activeFocusItem && activeFocusItem.cursorPosition !== undefined)
    onCanGoBackChanged: Router.backLeads(canGoBack)
    function open(part) {
        if (AppLock.sessionOnly)
            return null
        over.active = true
        openers.push({ item: activeFocusItem, reason: reasonOf(activeFocusItem) })
        const page = stack.show(part)
        come("pageAway", 1)
        Announce.page(page && page.title ? page.title : "")
        land(page, openers[openers.length - 1].reason)
        return page
    }
    function closePage() {
        stack.back()
        come(stack.depth > 0 ? "pageAway" : "placeAway", -1)
        const opener = openers.pop()
        if (opener && opener.item && opener.item.visible && opener.item.enabled)
            opener.item.forceActiveFocus(opener.reason)
        else
            soon.restart()
    }

    // The keyboard is never at something that is not there: a page that comes gets it, and the one below gets it back at what
    // opened the page.
    property var openers: [] // what had the keyboard before each page
    property Item held: null // what has it, or had it last
    property bool holds: false
    onActiveFocusItemChanged: {
        if (activeFocusItem && activeFocusItem.activeFocusOnTab) {
            held = activeFocusItem
            reason = reasonOf(activeFocusItem)
            holds = true
        } else if (holds) {
            soon.restart()
        }
    }
    readonly property bool astray: holds && !(held && held.visible)
    onAstrayChanged: if (astray) soon.restart()
    Timer { id: soon; interval: 0; onTriggered: window.settle() }
    function reasonOf(item: var): int { return item?.focusReason ?? Qt.OtherFocusReason }
    function settle() {
        if (covered || Router.sheets > 0 || (BathModel.busy && BathModel.running.exits === Exits.TapAnywhere))
            return
        const now = activeFocusItem
        if (now && now.visible && now.activeFocusOnTab)
            return
        if ((now && now === landed && now.visible) || ((!now || now.visible) && held && held.visible))
            return // the second: given back, as a field does
        // In what took its place, else on the page.
        let near = now && !now.visible && held && held.visible ? null : held // of a page that is gone
        while (near && !near.visible)
            near = near.parent
        land(near && near.parent && near.parent !== contentItem ? near : stack && stack.depth > 0 ? stack.currentItem : placeShown(), reason)
    }
    function placeShown(): Item { return today.current ? today.shown : session.current ? session.shown : diary.current ? diary.shown : plan.current ? plan.shown : null }
    /// Gives the keyboard to the first thing of that page but a field, which would call the on-screen keyboard; where no keys
    /// were used, to the page itself, so that the first key finds its beginning.
    function land(page, reason) {
        if (!page)
            return
        if (reason !== Qt.TabFocusReason && reason !== Qt.BacktabFocusReason) {
            landed = page
            page.forceActiveFocus(Qt.OtherFocusReason)
            return
        }
        let item = page
        for (let i = 0; i < 20; ++i) {
            item = item.nextItemInFocusChain(true)
            if (!item)
                return
            if (item.visible && item.activeFocusOnTab && item.cursorPosition === undefined) {
                item.forceActiveFocus(Qt.TabFocusReason)
                return
            }
        }
    }
    property Item landed: null // a page that has it itself
    property int reason: Qt.OtherFocusReason // for which `held` has or had it
    // What the first picture has no need of is made after it.
    onFrameSwapped: if (!Router.drawn) afterwards.start()
    Timer { id: afterwards; interval: 0; onTriggered: { Router.drawn = true; window.follow() } } // the picture itself is shown first
    // Sizes are bound and not left to a layout: a page is made at the size that it keeps.
    Item {
        id: places
        parent: window.covered ? null : window.contentItem
        x: Theme.safeLeft
        y: Theme.safeTop
        width: window.freeWidth
        height: window.freeHeight
        visible: !window.troubled && !(window.stack && window.stack.depth > 0)
        // A screen that lies on its side has no height to give away: the places stand beside the page.
        readonly property bool low: height < Theme.lowHeight && width > height
        readonly property real beside: low && bar.visible ? bar.width : 0
        readonly property real below: !low && bar.visible ? bar.height : 0

        component PlaceLoader: Loader {
            id: placed
            property int name: Place.Today
            property int page: Part.TodayPart
            readonly property var shown: item
            property bool wanted: current
            readonly property bool current: window.place === name
            onCurrentChanged: if (current) wanted = true
            active: wanted && (window.uncovered || !window.covered) && !window.troubled
            visible: current
            opacity: 1 - Math.max(Math.abs(window.placeAway), window.placeFaint)
            transform: Translate { x: window.placeAway * window.way }
            x: window.rightToLeft ? 0 : places.beside
            width: places.width - places.beside
            height: places.height - places.below
            source: Router.documentOf(page)
            Connections {
                target: window
                function onArrived(where) { if (where === placed.name && placed.shown && placed.shown.toTop) placed.shown.toTop() }
            }
        }
        PlaceLoader { id: today; name: Place.Today; page: Part.TodayPart }
        PlaceLoader { id: session; name: Place.Session; page: Part.BathPart }
        PlaceLoader { id: diary; name: Place.Diary; page: Part.DiaryPart }
        PlaceLoader { id: plan; name: Place.Plan; page: Part.PlanPart }
        Loader {
            id: bar
            readonly property var shown: item
            // Nothing but the session while it runs.
            visible: !(window.place === Place.Session && (BathModel.busy || AppLock.sessionOnly))
            x: places.low && window.rightToLeft ? places.width - width : 0
            y: places.height - height
            width: places.low ? Theme.barWidth : places.width
            height: places.low ? places.height : shown ? shown.implicitHeight : Theme.barHeight
            source: Router.drawn ? Router.documentOf(Part.BottomBarPart) : ""
            onLoaded: {
                item.current = Qt.binding(() => window.place)
                item.upright = Qt.binding(() => places.low)
                item.chosen.connect(window.go)
            }
        }
    }

    Loader {
        x: Theme.safeLeft
        y: Theme.safeTop
        width: window.freeWidth
        height: window.freeHeight
        active: window.troubled
        source: Router.documentOf(Part.StoreTroublePart)
    }

    // Pages over the places.
    Loader {
        id: over
        parent: window.covered ? null : window.contentItem
        x: Theme.safeLeft
        y: Theme.safeTop
        width: window.freeWidth
        height: window.freeHeight
        active: false
        visible: window.stack && window.stack.depth > 0 && !window.troubled
        opacity: 1 - Math.abs(window.pageAway)
        transform: Translate { x: window.pageAway * window.way }
        source: Router.documentOf(Part.PageStackPart)
    }

    Loader {
        x: Theme.safeLeft
        y: Theme.safeTop
        width: window.freeWidth
        height: window.freeHeight
        active: window.covered && !window.troubled
        source: Router.documentOf(Part.AppLockedPart)
    }

    Loader {
        id: around
        readonly property var shown: item
        active: Router.drawn
        Component.onCompleted: setSource(Router.documentOf(Part.AroundPagesPart), { pages: window })
    }
}
