import QtQuick
import QtQuick.Layouts
import Firstdew

// Where it is treated.
Wrap {
    id: form
    property var chosen: []
    Layout.fillWidth: true
    spacing: Theme.small
    Component.onCompleted: chosen = PlanModel.sites.map(s => s.treatedAs)
    function save() {
        let ok = true
        for (const s of Appearance.phrases.sites) {
            const used = PlanModel.sites.some(p => p.treatedAs === s)
            if (chosen.includes(s) !== used)
                ok = PlanModel.useSite(s, chosen.includes(s)) && ok
        }
        return ok
    }
    Repeater {
        model: Appearance.phrases.sites
        Chip {
            required property string modelData
            text: Appearance.phrases.site(modelData)
            checked: form.chosen.includes(modelData)
            onClicked: form.chosen = form.chosen.includes(modelData) ? form.chosen.filter(s => s !== modelData) : form.chosen.concat([modelData])
        }
    }
}
