import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Firstdew

T.ApplicationWindow {
    id: window
    width: Look.startWidth
    height: Look.startHeight
    visible: true
    title: "Firstdew"
    color: Theme.paper
    property string place: Look.startPage
    // A session that was running comes first, and one that has not been written down yet.
    Component.onCompleted: if (BathModel.page !== "choose") place = "bath"
    readonly property bool rightToLeft: Qt.application.layoutDirection === Qt.RightToLeft
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

    Binding { target: Theme; property: "dark"; value: Look.dark }
    Binding { target: Theme; property: "textScale"; value: Look.textScale }
    Binding { target: Theme; property: "motion"; value: Look.motion }

    function go(name) {
        while (stack.depth > 1)
            stack.pop(T.StackView.Immediate)
        place = name
    }
    function pageUrl(name) { return Qt.resolvedUrl("pages/" + name + ".qml") }
    function open(name, properties) { return stack.push(pageUrl(name), properties || {}, T.StackView.Immediate) }
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
        function onBack() { if (stack.depth > 1) stack.pop(T.StackView.Immediate) }
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

    T.StackView {
        id: stack
        anchors { fill: parent; bottomMargin: window.keyboardHeight }
        initialItem: places
    }
    Component {
        id: places
        GridLayout {
            // A screen that lies on its side has no height to give away: the places stand beside the page.
            readonly property bool low: height < Theme.lowHeight && width > height
            columnSpacing: 0
            rowSpacing: 0
            Item {
                Layout.row: 0
                Layout.column: parent.low ? 1 : 0
                Layout.fillWidth: true
                Layout.fillHeight: true
                Repeater {
                    model: ["today", "bath", "diary", "plan"]
                    Loader {
                        required property string modelData
                        property bool wanted: false
                        readonly property bool current: window.place === modelData
                        onCurrentChanged: if (current) wanted = true
                        Component.onCompleted: if (current) wanted = true
                        active: wanted
                        visible: current
                        anchors.fill: parent
                        source: window.pageUrl(modelData.charAt(0).toUpperCase() + modelData.slice(1))
                    }
                }
            }
            BottomBar {
                // Nothing but the session while it runs.
                visible: !(window.place === "bath" && BathModel.busy)
                upright: parent.low
                Layout.row: parent.low ? 0 : 1
                Layout.column: 0
                Layout.fillWidth: !parent.low
                Layout.fillHeight: parent.low
                current: window.place
                onChosen: place => window.go(place)
            }
        }
    }

    LateSheet {
        id: trouble
        sheet: Component {
            Sheet {
                title: qsTr("That could not be saved")
                Label { text: Store.errorText; Layout.fillWidth: true }
                Label { text: qsTr("What was recorded before is safe. Make room on the phone or restart the app, then try again."); role: "label"; Layout.fillWidth: true }
                ActionButton { text: qsTr("Close"); kind: "main"; Layout.fillWidth: true; onClicked: trouble.close() }
            }
        }
    }
}
