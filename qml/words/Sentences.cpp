#include "words/Sentences.h"

#include "outlook/UsualDays.h"
#include "words/Prompts.h"

#include <QCoreApplication>
#include <cmath>

namespace firstdew::words {

namespace {

/// Marks and translates in one; the tool that gathers texts reads the class name here.
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

QString treatNow() { return Words::tr("Treated now, one or two sessions are usually enough."); }

QString putOff(std::optional<LocalDate> until, LocalDate today)
{
    if (!until || *until < today)
        return Words::tr("Skipped this time.");
    return *until == today ? Words::tr("You put it off to this evening.")
                           : Words::tr("You put it off to %1.").arg(nearDay(*until, today));
}

/// What stands in the way of a session.
QString barSentence(const situation::Reason& r, const QString& date)
{
    using situation::ReasonKind;
    const QString row = r.row ? screeningShort(*r.row) : QString();
    switch (r.kind) {
    case ReasonKind::ScreeningStops:
        return Words::tr("You answered yes to %1. No session until a clinician has approved treatment.").arg(row);
    case ReasonKind::ScreeningAsks:
        return Words::tr("Because of %1, ask a clinician first and note who said yes.").arg(row);
    case ReasonKind::ScreeningStale:
        return r.days > 0 ? Words::tr("The health questions were last answered %n day(s) ago.", nullptr, r.days)
                          : Words::tr("The health questions have not been answered yet.");
    case ReasonKind::SkinBars:
        return Words::tr("%1, noted %2. No session here until a clinician has looked at it.")
            .arg(skinName(r.finding.value_or(SkinFinding::Burn)), date);
    case ReasonKind::BirthDateMissing:
        return Words::tr("Enter the date of birth first: the limit of the current depends on it.");
    case ReasonKind::MachineUnsuited:
        return Words::tr("Your machine has only direct current, which must not be used at the armpits.");
    case ReasonKind::PrescribedLacks:
        return Words::tr("Your care sheet prescribes a current that your machine does not have. Ask who wrote it.");
    case ReasonKind::MachineHasNone: return Words::tr("Enter first which current your machine has.");
    case ReasonKind::EnoughToday:
        return Words::tr(
            "It is enough for today. Leave the machine off; the next session is for tomorrow at the earliest.");
    default: return {};
    }
}

/// The session was planned for `planned`, and stands now so many days later.
QString missed(int number, LocalDate planned, int daysLater, LocalDate today)
{
    const LocalDate now = planned + daysLater;
    const QString was = fullDay(planned);
    return now == today ? Words::tr("You missed session %1 on %2. It is now today.").arg(number).arg(was)
                        : Words::tr("You missed session %1 on %2. It is now on %3.").arg(number).arg(was, fullDay(now));
}

QString usuallyDry(const situation::Reason& r)
{
    const QString from = number(r.from);
    const int to = static_cast<int>(std::lround(r.to));
    return r.number > 0 ? Words::tr("You usually stay dry %1 to %n day(s). Today is day %2.", nullptr, to)
                              .arg(from)
                              .arg(r.number)
                        : Words::tr("You usually stay dry %1 to %n day(s).", nullptr, to).arg(from);
}

QString crowded(int inARow, int daysPast)
{
    const QString out = Words::tr("The plan puts %n session(s) on consecutive days.", nullptr, inARow);
    return daysPast == 0
               ? out
               : out + QLatin1Char(' ') +
                     Words::tr("With a day between them, it takes %n day(s) more than planned.", nullptr, daysPast);
}

QString beforeLeaving(LocalDate from, int days, LocalDate today)
{
    const QString away = days == 1 ? Words::tr("You are away on %1.").arg(dayAndMonth(from, today))
                                   : Words::tr("You are away from %1 to %2.")
                                         .arg(dayAndMonth(from, today), dayAndMonth(from + (days - 1), today));
    return away + QLatin1Char(' ') +
           Words::tr("Dampness may come back in that time. A top-up before you leave is worth it.");
}

} // namespace

QString placeName(const QString& place)
{
    if (place == QLatin1String("today"))
        return Words::tr("Today");
    if (place == QLatin1String("bath"))
        return Words::tr("Session");
    return place == QLatin1String("diary") ? Words::tr("Diary") : Words::tr("Plan");
}

QString headline(const situation::SiteSituation& site)
{
    using situation::Advice;
    const bool leaving = !site.reasons.empty() && site.reasons.front().kind == situation::ReasonKind::BeforeLeaving;
    switch (site.advice) {
    case Advice::None: return Words::tr("Nothing to do now");
    case Advice::DoCourseSession: return Words::tr("%1 today").arg(bathName(site.treatedAs));
    case Advice::FirstDewTopUp: return Words::tr("First dew: top up now");
    case Advice::TopUpDue: return leaving ? Words::tr("Top up before you leave") : Words::tr("A top-up is due");
    case Advice::Watch: return Words::tr("Keep an eye on it");
    case Advice::RestartCourse: return Words::tr("Time for a new course");
    case Advice::Review: return Words::tr("The course is done");
    case Advice::AskPrescriber: return Words::tr("Talk to your prescriber");
    case Advice::Blocked: return Words::tr("No session for now");
    case Advice::TryFurther: return Words::tr("Not better yet");
    }
    return {};
}

QString reasonSentence(const situation::Reason& r, LocalDate today)
{
    using situation::ReasonKind;
    const QString date = r.date ? nearDay(*r.date, today) : QString();
    switch (r.kind) {
    case ReasonKind::NoCourseYet: return Words::tr("No first course has been set up yet.");
    case ReasonKind::CourseSessionToday:
        return Words::tr("Session %1 of %2 of the first course is planned for today.").arg(r.number).arg(r.count);
    case ReasonKind::CourseSessionLater:
        return Words::tr("Session %1 of %2 of the first course is planned for %3.")
            .arg(r.number)
            .arg(r.count)
            .arg(date);
    case ReasonKind::CourseOverrun:
        return r.days > 0 ? Words::tr("The course will end %n day(s) late.", nullptr, r.days)
                          : Words::tr("The course can no longer finish in time.");
    case ReasonKind::CourseFinished: return Words::tr("All %n session(s) of the course are done.", nullptr, r.count);
    case ReasonKind::SessionDoneToday: return Words::tr("Today's session is done.");
    case ReasonKind::StoppedCounts: return Words::tr("Today's session was stopped. Most of it was done, so it counts.");
    case ReasonKind::ClammyAtRest:
        return Words::tr("Dampness at rest, noted %1.").arg(date) + QLatin1Char(' ') + treatNow();
    case ReasonKind::ClammyStirred:
        return Words::tr("Dampness noted %1, though the day may explain it. Check again tomorrow.").arg(date);
    case ReasonKind::ClammyTwice:
        return Words::tr("Dampness twice in a row, last noted %1.").arg(date) + QLatin1Char(' ') + treatNow();
    case ReasonKind::WetAtRest:
        return Words::tr("Full sweating at rest, noted %1. It usually needs a new course.").arg(date);
    case ReasonKind::WetOnce:
        return Words::tr("Wet at rest, noted %1. One report is not enough for a new course.").arg(date) +
               QLatin1Char(' ') + treatNow();
    case ReasonKind::ReturnLikely: return Words::tr("Dampness has probably begun.");
    case ReasonKind::DrySpellUsual: return usuallyDry(r);
    case ReasonKind::DueByForecast:
        if (r.date && *r.date < today)
            return Words::tr("A top-up has been due since %1.").arg(date);
        return Words::tr("You may get clammy by tomorrow. A top-up now is worth it.");
    case ReasonKind::NoCheckInFor: return Words::tr("There has been no check-in for %n day(s).", nullptr, r.days);
    case ReasonKind::ScreeningStops:
    case ReasonKind::ScreeningAsks:
    case ReasonKind::ScreeningStale:
    case ReasonKind::SkinBars:
    case ReasonKind::BirthDateMissing:
    case ReasonKind::MachineUnsuited:
    case ReasonKind::PrescribedLacks:
    case ReasonKind::MachineHasNone:
    case ReasonKind::EnoughToday: return barSentence(r, date);
    case ReasonKind::NotBetterYet:
        return Words::tr("After %n session(s) it is too early to say that it does not help: for many people it takes "
                         "ten to twelve. First check how you do it.",
                         nullptr, r.count);
    case ReasonKind::ScoreNeeded:
        return Words::tr("Say how much the sweating bothers you now. Then the app can tell whether the course helped.");
    case ReasonKind::NoResponse:
        return Words::tr("The score did not get better. There are other treatments; your prescriber can advise.");
    case ReasonKind::ResponseGood: return Words::tr("The score is better by one step.");
    case ReasonKind::ResponseStrong: return Words::tr("The score is better by two steps or more.");
    case ReasonKind::PausedByPerson: return Words::tr("You paused this.");
    case ReasonKind::PutOff: return putOff(r.date, today);
    case ReasonKind::CourseSessionMissed: return missed(r.number, r.date.value_or(today), r.days, today);
    case ReasonKind::CourseCrowded: return crowded(r.count, r.days);
    case ReasonKind::BeforeLeaving: return beforeLeaving(r.date.value_or(today), r.days, today);
    case ReasonKind::Comparing:
        return Words::tr("You compare session lengths: pair %1 of %2. The forecast calls for no top-up meanwhile; a "
                         "clammy day at rest does.")
            .arg(r.number)
            .arg(r.count);
    case ReasonKind::AwayNow: return Words::tr("You are away. The call for a session comes when you are back.");
    }
    return {};
}

QString drySpellSentence(const outlook::DrySpells& spells)
{
    const auto usual = outlook::usualDays(spells);
    return Words::tr(
               "Half of your dry spells last longer than %n day(s); four in five are over between day %1 and day %2.",
               nullptr, usual.median)
        .arg(usual.from)
        .arg(usual.to);
}

QString reportSentence(const outlook::DrySpells& spells)
{
    const auto begun = [](const outlook::StateProbability& p) { return percent(1 - p.dry); };
    if (!spells.reportedToday)
        return Words::tr("Going by your check-ins so far, the chance that dampness has begun is %1. The curve above "
                         "does not include them.")
            .arg(begun(spells.now));
    if (begun(spells.now) == begun(spells.beforeReport))
        return Words::tr("The chance that dampness has begun is %1. Today's report did not change it.")
            .arg(begun(spells.now));
    return Words::tr("The chance that dampness has begun is %1. Before today's report it was %2.")
        .arg(begun(spells.now), begun(spells.beforeReport));
}

QString reminderTitle(const situation::Reminder& r)
{
    using situation::ReminderKind;
    const QString site = r.site ? siteName(*r.site) : QString();
    switch (r.kind) {
    case ReminderKind::CheckIn: return Words::tr("%1: dry or clammy today?").arg(site);
    case ReminderKind::CourseSession: return Words::tr("%1: session today").arg(site);
    case ReminderKind::TopUpDue: return Words::tr("%1: a top-up is due").arg(site);
    case ReminderKind::FirstDew: return Words::tr("%1: first dew").arg(site);
    case ReminderKind::SkinCheck: return Words::tr("%1: look at the skin").arg(site);
    case ReminderKind::Cells: return Words::tr("New batteries soon");
    case ReminderKind::Screening: return Words::tr("Health questions are due");
    case ReminderKind::HdssDue: return Words::tr("%1: how much does it bother you?").arg(site);
    case ReminderKind::PrescriberReview: return Words::tr("Show your prescriber");
    case ReminderKind::BackUp: return Words::tr("Time for a back-up");
    }
    return {};
}

QString reminderText(const situation::Reminder& r)
{
    using situation::ReminderKind;
    switch (r.kind) {
    case ReminderKind::CheckIn: return Words::tr("One tap answers. Or tap here to open Firstdew.");
    case ReminderKind::CourseSession: return Words::tr("The first course works if you stick to it.");
    case ReminderKind::TopUpDue: return Words::tr("Before the dampness comes back.");
    case ReminderKind::FirstDew: return treatNow();
    case ReminderKind::SkinCheck: return Words::tr("The day after a session: any redness, blister or burn?");
    case ReminderKind::Cells: return Words::tr("The set in the machine lasts about one more session.");
    case ReminderKind::Screening: return Words::tr("Before the next session, as every four weeks.");
    case ReminderKind::HdssDue: return Words::tr("One question, four answers.");
    case ReminderKind::PrescriberReview: return Words::tr("The summary is two taps away.");
    case ReminderKind::BackUp: return Words::tr("An encrypted copy, kept where you choose.");
    }
    return {};
}

std::map<std::string, std::string> noticeWords()
{
    const auto say = [](const QString& s) { return s.toStdString(); };
    return {{"channel-reminders", say(Words::tr("Reminders"))},
            {"channel-bath", say(Words::tr("Running session"))},
            {"may-come-late", say(Words::tr("Reminders may be a few minutes late on this phone."))},
            {"missed-title", say(Words::tr("While your phone was off"))},
            {"missed-text", say(Words::tr("There were reminders. Open Firstdew to see what matters now."))},
            {"lost-title", say(Words::tr("Turn the current to zero"))},
            {"lost-text", say(Words::tr("Firstdew has stopped leading your session. Turn the current to zero, switch "
                                        "the machine off, then open Firstdew."))},
            {"locked", say(Words::tr("Something to look at today"))},
            {"widget-done", say(Words::tr("Done for today"))},
            {"dry", say(levelName(Level::Dry))},
            {"clammy", say(levelName(Level::Clammy))},
            {"wet", say(levelName(Level::Wet))},
            {"dripping", say(levelName(Level::Dripping))}};
}

namespace {

/// By what there is to be taken out or off; with hands under water they are out by then.
QString finishName(protocol::Prompt prompt)
{
    switch (prompt) {
    case protocol::Prompt::TakePadsOff: return Words::tr("Pads off");
    case protocol::Prompt::DryAll: return Words::tr("Dry off");
    default: return Words::tr("Lift out");
    }
}

} // namespace

QString stepName(const protocol::Step& step)
{
    using protocol::StepKind;
    switch (step.kind) {
    case StepKind::CheckList: return Words::tr("Check list");
    case StepKind::SwitchOn: return Words::tr("Switch on");
    case StepKind::Announce: return Words::tr("Hands in");
    case StepKind::Raise: return Words::tr("Raise slowly");
    case StepKind::Hold: return Words::tr("Hold still");
    case StepKind::Lower: return Words::tr("Lower to zero");
    case StepKind::HandsOut: return Words::tr("Hands out");
    case StepKind::Swap: return Words::tr("Swap polarity");
    case StepKind::MoveSide: return Words::tr("Change side");
    case StepKind::Finish: return finishName(step.prompt);
    }
    return {};
}

namespace {

QString swapSentence(Site site, PolaritySwap swap)
{
    const bool pads = site == Site::Armpits;
    if (swap == PolaritySwap::Switch)
        return pads ? Words::tr("Current at zero? Soak the pads again and flip the polarity switch.")
                    : Words::tr("Current at zero? Flip the polarity switch.");
    if (!pads)
        return Words::tr("Current at zero? Swap the two leads.");
    return swap == PolaritySwap::Pads
               ? Words::tr("Current at zero? Soak the pads again and exchange them, right with left.")
               : Words::tr("Current at zero? Soak the pads again and swap the two leads.");
}

} // namespace

QString stepSentence(const protocol::Step& step, const protocol::ScriptRequest& request)
{
    using protocol::Prompt;
    using protocol::StepKind;
    const bool under = request.way == WayOfWorking::HandsUnder;
    const bool pads = request.site == Site::Armpits;
    // In practice nobody is told to switch on, or to turn anything up.
    if (step.prompt == Prompt::PracticeSwitchOn || step.prompt == Prompt::PracticeRaise ||
        step.prompt == Prompt::PracticeLower)
        return promptText(step.prompt);
    switch (step.kind) {
    case StepKind::CheckList: return Words::tr("Machine off, current at zero. Confirm the list.");
    case StepKind::SwitchOn:
        return request.waveform == Waveform::Direct
                   ? Words::tr("Switch the machine on. Meter at zero, set to direct current?")
                   : Words::tr("Switch the machine on. Meter at zero, light for pulsed current on?");
    case StepKind::Announce: return Words::tr("Put your hands in now and keep them still.");
    case StepKind::Raise:
        return under ? Words::tr("Raise the current slowly with the remote.")
                     : Words::tr("Raise the current slowly to a comfortable level.");
    case StepKind::Hold:
        return pads ? Words::tr("Hold still. Both pads stay where they are.")
                    : Words::tr("Hold still. Everything stays under water.");
    case StepKind::Lower:
        return under ? Words::tr("Lower the current slowly to zero with the remote.")
                     : Words::tr("Lower the current slowly to zero.");
    case StepKind::HandsOut:
        return step.prompt == protocol::Prompt::HandsOutLast
                   ? Words::tr("Meter at zero? Only then hands out. Dry them, machine off, and tap.")
                   : Words::tr("Meter at zero? Only then hands out. Dry them and tap.");
    case StepKind::Swap: return swapSentence(request.site, request.swap);
    case StepKind::MoveSide: return Words::tr("Current at zero? Change to the other side.");
    case StepKind::Finish:
        return pads    ? Words::tr("Machine off, then take the pads off. Dry skin and kit.")
               : under ? Words::tr("Dry skin and kit.")
                       : Words::tr("Machine off. Then take your hands or feet out. Dry your skin and the kit.");
    }
    return {};
}

QStringList cautions()
{
    return {
        Words::tr("Firstdew is not a medical device and makes no diagnosis. Follow your machine's instructions, local "
                  "rules and your clinician."),
        Words::tr(
            "Never go above the limits. It may prickle; it must never hurt. If it hurts, lower the current and stop."),
        Words::tr("Don't treat if any health question tells you to stop."),
        Words::tr("Treat children only with medical advice and an adult beside them."),
        Words::tr("Burns, blisters, faintness or palpitations: stop and seek help."),
        Words::tr("Keep leads and water away from mains electricity."),
        Words::tr("Use only a machine made for this treatment, with what came with it, to drive the current.")};
}

} // namespace firstdew::words
