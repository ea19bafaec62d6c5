import QtQuick
import Firstdew

// Whichever step of the bath is on.
Item {
    id: page
    readonly property var steps: ({ "choose": choose, "screening": screening, "blocked": blocked, "prepare": prepare,
                                    "run": run, "meanwhile": meanwhile, "after": after })
    function takeAsked() {
        if (Router.bathSite === "" || BathModel.busy)
            return
        BathModel.chooseSite(Router.bathSite)
        Router.bathSite = ""
    }
    Component.onCompleted: takeAsked()
    Connections { target: Router; function onBathSiteChanged() { page.takeAsked() } }
    Connections { target: BathModel; function onFinished() { Router.place("today") } }
    Loader { anchors.fill: parent; sourceComponent: page.steps[BathModel.page] }
    Component { id: choose; BathChoose {} }
    Component { id: screening; BathScreening {} }
    Component { id: blocked; BathBlocked {} }
    Component { id: prepare; BathPrepare {} }
    Component { id: run; BathRun {} }
    Component { id: meanwhile; BathMeanwhile {} }
    Component { id: after; BathAfter {} }
}
