import QtQuick
import Firstdew

// Whichever step of the session is on.
Item {
    id: page
    function partFor(which: int): Component {
        switch (which) {
        case BathPage.Screening: return screening
        case BathPage.Blocked: return blocked
        case BathPage.Prepare: return prepare
        case BathPage.Run: return run
        case BathPage.Meanwhile: return meanwhile
        case BathPage.After: return after
        case BathPage.PracticeStart: return practiceStart
        case BathPage.PracticeOver: return practiceOver
        default: return !PlanModel.machine.known ? setUp : BathModel.shortWay ? asLast : choose // no limit and no way of swapping polarity without a machine
        }
    }
    /// To the page before this one; false where the session has none.
    function goBack() {
        if (BathModel.practice) {
            BathModel.leavePractice()
            return true
        }
        const asks = BathModel.page === BathPage.Screening || BathModel.page === BathPage.Blocked || BathModel.page === BathPage.Prepare
        if (!BathModel.changing && !asks)
            return false
        if (BathModel.page === BathPage.Prepare)
            part.shown.back()
        else
            BathModel.back()
        return true
    }
    function takeAsked() {
        if (!Router.sessionAsked || (BathModel.busy && !BathModel.practice))
            return
        Router.sessionAsked = false
        BathModel.askFor(Router.sessionSite)
    }
    // A wet finger that touches twice confirms one thing, not the next one as well.
    SecondTouch {
        readonly property runningPage r: BathModel.running
        window: page.Window.window
        stands: page.visible ? [BathModel.page, r.kind, r.phase, r.side, r.main, r.exits, r.alarm, BathModel.stopsIn > 0, Router.sheets, part.shown ? part.shown.at : 0].join(" ") : ""
    }
    Component.onCompleted: takeAsked()
    // Practice is for as long as it is looked at. A page that is being made was not looked at yet.
    property bool looked: false
    onVisibleChanged: {
        if (!visible && looked)
            BathModel.leavePractice()
        looked = visible
    }
    Connections { target: Router; function onSessionAskedChanged() { page.takeAsked() } }
    Connections { target: BathModel; function onFinished() { Router.place(Place.Today) } }
    PracticeBanner { id: banner; visible: BathModel.practice; anchors { left: parent.left; right: parent.right; top: parent.top } }
    Loader {
        id: part
        readonly property var shown: item
        anchors { fill: parent; topMargin: banner.visible ? banner.height : 0 }
        sourceComponent: page.partFor(BathModel.page)
    }
    Component {
        id: setUp
        Frame {
            title: Appearance.phrases.place(Place.Session)
            SetUpFirst { purpose: qsTr("Before a session, Firstdew has to know where you treat, with which machine, and your answers to the health questions.") }
        }
    }
    Component { id: asLast; BathAsLast {} }
    Component { id: choose; BathChoose {} }
    Component { id: screening; BathScreening {} }
    Component { id: blocked; BathBlocked {} }
    Component { id: prepare; BathPrepare {} }
    Component { id: run; BathRun {} }
    Component { id: meanwhile; BathMeanwhile {} }
    Component { id: after; BathAfter {} }
    Component { id: practiceStart; BathPracticeStart {} }
    Component { id: practiceOver; BathPracticeOver {} }
}
