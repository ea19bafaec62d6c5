import QtQuick
import QtQuick.Layouts
import Firstdew

// A care sheet, made by taps; only names and what is said in own words are typed.
Frame {
    id: page
    canGoBack: true
    personal: false
    title: qsTr("Make a care sheet")
    readonly property bool armpits: has(SheetModel.sites, Site.Armpits)
    readonly property var sayings: [qsTr("Call me before you go on."), qsTr("Check how you do it with Firstdew, do three more sessions, then call me."), qsTr("See your doctor about other treatments.")]
    function has(values: var, value: int): bool { return values.includes(value) }
    function lines(texts: var): string { return texts.join("\n") }
    function plans(): var {
        let out = [{ value: -1, text: qsTr("None") }]
        for (const plan of [CourseTemplate.Seven, CourseTemplate.MonWedFri, CourseTemplate.Daily])
            out.push({ value: plan, text: Appearance.phrases.course(plan) })
        out.push({ value: CourseTemplate.Prescribed, text: qsTr("Days I choose") })
        return out
    }
    component Problem: Label { visible: text !== ""; color: Theme.danger; Layout.fillWidth: true }

    Card {
        Heading { text: qsTr("For whom") }
        Field { id: name; label: qsTr("Name"); hint: qsTr("Optional. It stands on the paper alone, not in the code."); Component.onCompleted: text = SheetModel.name; onEdited: t => SheetModel.name = t }
        OneOf { label: qsTr("Age"); options: [{ value: AgeGroup.Adult, text: qsTr("Adult") }, { value: AgeGroup.Child, text: qsTr("Under 18") }]; value: SheetModel.age; onChosen: v => SheetModel.age = v }
        Label { role: Label.Small; text: qsTr("Where to treat"); Layout.fillWidth: true }
        SomeOf { values: Appearance.phrases.sites; name: s => Appearance.phrases.treated(s); chosen: SheetModel.sites; onToggled: now => SheetModel.sites = now }
        Problem { text: SheetModel.sitesProblem }
        Label { visible: text !== ""; role: Label.Small; Layout.fillWidth: true; text: page.lines(SheetModel.phases) }
    }
    Card {
        Heading { text: qsTr("Current") }
        OneOf {
            options: [{ value: -1, text: qsTr("As it suits the person") }, { value: Waveform.Direct, text: Appearance.phrases.waveform(Waveform.Direct) }, { value: Waveform.Pulsed, text: Appearance.phrases.waveform(Waveform.Pulsed) }]
            question: qsTr("Current")
            value: SheetModel.waveform
            onChosen: v => SheetModel.waveform = v
        }
        Problem { text: SheetModel.waveformProblem }
        Stepper { visible: SheetModel.waveform !== Waveform.Pulsed; label: qsTr("Limit, direct current"); shown: SheetModel.direct.shown; onLess: SheetModel.stepDirect(-1); onMore: SheetModel.stepDirect(1) }
        Problem { text: SheetModel.direct.problem }
        Stepper { visible: SheetModel.waveform !== Waveform.Direct; label: qsTr("Limit, pulsed current"); shown: SheetModel.pulsed.shown; onLess: SheetModel.stepPulsed(-1); onMore: SheetModel.stepPulsed(1) }
        Problem { text: SheetModel.pulsed.problem }
        Stepper { visible: SheetModel.waveform !== -1; label: qsTr("Level to begin with at home"); shown: SheetModel.level.shown; onLess: SheetModel.stepLevel(-1); onMore: SheetModel.stepLevel(1) }
        Problem { text: SheetModel.level.problem }
        Stepper { visible: page.armpits; label: qsTr("Size of one armpit pad"); shown: SheetModel.pad.shown; onLess: SheetModel.stepPad(-1); onMore: SheetModel.stepPad(1) }
        Problem { text: SheetModel.pad.problem }
    }
    Card {
        Heading { text: qsTr("Course") }
        Repeater {
            model: page.plans()
            ChoiceRow { required property var modelData; text: modelData.text; checked: SheetModel.plan === modelData.value; onClicked: SheetModel.plan = modelData.value }
        }
        Label { visible: SheetModel.plan === CourseTemplate.Prescribed; role: Label.Small; Layout.fillWidth: true; text: qsTr("Tap the days of the sessions. Day 1 is the first.") }
        Wrap {
            visible: SheetModel.plan === CourseTemplate.Prescribed
            Layout.fillWidth: true
            spacing: Theme.small
            Repeater {
                model: SheetModel.lastDay
                Chip {
                    required property int index
                    text: Appearance.phrases.number(index + 1, 0)
                    Accessible.name: qsTr("Day %1").arg(text)
                    checked: page.has(SheetModel.days, index + 1)
                    onClicked: SheetModel.toggleDay(index + 1)
                }
            }
        }
        ActionButton { visible: SheetModel.plan === CourseTemplate.Prescribed; kind: ButtonFace.Quiet; Layout.fillWidth: Theme.largeText; text: qsTr("Another week"); onClicked: SheetModel.moreDays() }
        Problem { text: SheetModel.daysProblem }
        DayPick { visible: SheetModel.plan !== -1; label: qsTr("First session, for the dates on paper"); given: SheetModel.start !== 0; day: SheetModel.start; first: SheetModel.given; onPicked: day => SheetModel.start = day }
        ActionButton { visible: SheetModel.plan !== -1 && SheetModel.start !== 0; kind: ButtonFace.Quiet; Layout.fillWidth: Theme.largeText; text: qsTr("Leave the dates open"); onClicked: SheetModel.start = 0 }
    }
    Card {
        Heading { text: qsTr("Afterwards") }
        DayPick { label: qsTr("Review"); given: SheetModel.review !== 0; day: SheetModel.review; first: SheetModel.given; onPicked: day => SheetModel.review = day }
        Problem { text: SheetModel.reviewProblem }
        ActionButton { visible: SheetModel.review !== 0; kind: ButtonFace.Quiet; Layout.fillWidth: Theme.largeText; text: qsTr("Without a review"); onClicked: SheetModel.review = 0 }
        Label { role: Label.Small; text: qsTr("If the course does not help"); Layout.fillWidth: true }
        Repeater {
            model: page.sayings
            ChoiceRow { required property string modelData; text: modelData; checked: SheetModel.atNoResponse.shown === modelData; onClicked: { own.text = ""; SheetModel.setAtNoResponse(checked ? "" : modelData) } }
        }
        Field { id: own; label: qsTr("In your own words"); problem: SheetModel.atNoResponse.problem; Component.onCompleted: if (!page.sayings.includes(SheetModel.atNoResponse.shown)) text = SheetModel.atNoResponse.shown; onEdited: t => SheetModel.setAtNoResponse(t) }
    }
    Card {
        Heading { text: qsTr("From whom") }
        Field { label: qsTr("Your name"); problem: SheetModel.who.problem; Component.onCompleted: text = SheetModel.who.shown; onEdited: t => SheetModel.setWho(t) }
        Field { label: qsTr("Whom to call, with a number"); problem: SheetModel.contact.problem; Component.onCompleted: text = SheetModel.contact.shown; onEdited: t => SheetModel.setContact(t) }
        Field { label: qsTr("Notes"); hint: qsTr("Optional"); problem: SheetModel.notes.problem; Component.onCompleted: text = SheetModel.notes.shown; onEdited: t => SheetModel.setNotes(t) }
    }
    Card {
        Heading { text: qsTr("Time for the hands") }
        Label { role: Label.Small; Layout.fillWidth: true; text: qsTr("How long the voice waits where both hands are in the water.") }
        Stepper { label: qsTr("To turn up"); shown: SheetModel.raise.shown; onLess: SheetModel.stepRaise(-1); onMore: SheetModel.stepRaise(1) }
        Problem { text: SheetModel.raise.problem }
        Stepper { label: qsTr("To turn down"); shown: SheetModel.lower.shown; onLess: SheetModel.stepLower(-1); onMore: SheetModel.stepLower(1) }
        Problem { text: SheetModel.lower.problem }
        Stepper { label: qsTr("To swap"); shown: SheetModel.swapping.shown; onLess: SheetModel.stepSwapping(-1); onMore: SheetModel.stepSwapping(1) }
        Problem { text: SheetModel.swapping.problem }
    }
    dock: ActionButton { kind: ButtonFace.Now; text: qsTr("Hand it over"); Layout.fillWidth: true; enabled: SheetModel.ready; onClicked: Router.page(Part.HandOverPagePart) }
}
