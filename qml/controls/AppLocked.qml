import QtQuick
import QtQuick.Layouts
import Firstdew

// Instead of everything else until the owner is confirmed; also where the lock is switched on or off.
Frame {
    id: page
    personal: false
    title: AppLock.switching ? qsTr("Confirm that it is you") : qsTr("Firstdew is locked")
    canGoBack: AppLock.switching
    readonly property string why: AppLock.switching ? qsTr("Firstdew: switch the app lock on or off") : qsTr("Open Firstdew")
    readonly property bool checking: AppLock.asking && !AppLock.prompted
    property bool asked: false
    // The page asks once by itself. Whoever left the system's dialog asks again by the button.
    Component.onCompleted: { Announce.page(title); soon.start() }
    Connections { target: AppLock; function onChanged() { soon.start() } }
    Timer { id: soon; interval: 0; onTriggered: { page.askOnce(); secret.settle() } } // once the page can be seen
    readonly property string told: AppLock.told
    onToldChanged: if (told !== "") Announce.value(told)
    function askOnce() {
        if (asked || !AppLock.inFront)
            return
        asked = true
        if (!AppLock.asking)
            AppLock.ask(why)
    }
    function open() {
        if (!secret.wanted) // also where the system's dialog was lost
            AppLock.ask(why)
        if (!AppLock.prompted || secret.text === "")
            return
        const given = secret.text
        secret.text = ""
        AppLock.answer(given)
    }
    Label {
        Layout.fillWidth: true
        text: AppLock.switching ? qsTr("Firstdew asks for this phone's lock before the app lock is switched on or off.") : qsTr("Your diary opens once this phone's lock confirms that it is you.")
    }
    Card {
        visible: AppLock.prompted || secret.wanted
        Field {
            id: secret
            property bool wanted: false // asked for here before: the field stays while the answer is checked
            readonly property bool due: AppLock.prompted
            onDueChanged: if (due) { wanted = true; fresh = true }
            Component.onCompleted: if (due) { wanted = true; fresh = true }
            property bool fresh: false // it was asked for just now
            function settle() {
                if (!fresh)
                    return
                fresh = false
                takeKeyboard()
            }
            label: AppLock.prompt.replace(/[:：\s]+$/, "")
            echoMode: AppLock.hidden && !shown.readable ? TextInput.Password : TextInput.Normal
            inputMethodHints: Qt.ImhSensitiveData | Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
            hint: page.checking ? qsTr("Checking …") : ""
            problem: AppLock.wrong && due ? qsTr("That was not right. Try again.") : ""
            onAccepted: page.open()
        }
        ActionButton {
            id: shown
            property bool readable: false
            visible: AppLock.hidden
            kind: ButtonFace.Quiet
            Layout.fillWidth: Theme.largeText
            text: readable ? qsTr("Hide what I type") : qsTr("Show what I type")
            onClicked: readable = !readable
        }
    }
    Label { visible: text !== ""; Layout.fillWidth: true; text: page.told }
    Label { visible: AppLock.wrong && !secret.wanted; Layout.fillWidth: true; color: Theme.danger; text: qsTr("This phone did not confirm you. Try again.") }
    dock: ActionButton {
        kind: ButtonFace.Main
        Layout.fillWidth: true
        text: AppLock.switching ? qsTr("Confirm") : qsTr("Unlock")
        enabled: AppLock.prompted ? secret.text !== "" : !secret.wanted
        onClicked: page.open()
    }
}
