pragma Singleton
import QtQuick
import Firstdew

// The words for every token of the record, and dates as this language writes them.
QtObject {
    readonly property string language: Look.language

    function place(t) { return { today: qsTr("Today"), bath: qsTr("Bath"), diary: qsTr("Diary"), plan: qsTr("Plan") }[t] }
    function site(t) { return { "hands": qsTr("Hands"), "feet": qsTr("Feet"), "hand-foot": qsTr("Hand and foot"), "armpits": qsTr("Armpits") }[t] || "" }
    function level(t) { return { dry: qsTr("Dry"), clammy: qsTr("Clammy"), wet: qsTr("Wet"), dripping: qsTr("Dripping") }[t] || "" }
    function levelAt(i) { return level(["dry", "clammy", "wet", "dripping"][i]) }
    function siteIs(s, l) { return s === "" ? level(l) : qsTr("%1: %2").arg(site(s)).arg(level(l)) }
    function circumstance(t) { return { heat: qsTr("Heat"), exertion: qsTr("Exertion"), stress: qsTr("Stress"), illness: qsTr("Illness") }[t] }
    function waveform(t) { return { direct: qsTr("Direct current"), pulsed: qsTr("Pulsed current") }[t] }
    function bath(s) {
        return { "hands": qsTr("Hand bath"), "feet": qsTr("Foot bath"), "hand-foot": qsTr("Hand and foot bath"), "armpits": qsTr("Pad session") }[s] || qsTr("Bath")
    }
    function stage(t) {
        return { "not-started": qsTr("Not started"), "first-course": qsTr("First course"), "review": qsTr("Review"),
                 "keeping-dry": qsTr("Keeping dry"), "first-dew": qsTr("First dew"), "sweating-again": qsTr("Sweating again"),
                 "paused": qsTr("Paused") }[t] || ""
    }
    function skin(t) {
        return { fine: qsTr("Fine"), redness: qsTr("Redness"), dryness: qsTr("Dryness"), itch: qsTr("Itching"), blister: qsTr("Blister"), burn: qsTr("Burn") }[t]
    }
    function comfort(t) {
        return { "nothing-felt": qsTr("Nothing felt"), comfortable: qsTr("Comfortable"), strong: qsTr("Strong"), unpleasant: qsTr("Unpleasant"), painful: qsTr("Painful") }[t] || ""
    }
    function course(t) {
        return { seven: qsTr("Seven baths in four weeks"), mwf: qsTr("Three a week for four weeks"), daily: qsTr("Five a week for two weeks"), prescribed: qsTr("By prescription") }[t]
    }
    function screening(t) {
        return { "pregnancy": qsTr("Are you pregnant, or might you be?"),
                 "powered-implant": qsTr("Do you have a pacemaker, a defibrillator or any other powered implant?"),
                 "metal-implant": qsTr("Do you have metal in a bone or joint?"),
                 "metal-iud": qsTr("Do you have a coil (intrauterine device) with metal in it?"),
                 "heart-rhythm-or-epilepsy": qsTr("Do you have a heart rhythm disorder or epilepsy?"),
                 "tumour-or-thrombosis": qsTr("Do you have a tumour or a blood clot at present?"),
                 "loss-of-sensation": qsTr("Have you lost feeling in the skin, or do you have a nerve disease there?"),
                 "eczema-at-site": qsTr("Is there eczema or inflamed skin where the treatment goes?"),
                 "large-wound": qsTr("Is there a wound too large to cover?"),
                 "fixed-braces": qsTr("Do you wear fixed dental braces?") }[t] || ""
    }
    function screeningShort(t) {
        return { "pregnancy": qsTr("pregnancy"), "powered-implant": qsTr("a powered implant"), "metal-implant": qsTr("a metal implant"),
                 "metal-iud": qsTr("a coil with metal"), "heart-rhythm-or-epilepsy": qsTr("a heart rhythm disorder or epilepsy"),
                 "tumour-or-thrombosis": qsTr("a tumour or blood clot"), "loss-of-sensation": qsTr("loss of feeling"),
                 "under-five": qsTr("an age under five"), "under-eighteen": qsTr("an age under eighteen"),
                 "eczema-at-site": qsTr("eczema or inflamed skin"), "large-wound": qsTr("a large wound"), "fixed-braces": qsTr("fixed braces") }[t] || ""
    }
    function weekday(t) {
        const i = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"].indexOf(t)
        return Qt.locale(language).dayName((i + 1) % 7, Locale.ShortFormat)
    }
    function bindingRow(t, who) {
        return { "adult-direct": qsTr("Common practice, adults"), "child-direct": qsTr("Common practice, children"),
                 "adult-pulsed": qsTr("Common practice, adults"), "child-pulsed": qsTr("Our own cautious choice, children"),
                 "care-sheet": qsTr("Set by %1").arg(who), "density": qsTr("Current per area of skin"),
                 "armpits-pulsed-only": qsTr("Not at the armpits"), "machine-lacks-waveform": qsTr("Your machine does not have it") }[t] || ""
    }

    /// The next action, as a heading.
    function advice(t, treatedAs) {
        const b = bath(treatedAs)
        return { "none": qsTr("Nothing to do now"), "do-course-session": qsTr("%1 today").arg(b),
                 "first-dew-top-up": qsTr("First dew: top up now"), "top-up-due": qsTr("A top-up is due"),
                 "watch": qsTr("Keep an eye on it"), "restart-course": qsTr("Time for a new course"),
                 "review": qsTr("The course is done"), "ask-prescriber": qsTr("Talk to your prescriber"),
                 "blocked": qsTr("No bath for now") }[t] || ""
    }

    /// One reason, as a sentence.
    function reason(r) {
        switch (r.kind) {
        case "no-course-yet": return qsTr("No first course has been set up yet.")
        case "course-session-today": return qsTr("Bath %1 of %2 of the first course is planned for today.").arg(r.number).arg(r.count)
        case "course-session-later": return qsTr("Bath %1 of %2 of the first course is planned for %3.").arg(r.number).arg(r.count).arg(dayLong(r.date))
        case "course-overrun": return r.days > 0 ? qsTr("The course runs %n day(s) past its four weeks.", "", r.days) : qsTr("The course no longer fits its time.")
        case "course-finished": return qsTr("All %n bath(s) of the course are done.", "", r.count)
        case "session-done-today": return qsTr("Today's bath is done.")
        case "clammy-at-rest": return qsTr("You noted dampness at rest on %1.").arg(dayLong(r.date))
        case "clammy-stirred": return qsTr("You noted dampness on %1, though the day may explain it.").arg(dayLong(r.date))
        case "clammy-twice": return qsTr("You noted dampness twice in a row, last on %1.").arg(dayLong(r.date))
        case "wet-at-rest": return qsTr("You noted full sweating at rest on %1.").arg(dayLong(r.date))
        case "return-likely": return qsTr("Dampness has probably begun (%1).").arg(percent(r.probability))
        case "dry-spell-usual": return r.number > 0
                ? qsTr("You usually stay dry %1 to %2 days. Today is day %3.").arg(r.from).arg(r.to).arg(r.number)
                : qsTr("You usually stay dry %1 to %2 days.").arg(r.from).arg(r.to)
        case "due-by-forecast": return qsTr("By %1 the chance of dampness reached %2.").arg(dayLong(r.date)).arg(percent(r.probability))
        case "no-check-in-for": return qsTr("There has been no check-in for %n day(s).", "", r.days)
        case "screening-stops": return qsTr("You answered yes to %1. No bath until a clinician has cleared it.").arg(screeningShort(r.row))
        case "screening-asks": return qsTr("Because of %1, ask a clinician first and note who said yes.").arg(screeningShort(r.row))
        case "screening-stale": return r.days > 0 ? qsTr("The health questions were last answered %n day(s) ago.", "", r.days) : qsTr("The health questions have not been answered yet.")
        case "machine-unsuited": return qsTr("Your machine has only direct current, which must not be used at the armpits.")
        case "no-response": return qsTr("The score did not get better. There are other treatments; your prescriber can advise.")
        case "response-good": return qsTr("The score is better by one step.")
        case "response-strong": return qsTr("The score is better by two steps or more.")
        case "paused-by-person": return qsTr("You paused this.")
        case "put-off": return r.date === Store.today ? qsTr("You put it off to this evening.") : r.date > Store.today ? qsTr("You put it off to %1.").arg(dayLong(r.date)) : qsTr("You chose not to top up this time.")
        }
        return ""
    }

    function percent(p) { return qsTr("%1 %").arg(Math.round(p * 100)) }
    function date(iso) { const p = iso.split("-"); return new Date(Number(p[0]), Number(p[1]) - 1, Number(p[2])) }
    function written(day, format) { return day.toLocaleDateString(Qt.locale(language), format) }
    function dayLong(iso) {
        if (!iso) return ""
        if (iso === Store.today) return qsTr("today")
        if (iso === DiaryModel.plusDays(Store.today, -1)) return qsTr("yesterday")
        if (iso === DiaryModel.plusDays(Store.today, 1)) return qsTr("tomorrow")
        return written(date(iso), qsTr("d MMMM", "date format"))
    }
    function dayFull(iso) { return iso ? written(date(iso), qsTr("dddd, d MMMM", "date format")) : "" }
    function dayYear(iso) { return iso ? written(date(iso), Locale.ShortFormat) : "" }
    function dayNumber(iso) { return written(date(iso), "d") }
    function dayLetter(iso) { return written(date(iso), "ddd") }
    function monthShort(iso) { return written(date(iso), "MMM") }
    function clock(minutes) { return new Date(2000, 0, 1, Math.floor(minutes / 60), minutes % 60).toLocaleTimeString(Qt.locale(language), "HH:mm") }
    function milliamps(x) { return qsTr("%1 mA").arg(Number(x).toLocaleString(Qt.locale(language), "f", x % 1 === 0 ? 0 : 1)) }
}
