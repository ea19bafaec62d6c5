import QtQuick
import QtQuick.Layouts
import Firstdew

// Where it is treated.
Wrap {
    id: form
    property var chosen: []
    Layout.fillWidth: true
    spacing: Theme.small
    Component.onCompleted: {
        const used = []
        for (let i = 0; i < Appearance.phrases.sites.length; ++i)
            if (PlanModel.uses(Appearance.phrases.sites[i]))
                used.push(Appearance.phrases.sites[i])
        chosen = used
    }
    function save() {
        let ok = true
        for (let i = 0; i < Appearance.phrases.sites.length; ++i) {
            const s = Appearance.phrases.sites[i]
            if (chosen.includes(s) !== PlanModel.uses(s))
                ok = PlanModel.useSite(s, chosen.includes(s)) && ok
        }
        return ok
    }
    Repeater {
        model: Appearance.phrases.sites
        Chip {
            required property int modelData
            text: Appearance.phrases.treated(modelData)
            checked: form.chosen.includes(modelData)
            onClicked: form.chosen = form.chosen.includes(modelData) ? form.chosen.filter(s => s !== modelData) : form.chosen.concat([modelData])
        }
    }
}
