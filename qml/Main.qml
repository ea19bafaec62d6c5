import QtQuick
import Firstdew

Window {
    id: window
    width: Appearance.startWidth
    height: Appearance.startHeight
    visible: true
    title: Router.drawn ? "Firstdew" : "" // X11 reads a table of letters for it
    color: Theme.paper
    property string place: Appearance.startPage
    Component.onCompleted: {
        Router.place.connect(go)
        Router.page.connect(open)
        Router.back.connect(() => { if (over.item) over.item.back() })
        Router.sheet.connect((name, properties) => { around.active = true; around.item.show(name, properties) })
        Store.failed.connect(() => { around.active = true; around.item.tellOfTrouble() })
        // A session that was running comes first, and one that has not been written down yet.
        if (BathModel.page !== "choose")
            place = "bath"
    }
    readonly property bool rightToLeft: Appearance.rightToLeft
    LayoutMirroring.enabled: rightToLeft
    LayoutMirroring.childrenInherit: true

    /// What the on-screen keyboard covers.
    property real keyboardHeight: 0

    function go(name) {
        if (over.item)
            over.item.leave()
        place = name
    }
    function pageUrl(name) { return Qt.resolvedUrl("pages/" + name + ".qml") }
    function open(name, properties) {
        over.active = true
        return over.item.show(pageUrl(name), properties || {})
    }
    // What the first picture has no need of is made after it.
    onFrameSwapped: if (!Router.drawn) afterwards.start()
    Timer { id: afterwards; interval: 0; onTriggered: Router.drawn = true } // the picture itself is shown first
    /// Shows the page of that file, a place or another; whether it loaded.
    function showForTest(name) {
        const placeName = name.toLowerCase()
        if (["today", "bath", "diary", "plan"].includes(placeName)) {
            go(placeName)
            return true
        }
        go("today")
        return !!open(name, {})
    }

    // Sizes are bound and not left to a layout: a page is made at the size that it keeps.
    Item {
        id: places
        width: window.width
        height: window.height - window.keyboardHeight
        visible: !(over.item && over.item.depth > 0)
        // A screen that lies on its side has no height to give away: the places stand beside the page.
        readonly property bool low: height < Theme.lowHeight && width > height
        readonly property real beside: low && bar.visible ? bar.width : 0
        readonly property real below: !low && bar.visible ? bar.height : 0

        component Place: Loader {
            property string name: ""
            property string page: ""
            property bool wanted: current
            readonly property bool current: window.place === name
            onCurrentChanged: if (current) wanted = true
            active: wanted
            visible: current
            x: window.rightToLeft ? 0 : places.beside
            width: places.width - places.beside
            height: places.height - places.below
            source: window.pageUrl(page)
        }
        Place { name: "today"; page: "Today" }
        Place { name: "bath"; page: "Bath" }
        Place { name: "diary"; page: "Diary" }
        Place { name: "plan"; page: "Plan" }
        Loader {
            id: bar
            // Nothing but the session while it runs.
            visible: !(window.place === "bath" && BathModel.busy)
            x: places.low && window.rightToLeft ? places.width - width : 0
            y: places.height - height
            width: places.low ? Theme.barWidth : places.width
            height: places.low ? places.height : item ? item.implicitHeight : Theme.barHeight
            source: Router.drawn ? Qt.resolvedUrl("controls/BottomBar.qml") : ""
            onLoaded: {
                item.current = Qt.binding(() => window.place)
                item.upright = Qt.binding(() => places.low)
                item.chosen.connect(window.go)
            }
        }
    }

    // Pages over the places.
    Loader {
        id: over
        anchors { fill: parent; bottomMargin: window.keyboardHeight }
        active: false
        visible: item && item.depth > 0
        source: Qt.resolvedUrl("controls/PageStack.qml")
    }

    Loader {
        id: around
        active: Router.drawn
        Component.onCompleted: setSource(Qt.resolvedUrl("controls/AroundPages.qml"), { pages: window })
    }
}
