#include "words/Sentences.h"

#include <QCoreApplication>
#include <QLocale>

namespace firstdew::words
{

namespace
{

/// Marks and translates in one; lupdate reads the class name here.
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

QString days(double value)
{
    return QLocale().toString(value, 'f', 0);
}

} // namespace

QString siteWord(DiarySite site)
{
    switch (site) {
    case DiarySite::Hands: return Words::tr("hands", "in a sentence");
    case DiarySite::Feet: return Words::tr("feet", "in a sentence");
    case DiarySite::Armpits: return Words::tr("armpits", "in a sentence");
    }
    return {};
}

QDate toQDate(LocalDate date)
{
    return QDate(date.year(), date.month(), date.day());
}

LocalDate fromQDate(QDate date)
{
    return LocalDate::of(date.year(), date.month(), date.day()).value_or(LocalDate());
}

QString dayAndMonth(LocalDate date, LocalDate today)
{
    const QString format = date.year() == today.year() ? Words::tr("d MMMM", "day and month") : Words::tr("d MMMM yyyy", "day, month and year");
    return QLocale().toString(toQDate(date), format);
}

QString nearDay(LocalDate date, LocalDate today)
{
    switch (date - today) {
    case 0: return Words::tr("today");
    case 1: return Words::tr("tomorrow");
    case -1: return Words::tr("yesterday");
    default: break;
    }
    const QString format = date.year() == today.year() ? Words::tr("dddd d MMMM", "weekday, day and month")
                                                       : Words::tr("d MMMM yyyy", "day, month and year");
    return QLocale().toString(toQDate(date), format);
}

QString siteName(DiarySite site)
{
    switch (site) {
    case DiarySite::Hands: return Words::tr("Hands");
    case DiarySite::Feet: return Words::tr("Feet");
    case DiarySite::Armpits: return Words::tr("Armpits");
    }
    return {};
}

QString siteName(Site site)
{
    switch (site) {
    case Site::Hands: return Words::tr("Both hands");
    case Site::Feet: return Words::tr("Both feet");
    case Site::HandFoot: return Words::tr("One hand and foot");
    case Site::Armpits: return Words::tr("Armpits");
    }
    return {};
}

QString levelName(Level level)
{
    switch (level) {
    case Level::Dry: return Words::tr("Dry");
    case Level::Clammy: return Words::tr("Clammy");
    case Level::Wet: return Words::tr("Wet");
    case Level::Dripping: return Words::tr("Dripping");
    }
    return {};
}

QString circumstanceName(Circumstance circumstance)
{
    switch (circumstance) {
    case Circumstance::Heat: return Words::tr("Heat");
    case Circumstance::Exertion: return Words::tr("Exertion");
    case Circumstance::Stress: return Words::tr("Stress");
    case Circumstance::Illness: return Words::tr("Illness");
    }
    return {};
}

QString waveformName(Waveform waveform)
{
    return waveform == Waveform::Direct ? Words::tr("Direct current") : Words::tr("Pulsed current");
}

QString sideName(Side side)
{
    return side == Side::Right ? Words::tr("Right side") : Words::tr("Left side");
}

QString wayName(WayOfWorking way)
{
    switch (way) {
    case WayOfWorking::FreeHand: return Words::tr("I have a hand free");
    case WayOfWorking::Helper: return Words::tr("Somebody helps me");
    case WayOfWorking::HandsUnder: return Words::tr("Both hands under water");
    }
    return {};
}

QString wayHint(WayOfWorking way)
{
    switch (way) {
    case WayOfWorking::FreeHand: return Words::tr("You tap each step yourself.");
    case WayOfWorking::Helper: return Words::tr("The other person taps and enters the readings.");
    case WayOfWorking::HandsUnder: return Words::tr("Nothing to touch. Every step is spoken ahead; a tap anywhere stops.");
    }
    return {};
}

QString comfortName(Comfort comfort)
{
    switch (comfort) {
    case Comfort::NothingFelt: return Words::tr("Felt nothing");
    case Comfort::Comfortable: return Words::tr("Comfortable");
    case Comfort::Strong: return Words::tr("Strong");
    case Comfort::Unpleasant: return Words::tr("Unpleasant");
    case Comfort::Painful: return Words::tr("Painful");
    }
    return {};
}

QString skinName(SkinFinding finding)
{
    switch (finding) {
    case SkinFinding::Fine: return Words::tr("Fine");
    case SkinFinding::Redness: return Words::tr("Redness");
    case SkinFinding::Dryness: return Words::tr("Dry skin");
    case SkinFinding::Itch: return Words::tr("Itch");
    case SkinFinding::Blister: return Words::tr("Blister");
    case SkinFinding::Burn: return Words::tr("Burn");
    }
    return {};
}

QString stageName(situation::Stage stage)
{
    using situation::Stage;
    switch (stage) {
    case Stage::NotStarted: return Words::tr("Not started");
    case Stage::FirstCourse: return Words::tr("First course");
    case Stage::Review: return Words::tr("Review");
    case Stage::KeepingDry: return Words::tr("Keeping dry");
    case Stage::FirstDew: return Words::tr("First dew");
    case Stage::SweatingAgain: return Words::tr("Sweating again");
    case Stage::Paused: return Words::tr("Paused");
    }
    return {};
}

QString templateName(CourseTemplate plan)
{
    switch (plan) {
    case CourseTemplate::Seven: return Words::tr("Seven in four weeks");
    case CourseTemplate::MonWedFri: return Words::tr("Three a week for four weeks");
    case CourseTemplate::Daily: return Words::tr("Five a week for two weeks");
    case CourseTemplate::Prescribed: return Words::tr("As prescribed");
    }
    return {};
}

QString screeningQuestion(ScreeningRow row)
{
    switch (row) {
    case ScreeningRow::Pregnancy: return Words::tr("Pregnant, or may be");
    case ScreeningRow::PoweredImplant: return Words::tr("A pacemaker, defibrillator or other powered implant");
    case ScreeningRow::MetalImplant: return Words::tr("Metal in a bone or joint");
    case ScreeningRow::MetalIud: return Words::tr("A coil (IUD) with metal in it");
    case ScreeningRow::HeartRhythmOrEpilepsy: return Words::tr("A heart rhythm disorder, or epilepsy");
    case ScreeningRow::TumourOrThrombosis: return Words::tr("A tumour or a thrombosis at present");
    case ScreeningRow::LossOfSensation: return Words::tr("Numb skin, or a nerve disorder");
    case ScreeningRow::UnderFive: return Words::tr("Under five years old");
    case ScreeningRow::UnderEighteen: return Words::tr("Under eighteen years old");
    case ScreeningRow::EczemaAtSite: return Words::tr("Eczema or inflamed skin where you treat");
    case ScreeningRow::LargeWound: return Words::tr("A wound too large to cover");
    case ScreeningRow::FixedBraces: return Words::tr("Fixed braces on the teeth");
    }
    return {};
}

QString responseName(protocol::Response response)
{
    switch (response) {
    case protocol::Response::None: return Words::tr("No change");
    case protocol::Response::Good: return Words::tr("Good response");
    case protocol::Response::Strong: return Words::tr("Strong response");
    }
    return {};
}

QString limitSource(protocol::LimitRow row, const QString& prescriber)
{
    using protocol::LimitRow;
    switch (row) {
    case LimitRow::AdultDirect: return Words::tr("usual limit for adults, direct current");
    case LimitRow::ChildDirect: return Words::tr("usual limit for children, direct current");
    case LimitRow::AdultPulsed: return Words::tr("usual limit for adults, pulsed current");
    case LimitRow::ChildPulsed: return Words::tr("cautious limit for children, pulsed current");
    case LimitRow::CareSheet:
        return prescriber.isEmpty() ? Words::tr("set by your prescriber") : Words::tr("set by %1").arg(prescriber);
    case LimitRow::Density: return Words::tr("lowered for the size of the treated skin");
    case LimitRow::ArmpitsPulsedOnly: return Words::tr("armpits are treated with pulsed current only");
    case LimitRow::MachineLacksWaveform: return Words::tr("your machine does not have this current");
    }
    return {};
}

QString headline(const situation::SiteSituation& s, LocalDate today)
{
    using situation::Advice;
    using situation::Stage;
    const QString site = siteWord(s.site);
    switch (s.advice) {
    case Advice::Blocked: return Words::tr("Do not treat your %1 now").arg(site);
    case Advice::RestartCourse: return Words::tr("Your %1 sweat again").arg(site);
    case Advice::FirstDewTopUp: return Words::tr("First dew on your %1").arg(site);
    case Advice::DoCourseSession: return Words::tr("Bath for your %1 today").arg(site);
    case Advice::TopUpDue: return Words::tr("Top up your %1").arg(site);
    case Advice::AskPrescriber: return Words::tr("Talk to your prescriber about your %1").arg(site);
    case Advice::Review: return Words::tr("Look back on the course for your %1").arg(site);
    case Advice::Watch: return Words::tr("Keep an eye on your %1").arg(site);
    case Advice::None: break;
    }
    if (s.stage == Stage::NotStarted)
        return Words::tr("Begin the first course for your %1").arg(site);
    if (s.stage == Stage::Paused)
        return Words::tr("Your %1 are paused").arg(site);
    if (s.nextSession && *s.nextSession > today)
        return Words::tr("Nothing to do for your %1").arg(site);
    return Words::tr("All is well with your %1").arg(site);
}

QString reasonSentence(const situation::Reason& r, const situation::SiteSituation& s, LocalDate today)
{
    using situation::ReasonKind;
    const QString site = siteWord(s.site);
    const QString date = r.date ? nearDay(*r.date, today) : QString();
    switch (r.kind) {
    case ReasonKind::NoCourseYet: return Words::tr("There has been no first course yet.");
    case ReasonKind::CourseSessionToday: return Words::tr("Session %1 of %2 of the first course is planned for today.").arg(r.number).arg(r.count);
    case ReasonKind::CourseSessionLater: return Words::tr("Session %1 of %2 of the first course comes %3.").arg(r.number).arg(r.count).arg(date);
    case ReasonKind::CourseOverrun:
        return r.days > 0 ? Words::tr("The course will end %n day(s) after its four weeks.", nullptr, r.days)
                          : Words::tr("The course cannot be planned on the days you have left free.");
    case ReasonKind::CourseFinished: return Words::tr("All %n sessions of the first course are done.", nullptr, r.count);
    case ReasonKind::SessionDoneToday: return Words::tr("Today's bath is done.");
    case ReasonKind::ClammyAtRest: return Words::tr("Clammy at rest, reported %1. Treated now, one or two baths are usually enough.").arg(date);
    case ReasonKind::ClammyStirred: return Words::tr("Clammy %1, but on a day that explains it. Check again tomorrow morning.").arg(date);
    case ReasonKind::ClammyTwice: return Words::tr("Clammy twice in a row. Treated now, one or two baths are usually enough.");
    case ReasonKind::WetAtRest: return Words::tr("Wet at rest, reported %1. Full sweating usually needs a new course.").arg(date);
    case ReasonKind::ReturnLikely: return Words::tr("Dampness has probably begun (%1 %).").arg(QLocale().toString(100 * r.probability, 'f', 0));
    case ReasonKind::DrySpellUsual:
        return r.number > 0 ? Words::tr("Your %1 usually stay dry %2 to %3 days. Today is day %4.").arg(site, days(r.from), days(r.to)).arg(r.number)
                            : Words::tr("Your %1 usually stay dry %2 to %3 days.").arg(site, days(r.from), days(r.to));
    case ReasonKind::DueByForecast: return Words::tr("By %1 the chance that clamminess has begun reaches %2 %.").arg(date, QLocale().toString(100 * r.probability, 'f', 0));
    case ReasonKind::NoCheckInFor: return Words::tr("No check-in for %n day(s).", nullptr, r.days);
    case ReasonKind::ScreeningStops: return Words::tr("No session until a clinician has cleared it: %1.").arg(r.row ? screeningQuestion(*r.row) : QString());
    case ReasonKind::ScreeningAsks: return Words::tr("Ask a clinician first: %1.").arg(r.row ? screeningQuestion(*r.row) : QString());
    case ReasonKind::ScreeningStale: return Words::tr("The safety questions are due before the next bath.");
    case ReasonKind::MachineUnsuited: return Words::tr("Your machine has no pulsed current, and armpits must not be treated with direct current.");
    case ReasonKind::NoResponse: return Words::tr("The course has not helped so far. That happens; there are other treatments, on prescription.");
    case ReasonKind::ResponseGood: return Words::tr("The course has helped: one step better.");
    case ReasonKind::ResponseStrong: return Words::tr("The course has helped a lot: two steps better or more.");
    case ReasonKind::PausedByPerson: return Words::tr("You paused this site.");
    case ReasonKind::PutOff:
        return r.date && *r.date > today ? Words::tr("You put it off until %1.").arg(date)
               : r.date && *r.date == today ? Words::tr("You answered the call today.")
                                            : Words::tr("You put it off %1.").arg(date);
    }
    return {};
}

QString reminderTitle(const situation::Reminder& r)
{
    using situation::ReminderKind;
    const QString site = r.site ? siteWord(*r.site) : QString();
    switch (r.kind) {
    case ReminderKind::CheckIn: return Words::tr("Dry or clammy today?");
    case ReminderKind::CourseSession: return Words::tr("Bath for your %1 today").arg(site);
    case ReminderKind::TopUpDue: return Words::tr("Top up your %1").arg(site);
    case ReminderKind::FirstDew: return Words::tr("First dew on your %1").arg(site);
    case ReminderKind::SkinCheck: return Words::tr("Look at the skin of your %1").arg(site);
    case ReminderKind::Cells: return Words::tr("New batteries soon");
    case ReminderKind::Screening: return Words::tr("Safety questions are due");
    case ReminderKind::HdssDue: return Words::tr("How much do your %1 bother you?").arg(site);
    case ReminderKind::PrescriberReview: return Words::tr("Show your prescriber");
    case ReminderKind::BackUp: return Words::tr("Time for a back-up");
    }
    return {};
}

QString reminderText(const situation::Reminder& r)
{
    using situation::ReminderKind;
    switch (r.kind) {
    case ReminderKind::CheckIn: return Words::tr("One tap for each site.");
    case ReminderKind::CourseSession: return Words::tr("The first course works when it is kept to.");
    case ReminderKind::TopUpDue: return Words::tr("Before the dampness comes back.");
    case ReminderKind::FirstDew: return Words::tr("Treated now, one or two baths are usually enough.");
    case ReminderKind::SkinCheck: return Words::tr("The day after a bath: any redness, blister or burn?");
    case ReminderKind::Cells: return Words::tr("The set in the machine lasts about one more bath.");
    case ReminderKind::Screening: return Words::tr("Before the next bath, as every four weeks.");
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
            {"channel-bath", say(Words::tr("Running bath"))},
            {"may-come-late", say(Words::tr("May come late: this phone does not let them come to the minute."))},
            {"missed-title", say(Words::tr("While your phone was off"))},
            {"missed-text", say(Words::tr("There were reminders. Open Firstdew to see what matters now."))}};
}

QString stepName(const protocol::Step& step)
{
    using protocol::StepKind;
    switch (step.kind) {
    case StepKind::CheckList: return Words::tr("Check list");
    case StepKind::Announce: return Words::tr("Hands in");
    case StepKind::Raise: return Words::tr("Raise");
    case StepKind::Hold: return Words::tr("Hold");
    case StepKind::Lower: return Words::tr("Lower");
    case StepKind::Swap: return Words::tr("Swap polarity");
    case StepKind::MoveSide: return Words::tr("Change side");
    case StepKind::Finish: return Words::tr("Lift out");
    }
    return {};
}

QString stepSentence(const protocol::Step& step, Site site, PolaritySwap swap, WayOfWorking way)
{
    using protocol::StepKind;
    const bool under = way == WayOfWorking::HandsUnder;
    switch (step.kind) {
    case StepKind::CheckList: return Words::tr("Machine off, current at zero. Confirm the list.");
    case StepKind::Announce: return Words::tr("Put your hands in now and keep them still.");
    case StepKind::Raise:
        return under ? Words::tr("The current may be raised now, slowly.") : Words::tr("Raise the current slowly to a comfortable level.");
    case StepKind::Hold: return Words::tr("Hold still. Everything stays under water.");
    case StepKind::Lower: return Words::tr("Lower the current slowly to zero.");
    case StepKind::Swap:
        if (site == Site::Armpits)
            return Words::tr("Current at zero? Soak the pads again and swap polarity.");
        return swap == PolaritySwap::Leads ? Words::tr("Current at zero? Swap the two leads.")
                                           : Words::tr("Current at zero? Flip the polarity switch.");
    case StepKind::MoveSide: return Words::tr("Current at zero? Change to the other side.");
    case StepKind::Finish: return Words::tr("Machine off, then lift out. Dry skin and kit.");
    }
    return {};
}

QStringList cautions()
{
    return {Words::tr("Firstdew is not a medical device and gives no diagnosis. Follow your machine's instructions, your local rules and your clinician."),
            Words::tr("Never go above the limits. It may prickle; it must never hurt. If it hurts, lower the current and stop."),
            Words::tr("Never treat with any of the stop answers of the safety questions."),
            Words::tr("Children only with medical advice, and an adult beside them."),
            Words::tr("Burns, blisters, faintness, palpitations: stop and seek help."),
            Words::tr("Keep leads and water away from mains electricity."),
            Words::tr("Never drive the current by anything but the machine made for it.")};
}

} // namespace firstdew::words
