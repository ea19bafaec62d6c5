import QtQuick
import QtQuick.Layouts
import Firstdew

// The dampness of one site over time: one step line, dots where noted, baths as ticks below.
Item {
    id: chart
    property string site: ""
    property string from: ""
    property int span: 90
    signal dayTapped(string date)
    readonly property string to: Store.today
    property var levels: DiaryModel.levels(site, from, to)
    property var baths: DiaryModel.baths(site, from, to)
    Connections {
        target: DiaryModel
        function onChanged() {
            chart.levels = Qt.binding(() => DiaryModel.levels(chart.site, chart.from, chart.to))
            chart.baths = Qt.binding(() => DiaryModel.baths(chart.site, chart.from, chart.to))
        }
    }
    readonly property real plotLeft: Theme.icon + Theme.small
    readonly property real plotHeight: 120
    readonly property real step: (width - plotLeft - Theme.small) / Math.max(1, span)
    implicitHeight: plotHeight + Theme.wide + Theme.tiny * 1.6
    Accessible.role: Accessible.Chart
    Accessible.name: qsTr("Dampness over time, %1").arg(Words.site(site))
    function xOf(day) { return plotLeft + (day + 0.5) * step }
    function yOf(level) { return plotHeight - Theme.small - level * (plotHeight - 2 * Theme.small) / 3 }
    Repeater {
        model: 4
        Item {
            required property int index
            y: chart.yOf(index)
            width: chart.width
            Rectangle { x: chart.plotLeft; width: parent.width - x; height: Theme.hair; color: Theme.line }
            Ripples { width: Theme.icon; height: Theme.iconSmall; y: -height / 2; level: parent.index; color: Theme.inkSoft; stroke: 1.5 }
        }
    }
    Canvas {
        id: canvas
        anchors.fill: parent
        readonly property var watched: [chart.levels, chart.baths, chart.width, Theme.dark]
        onWatchedChanged: requestPaint()
        onPaint: {
            const c = getContext("2d")
            c.reset()
            c.lineWidth = 2
            c.lineJoin = "round"
            c.strokeStyle = Theme.main
            c.beginPath()
            let last = -10
            for (const p of chart.levels) {
                if (p.day - last > 4) c.moveTo(chart.xOf(p.day), chart.yOf(p.level))
                else c.lineTo(chart.xOf(p.day), chart.yOf(p.level))
                last = p.day
            }
            c.stroke()
            if (chart.step > 3) {
                c.fillStyle = Theme.main
                for (const p of chart.levels) {
                    c.beginPath()
                    c.arc(chart.xOf(p.day), chart.yOf(p.level), 2.5, 0, 7)
                    c.fill()
                }
            }
            c.fillStyle = Theme.nowText
            for (const b of chart.baths)
                c.fillRect(chart.xOf(b.day) - 1.5, chart.plotHeight + 4, 3, 12)
        }
    }
    Label {
        anchors { left: parent.left; bottom: parent.bottom; leftMargin: chart.plotLeft }
        role: "tiny"
        text: Words.dayYear(chart.from)
    }
    Label { anchors { right: parent.right; bottom: parent.bottom }
        role: "tiny"
        text: qsTr("today")
    }
    TapHandler {
        onTapped: point => {
            const day = Math.floor((point.position.x - chart.plotLeft) / chart.step)
            if (day >= 0 && day < chart.span)
                chart.dayTapped(DiaryModel.plusDays(chart.from, day))
        }
    }
}
