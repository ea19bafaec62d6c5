#include "words/BathWords.h"

#include "protocol/Practice.h"
#include "words/Errors.h"
#include "words/Prompts.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

#include <cmath>

namespace firstdew::words {

using protocol::PrepItem;
using protocol::StepKind;

namespace {

/// Marks and translates in one; the tool that gathers texts reads the class name here.
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

QString currentReason(protocol::CurrentReason reason, const QString& last)
{
    using protocol::CurrentReason;
    switch (reason) {
    case CurrentReason::FirstTime: return Words::tr("First time here: begin low, and go by what is comfortable.");
    case CurrentReason::AsAgreed: return Words::tr("Begin with the level you agreed on when you were taught.");
    case CurrentReason::AfterComfortable: return Words::tr("%1 was comfortable last time.").arg(last);
    case CurrentReason::AfterDiscomfort: return Words::tr("%1 was unpleasant last time, so less.").arg(last);
    case CurrentReason::AtLimit: return Words::tr("This is the limit.");
    case CurrentReason::AfterInterruption:
        return Words::tr("The last session was not finished, so the same level again.");
    case CurrentReason::TryPulsed: return Words::tr("Pulsed current is felt less; try it, if your machine has it.");
    case CurrentReason::AfterIrritation:
        return Words::tr("The skin was irritated after %1, so clearly less.").arg(last);
    case CurrentReason::AfterLapse:
        return Words::tr("It has been a while since your last session here, so start lower than %1.").arg(last);
    case CurrentReason::SameAgain: return Words::tr("The same level as last time, until it was comfortable.");
    case CurrentReason::StartAnew:
        return Words::tr(
            "The last session here was half a year ago or more: begin low again, and go by what is comfortable.");
    case CurrentReason::NoReading:
        return Words::tr("No reading of this current was noted here yet: begin low, and go by what is comfortable.");
    case CurrentReason::TryDirect:
        return Words::tr("Direct current may work better now; ask the adult or nurse who helps.");
    }
    return {};
}

const protocol::Step& stepOf(const bath::State& state) { return state.script.steps[state.step]; }

QString swappedName(const protocol::ScriptRequest& q)
{
    if (q.swap == PolaritySwap::Switch)
        return Words::tr("Switch flipped");
    return q.swap == PolaritySwap::Pads && q.site == Site::Armpits ? Words::tr("Pads exchanged")
                                                                   : Words::tr("Leads swapped");
}

} // namespace

bool waitsAtZero(const bath::State& state)
{
    return state.current == bath::Current::Zero && stepOf(state).kind == StepKind::Hold;
}

QString countdown(int seconds)
{
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

QString limitSentence(const protocol::LimitAnswer& answer, const std::string& giver)
{
    const QString by = limitSource(answer.binding, giver);
    return answer.allowed ? Words::tr("Limit %1. %2.").arg(milliamps(answer.limit.mA), by)
                          : Words::tr("Not possible. %1.").arg(by);
}

QString watchSentence(std::optional<Milliamps> above)
{
    return above ? Words::tr("Watch your skin above %1.").arg(milliamps(above->mA)) : QString();
}

QString areaSentence(const protocol::LimitQuery& query, protocol::AreaFrom from)
{
    using protocol::AreaFrom;
    const QString area = query.contact ? quantity(std::round(query.contact->cm2), Unit::SquareCentimetres) : QString();
    switch (from) {
    case AreaFrom::Nothing: return Words::tr("Enter height and weight, and the size of this skin counts as well.");
    case AreaFrom::Body:
        return query.site == Site::Feet ? Words::tr("The sole of a foot counts as %1, by height and weight.").arg(area)
                                        : Words::tr("The palm of a hand counts as %1, by height and weight.").arg(area);
    case AreaFrom::MachinePad: return Words::tr("One pad counts as %1, as entered with the machine.").arg(area);
    case AreaFrom::SheetPad: return Words::tr("One pad counts as %1, as on the care sheet.").arg(area);
    case AreaFrom::UnknownPad: return Words::tr("No pad size is entered, so one pad counts as %1.").arg(area);
    }
    return {};
}

QString adviceSentence(const protocol::CurrentAdvice& advice, Milliamps first)
{
    QStringList out{Words::tr("Aim for about %1.").arg(milliamps(advice.target.mA))};
    for (const auto r : advice.reasons)
        out.append(currentReason(r, advice.last ? milliamps(advice.last->mA) : QString()));
    if (first < advice.target)
        out.append(Words::tr("Start at %1. Current can creep up, so leave %2 to spare at first.")
                       .arg(milliamps(first.mA), milliamps(bath::kDriftRoom.mA)));
    return out.join(QLatin1Char(' '));
}

QString lengthSentence(const protocol::Script& script)
{
    return Words::tr("%1 of current, about %2 in all")
        .arg(minutes(script.holdTotal().s / 60), minutes((script.total().s + 59) / 60));
}

QString prepText(PrepItem item, Site site)
{
    switch (item) {
    case PrepItem::JewelleryOff: return Words::tr("Jewellery, watch and piercings off (not needed above the neck)");
    case PrepItem::SkinChecked: return Words::tr("I've checked my skin: no new redness, blister or burn");
    case PrepItem::WoundsCovered:
        return Words::tr("Cuts under a thin layer of petroleum jelly, only on the broken skin");
    case PrepItem::NoAntiperspirant:
        return Words::tr("%1: no antiperspirant with aluminium for 24 hours").arg(siteName(site));
    case PrepItem::NotShaved: return Words::tr("%1: not shaved for three days").arg(siteName(site));
    case PrepItem::WarmWater:
        return Words::tr("Warm tap water, about %1 in each tray")
            .arg(quantity(protocol::kWaterPerBathMl, Unit::Millilitres));
    case PrepItem::BathsOnTable: return Words::tr("Hand trays on a table that is not metal");
    case PrepItem::BathsOnFloor: return Words::tr("Foot trays on the floor");
    case PrepItem::PlateUnderGrid: return Words::tr("Each plate under its grid; skin never touches a plate");
    case PrepItem::PadsSoaked: return Words::tr("Pads soaked through, and tight");
    case PrepItem::LeadsIn: return Words::tr("Machine off, current at zero, leads in");
    case PrepItem::HelperStays: return Words::tr("My helper stays beside me the whole session");
    case PrepItem::RemoteInReach:
        return Words::tr("Remote control within reach of my hands in the water, placed as its maker says");
    case PrepItem::CellsIn: return Words::tr("Batteries in");
    }
    return {};
}

QString longWaySentence(protocol::LongWayReason reason)
{
    using protocol::LongWayReason;
    switch (reason) {
    case LongWayReason::FirstTimes: return Words::tr("Your first three sessions here go step by step.");
    case LongWayReason::LongAgo: return Words::tr("It has been four weeks or more. Let's go step by step.");
    case LongWayReason::Incident: return Words::tr("Last time something was not right. Let's go step by step.");
    case LongWayReason::OtherKit: return Words::tr("Your machine has changed. Let's go step by step.");
    case LongWayReason::HandsUnder: return Words::tr("Your first session with both hands in goes step by step.");
    }
    return {};
}

QString aimName(Milliamps aim) { return Words::tr("Aim %1").arg(milliamps(aim.mA)); }

QStringList statementLines(bool health, Site site)
{
    QStringList out;
    if (health)
        out << Words::tr("Nothing about my health has changed");
    out << Words::tr("My skin is whole where I treat: no cut, no new redness, no blister or burn");
    out << prepText(PrepItem::NoAntiperspirant, site) << prepText(PrepItem::NotShaved, site);
    return out;
}

QString beginName(Waveform waveform)
{
    return waveform == Waveform::Direct ? Words::tr("On, at zero, direct current: begin")
                                        : Words::tr("On, at zero, pulsed light on: begin");
}

QString waitSentence(const protocol::PrepWait& wait, Site site, LocalDate today)
{
    return Words::tr("Ready %1 from %2. %3", "day, time, what is then fulfilled")
        .arg(nearDay(wait.until.date, today), clockTime(QTime(0, 0).addSecs(60 * wait.until.at.minute)),
             prepText(wait.item, site));
}

QString primaryName(const bath::State& state)
{
    const auto event = bath::mainEvent(state);
    if (!event)
        return {};
    const StepKind kind = stepOf(state).kind;
    switch (*event) {
    case BathEventKind::Begin: return Words::tr("All checked, begin");
    case BathEventKind::SwitchedOn:
        if (kind != StepKind::SwitchOn)
            return Words::tr("Meter at zero: hands in again");
        return state.script.request.waveform == Waveform::Direct ? Words::tr("On, at zero, direct current")
                                                                 : Words::tr("On, at zero, pulsed light on");
    case BathEventKind::Raised:
        return kind == StepKind::Hold ? Words::tr("Raised again") : Words::tr("It is comfortable");
    case BathEventKind::Lowered:
        return kind == StepKind::HandsOut ? Words::tr("At zero, hands out and dry") : Words::tr("Current is at zero");
    case BathEventKind::Swapped: return swappedName(state.script.request);
    case BathEventKind::MovedSide: return Words::tr("Changed side");
    default: return {};
    }
}

QString pausedName(const bath::State& state)
{
    return state.script.request.site == Site::Armpits ? Words::tr("A pad came off") : Words::tr("I took them out");
}

QString stillDirect() { return Words::tr("It kept running, in direct current"); }

QString stillPulsed() { return Words::tr("It kept running, pulsed light on"); }

QString noteAtSwap(const bath::State& state)
{
    const StepKind kind = stepOf(state).kind;
    return kind == StepKind::Swap || kind == StepKind::MoveSide
               ? Words::tr("Any small cuts? Cover them with a thin layer of petroleum jelly again.")
               : QString();
}

QString endSentence(const bath::State& state)
{
    switch (state.stoppedBy) {
    case bath::StoppedBy::Enough: return Words::tr("It is enough for today. What you did is kept.");
    case bath::StoppedBy::TooLongAgo:
        return Words::tr("That was more than ten minutes ago, so this session is over. What you did is kept.");
    case bath::StoppedBy::OtherVersion:
        return Words::tr("Another version of Firstdew led this session. It cannot go on from there. What you did is "
                         "kept. Machine off now.");
    case bath::StoppedBy::Person: break;
    }
    return {};
}

QString nowSentence(const bath::State& state)
{
    if (waitsAtZero(state) && protocol::isPractice(state.script))
        return Words::tr("Practice: the phase waits. In a real session you turn it up again when you are ready.");
    if (waitsAtZero(state))
        return Words::tr("The phase waits at zero. Raise again when you are ready.");
    if (state.resume && stepOf(state).kind == StepKind::CheckList)
        return Words::tr("The session goes on. Machine off, current at zero; confirm the list again.");
    if (state.restarts > 0 && stepOf(state).kind == StepKind::CheckList)
        return Words::tr(
            "The session starts again from its beginning. Machine off, current at zero; confirm the list.");
    const auto& q = state.script.request;
    return stepSentence(stepOf(state), q);
}

QString verbName(const protocol::Step& step)
{
    using protocol::Prompt;
    if (step.prompt == Prompt::PracticeSwitchOn)
        return Words::tr("Stays off");
    if (step.prompt == Prompt::PracticeRaise || step.prompt == Prompt::PracticeLower)
        return Words::tr("No current");
    switch (step.kind) {
    case StepKind::CheckList: return Words::tr("Check");
    case StepKind::SwitchOn: return Words::tr("Switch on");
    case StepKind::Announce: return Words::tr("Hands in");
    case StepKind::Raise: return Words::tr("Raise");
    case StepKind::Hold: return Words::tr("Hold");
    case StepKind::Lower: return Words::tr("Lower");
    case StepKind::HandsOut: return Words::tr("Hands out");
    case StepKind::Swap: return Words::tr("Swap");
    case StepKind::MoveSide: return Words::tr("Change side");
    case StepKind::Finish: return stepName(step);
    }
    return {};
}

QString practiceLength(const bath::State& state)
{
    const auto real = protocol::realLength(state.script, state.step);
    if (!real)
        return {};
    return real->s % 60 == 0 ? Words::tr("In a real session this takes %n minute(s).", nullptr, real->s / 60)
                             : Words::tr("In a real session this takes %n second(s).", nullptr, real->s);
}

QString practiceBar(const Error& why)
{
    return Words::tr("You could not start a real session today: %1").arg(errorSentence(why));
}

QString noticeTitle(const bath::State& state)
{
    return waitsAtZero(state) ? Words::tr("Waiting at zero") : stepName(stepOf(state));
}

QString endsName(long long wallMs)
{
    return Words::tr("Ends at %1").arg(clockTime(QDateTime::fromMSecsSinceEpoch(wallMs).time()));
}

QString stopName() { return Words::tr("Stop"); }

QString twinSentence(const bath::State& state, protocol::Prompt prompt, long long atMs)
{
    using protocol::Prompt;
    constexpr long long kShownMs = 15'000;
    const long long ago = state.sessionMs - atMs;
    const bool readSince = state.lastReading && state.lastReading->atMs >= atMs;
    switch (prompt) {
    case Prompt::LookAtMeter: return readSince || ago >= 60'000 ? QString() : promptText(prompt);
    case Prompt::LowerALittle:
        return readSince && state.lastReading->current <= state.target()
                   ? QString()
                   : Words::tr("Turn down to %1").arg(milliamps(state.target().mA));
    case Prompt::HalfWay:
    case Prompt::OneMinute:
    case Prompt::TenSeconds:
    case Prompt::EnoughForToday: return ago < kShownMs ? promptText(prompt) : QString();
    default: return {};
    }
}

QString nextName(const bath::State& state)
{
    const auto& steps = state.script.steps;
    if (state.step + 1 >= steps.size())
        return {};
    const auto& next = steps[state.step + 1];
    return next.kind == StepKind::Hold ? Words::tr("%1, %2").arg(stepName(next), countdown(next.length.s))
                                       : stepName(next);
}

QString phaseName(const bath::State& state)
{
    const int phase = stepOf(state).phase;
    return phase > 0 ? Words::tr("Phase %1 of %2").arg(phase).arg(protocol::phasesFor(state.script.request.site).phases)
                     : QString();
}

QString leftInAll(const bath::State& state)
{
    return Words::tr("%1 left in all").arg(minutes((bath::remainingInAll(state).s + 59) / 60));
}

QString leftInStep(const bath::State& state)
{
    const int seconds = bath::remainingInStep(state).s;
    return Words::tr("%1 %2 left", "minutes, seconds")
        .arg(minutes(seconds / 60), quantity(seconds % 60, Unit::Seconds));
}

QString readingName(const std::optional<bath::MeterReading>& reading)
{
    return reading ? milliamps(reading->current.mA) : Words::tr("none yet");
}

} // namespace firstdew::words
