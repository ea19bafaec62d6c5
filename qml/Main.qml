import QtQuick
import Firstdew

Window {
    id: window
    width: Look.startWidth
    height: Look.startHeight
    visible: true
    title: Router.drawn ? "Firstdew" : "" // X11 reads a table of letters for it
    color: Theme.paper
    property string place: Look.startPage
    // A session that was running comes first, and one that has not been written down yet.
    Component.onCompleted: if (BathModel.page !== "choose") place = "bath"
    readonly property bool rightToLeft: Look.rightToLeft
    LayoutMirroring.enabled: rightToLeft
    LayoutMirroring.childrenInherit: true

    /// What the on-screen keyboard covers; systems tell it in pixels of the screen.
    property real keyboardHeight: 0
    // Asked only when it moves: asked before a window has the keyboard, Qt 6.4 falls over under Wayland.
    Connections {
        target: Qt.inputMethod
        function onKeyboardRectangleChanged() { window.keyboardHeight = Qt.inputMethod.keyboardRectangle.height / Screen.devicePixelRatio }
        function onVisibleChanged() { window.keyboardHeight = Qt.inputMethod.visible ? Qt.inputMethod.keyboardRectangle.height / Screen.devicePixelRatio : 0 }
    }

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
    Connections {
        target: window
        enabled: !Router.drawn
        function onFrameSwapped() { afterwards.start() }
    }
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

    Connections {
        target: Router
        function onPlace(name) { window.go(name) }
        function onPage(name, properties) { window.open(name, properties) }
        function onBack() { if (over.item) over.item.back() }
    }
    Connections {
        target: Store
        function onFailed() { trouble.open() }
    }
    Shortcut { sequences: [StandardKey.Back, "Esc"]; onActivated: Router.back() }
    Shortcut { sequence: "Ctrl+1"; onActivated: window.go("today") }
    Shortcut { sequence: "Ctrl+2"; onActivated: window.go("bath") }
    Shortcut { sequence: "Ctrl+3"; onActivated: window.go("diary") }
    Shortcut { sequence: "Ctrl+4"; onActivated: window.go("plan") }

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
            Binding { target: bar.item; property: "current"; value: window.place }
            Binding { target: bar.item; property: "upright"; value: places.low }
            Connections { target: bar.item; function onChosen(place) { window.go(place) } }
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

    LateSheet { id: trouble; source: Qt.resolvedUrl("controls/TroubleSheet.qml") }
}
