import QtQuick
import QtQuick.Layouts
import Firstdew

// The sessions of a course by their days. A tap on one to come moves it.
Wrap {
    id: dates
    property int site: 0
    property list<courseLine> sessions
    Layout.fillWidth: true
    spacing: Theme.small
    Repeater {
        model: dates.sessions.length // the days stay, and with them the keyboard's place, when one is moved
        ActionButton {
            id: date
            required property int index
            readonly property courseLine session: dates.sessions[index] ?? Empty.courseLine
            kind: session.done ? ButtonFace.Main : ButtonFace.Plain
            enabled: !session.done
            text: Appearance.phrases.dayShort(session.day)
            Accessible.name: session.done ? qsTr("%1, done").arg(text) : qsTr("%1, planned. Tap to move it.").arg(text)
            onClicked: {
                chooser.number = session.number
                chooser.day = session.day
                chooser.active = true
                chooser.shown.open()
            }
        }
    }
    Loader {
        id: chooser
        property int number: 0
        property int day: 0
        readonly property var shown: item
        active: false
        visible: false
        sourceComponent: DaySheetPick {
            title: qsTr("Move session %1").arg(chooser.number)
            first: Store.today
            last: Store.today + 366
            start: chooser.day
            onPicked: day => PlanModel.moveCourse(dates.site, chooser.number, day)
        }
    }
}
