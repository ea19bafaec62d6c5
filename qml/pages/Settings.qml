import QtQuick
import QtQuick.Layouts
import Firstdew

// Everything that is set once and is not the plan of the treatment.
Frame {
    id: page
    canGoBack: true
    title: qsTr("Settings")
    readonly property machineKit machine: PlanModel.machine
    readonly property reminderPlan reminders: PlanModel.reminders
    function names(people: var): string { return Appearance.phrases.listed(people.map(p => p.name !== "" ? p.name : qsTr("Me"))) }
    function soundName(sound: int): string {
        switch (sound) {
        case SoundChoice.Voice: return qsTr("Voice only")
        case SoundChoice.Tones: return qsTr("Tones only")
        case SoundChoice.None: return qsTr("Vibration only")
        default: return qsTr("Voice and tones")
        }
    }
    PlanRow {
        title: qsTr("Machine and kit")
        value: !page.machine.known ? qsTr("Not set") : page.machine.sessionsLeft === 0 ? qsTr("Batteries: probably used up") : page.machine.sessionsLeft > 0 ? qsTr("Batteries: about %n session(s) left", "", page.machine.sessionsLeft) : page.machine.name
        onClicked: Router.page(Part.MachinePagePart)
    }
    PlanRow {
        title: qsTr("Reminders")
        value: page.reminders.on ? qsTr("Check-in %1, quiet %2 to %3").arg(Appearance.phrases.clock(page.reminders.checkIn)).arg(Appearance.phrases.clock(page.reminders.quietFrom)).arg(Appearance.phrases.clock(page.reminders.quietUntil)) : qsTr("Off")
        onClicked: Router.page(Part.RemindersPagePart)
    }
    PlanRow {
        title: qsTr("Voice and tones")
        value: page.soundName(PlanModel.sound)
        onClicked: Router.page(Part.SoundPagePart)
    }
    PlanRow {
        title: qsTr("People")
        value: page.names(Store.people)
        onClicked: Router.page(Part.PeoplePart)
    }
    // The app itself and what it keeps.
    aside: [
        PlanRow {
            title: qsTr("Appearance and language")
            value: Appearance.theme === ThemeChoice.Dark ? qsTr("Dark") : Appearance.theme === ThemeChoice.Light ? qsTr("Light") : qsTr("Match phone")
            onClicked: Router.page(Part.SettingsPagePart)
        },
        PlanRow {
            title: qsTr("Move to another phone")
            value: qsTr("Take everything with you")
            onClicked: Router.page(Part.MovePagePart)
        },
        PlanRow {
            title: qsTr("Back-up, export and delete")
            value: ""
            onClicked: Router.page(Part.KeepPagePart)
        },
        TickRow {
            text: qsTr("Ask for this phone's lock before showing the diary")
            checked: AppLock.on
            enabled: AppLock.available || AppLock.on
            onClicked: AppLock.change(qsTr("Firstdew: switch the app lock on or off"))
        },
        Label {
            role: Label.Small
            Layout.fillWidth: true
            Layout.topMargin: -Theme.gap
            text: AppLock.failed ? qsTr("This phone could not ask for its lock. Nothing was changed.")
                : AppLock.available ? qsTr("When Firstdew starts, and when you come back after a minute. A session is never locked.")
                : AppLock.on ? qsTr("This phone has no lock that Firstdew can ask for: your diary opens without it.")
                : qsTr("For this, the phone needs a lock of its own that Firstdew can ask for.")
        },
        TickRow { text: qsTr("I teach others"); checked: CaseloadModel.teaches; onClicked: CaseloadModel.teaches = !CaseloadModel.teaches },
        PlanRow {
            visible: CaseloadModel.teaches
            title: qsTr("Caseload")
            value: qsTr("Who needs a call, and care sheets for them")
            onClicked: Router.page(Part.CaseloadPart)
        },
        PlanRow {
            title: qsTr("About and cautions")
            value: qsTr("Version %1").arg(Appearance.version)
            onClicked: Router.page(Part.AboutPart)
        }
    ]
}
