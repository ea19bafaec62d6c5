import QtQuick
import Firstdew

// Whichever step of the bath is on.
Item {
    id: page
    readonly property var steps: ({ "choose": choose, "screening": screening, "blocked": blocked, "prepare": prepare,
                                    "run": run, "meanwhile": meanwhile, "after": after })
    function takeAsked() {
        if (!Router.sessionAsked || BathModel.busy)
            return
        Router.sessionAsked = false
        BathModel.chooseSite(Router.sessionSite)
    }
    Component.onCompleted: takeAsked()
    Connections { target: Router; function onSessionAskedChanged() { page.takeAsked() } }
    Connections { target: BathModel; function onFinished() { Router.place(Place.Today) } }
    // No limit and no way of swapping polarity without a machine.
    Loader { anchors.fill: parent; sourceComponent: BathModel.page === "choose" && !PlanModel.machine.known ? setUp : page.steps[BathModel.page] }
    Component {
        id: setUp
        Frame {
            title: Appearance.phrases.place(Place.Session)
            SetUpFirst { purpose: qsTr("Before a bath, Firstdew has to know where you treat, with which machine, and your answers to the health questions.") }
        }
    }
    Component { id: choose; BathChoose {} }
    Component { id: screening; BathScreening {} }
    Component { id: blocked; BathBlocked {} }
    Component { id: prepare; BathPrepare {} }
    Component { id: run; BathRun {} }
    Component { id: meanwhile; BathMeanwhile {} }
    Component { id: after; BathAfter {} }
}
