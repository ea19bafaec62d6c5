#include "bath/Absence.h"
#include "bath/PassTime.h"
#include "bath/Slip.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace firstdew::bath {

using protocol::Prompt;
using protocol::Step;
using protocol::StepKind;

namespace {

/// List or waveform is confirmed again; too long after, the session is over.
std::optional<Error> goOn(Turn& turn)
{
    turn.s.current = Current::Zero;
    if (unseen(turn.s.resume->left, turn.now) > kResumableMs) {
        turn.stop(StoppedBy::TooLongAgo);
    } else if (turn.step().kind == StepKind::CheckList) {
        turn.enterNext();
    } else {
        const std::size_t step = turn.s.resume->step;
        turn.s.resume.reset();
        turn.enter(step);
    }
    return std::nullopt;
}

std::optional<Error> begin(Turn& turn)
{
    if (turn.step().kind != StepKind::CheckList)
        return refuse("already-begun", "event", "the check list was confirmed before; go on with the step shown");
    if (turn.s.resume)
        return goOn(turn);
    if (enoughForToday(turn.s))
        return refuse("enough-for-today", "event",
                      "this skin has had as much as one day may bring it; leave the machine off until tomorrow");
    turn.s.current = Current::Zero;
    turn.keepAsInterrupted(); // what the meter showed before belongs to no phase, and its time is not of this run
    turn.s.sessionMs = 0;
    turn.enterNext();
    return std::nullopt;
}

std::optional<Error> switchedOn(Turn& turn)
{
    const bool waits = turn.step().kind == StepKind::Raise || turn.step().kind == StepKind::Hold;
    if (turn.under() && waits && turn.s.current == Current::Zero) {
        turn.enterPhaseAgain(); // the hands go in again
        return std::nullopt;
    }
    if (turn.step().kind != StepKind::SwitchOn)
        return refuse("not-now", "event", "this is not the time to switch anything; go on with the step shown");
    if (turn.s.current != Current::Zero)
        return refuse("current-flows", "event", "current may be flowing: lower to zero first, then look at the light");
    if (turn.s.resume)
        return goOn(turn);
    turn.enterNext();
    return std::nullopt;
}

std::optional<Error> raised(Turn& turn)
{
    const StepKind kind = turn.step().kind;
    if (kind == StepKind::Hold && turn.s.current != Current::Flowing) {
        turn.s.current = Current::Flowing;
        ++turn.s.stretch;
        turn.s.steady = false;
        turn.changed = true;
        turn.say(protocol::holdPrompt(turn.request()));
        return std::nullopt;
    }
    if (kind != StepKind::Raise)
        return refuse("not-raising", "event",
                      kind == StepKind::CheckList || kind == StepKind::SwitchOn
                          ? "nothing may be raised before list and waveform are confirmed; leave the current at zero"
                          : "this is not the time to raise the current; leave it as the step shown says");
    if (turn.s.alarm)
        return refuse("above-limit", "event",
                      "the last reading is above the limit; turn the current down and enter the lower reading first");
    turn.s.current = Current::Flowing;
    turn.enterNext();
    return std::nullopt;
}

void judge(Turn& turn, Milliamps value)
{
    if (value > turn.s.script.request.limit) {
        turn.s.alarm = true;
        turn.emit(EffectKind::Alarm, Prompt::TooHigh);
    } else {
        turn.silenceAlarm();
    }
}

/// Whether that is no reading of a meter.
std::optional<Error> cannotBe(const std::optional<Milliamps>& value)
{
    if (!value || !std::isfinite(value->mA))
        return refuse("reading-not-a-number", "reading",
                      "the reading is not a number; look at the meter again, and if it cannot be read, lower to zero");
    if (value->mA < 0)
        return refuse("reading-negative", "reading",
                      fmt::format("{} mA is below zero; enter the number without its sign", value->mA));
    if (!plausible(*value))
        return refuse(
            "reading-implausible", "reading",
            fmt::format(
                "{:g} mA cannot be a meter reading; if the meter shows it, machine off now; otherwise read again",
                value->mA));
    return std::nullopt;
}

/// The readings since the current was raised from zero in this phase.
std::span<const MeterReading> presentStretch(const State& s)
{
    const MeterReading& last = s.readings.back();
    const auto from = std::find_if(s.readings.begin(), s.readings.end(), [&](const MeterReading& r) {
        return r.phase == last.phase && r.stretch == last.stretch;
    });
    return {from, s.readings.end()};
}

std::optional<Error> reading(Turn& turn, std::optional<Milliamps> value)
{
    if (auto error = cannotBe(value))
        return error;
    const Step& step = turn.step();
    turn.s.lastReading = MeterReading{turn.s.sessionMs, *value, step.phase, step.polarity, step.side, turn.s.stretch};
    turn.s.readings.push_back(*turn.s.lastReading);
    turn.s.steady = isSteady(presentStretch(turn.s)) &&
                    *value <= turn.s.script.request.limit; // above it nothing is a reason to aim higher
    turn.changed = true;
    if (value->mA > 0) {
        turn.s.current = Current::Flowing; // whatever was said before: the meter knows better
        if (!inPhase(step.kind))
            turn.sayLower();
    }
    judge(turn, *value);
    return std::nullopt;
}

std::optional<Error> discomfort(Turn& turn)
{
    if (turn.s.current == Current::Zero)
        return refuse(
            "no-current", "event",
            "the current is at zero; if it still hurts, machine off, take hands or feet out and look at the skin");
    const double down = turn.s.script.request.waveform == Waveform::Direct ? 1 : 2;
    const double from =
        turn.s.lastReading ? std::min(turn.s.wanted.mA, turn.s.lastReading->current.mA) : turn.s.wanted.mA;
    turn.s.wanted = {std::max(0.0, from - down)};
    ++turn.s.discomforts;
    turn.changed = true;
    turn.say(Prompt::LowerALittle);
    return std::nullopt;
}

/// Lowering is never refused while a session runs. Early, it pauses the phase at zero.
std::optional<Error> lowered(Turn& turn)
{
    turn.s.current = Current::Zero;
    turn.changed = true;
    turn.silenceAlarm();
    const StepKind kind = turn.step().kind;
    if (kind == StepKind::Lower || kind == StepKind::HandsOut)
        turn.leavePhase();
    else if (kind == StepKind::Announce)
        turn.s.stepElapsedMs = 0; // the hands have their whole time
    return std::nullopt;
}

std::optional<Error> change(Turn& turn, StepKind kind)
{
    if (turn.s.current != Current::Zero)
        return refuse("current-flows", "event", "current may be flowing: change nothing, lower to zero first");
    if (turn.step().kind != kind)
        return refuse("not-now", "event", "this is not the time to change anything; go on with the step shown");
    turn.enterNext();
    return std::nullopt;
}

std::optional<Error> outOfWater(Turn& turn)
{
    if (turn.s.current == Current::Zero)
        return refuse("no-current", "event",
                      "the current is at zero, so lifting out is safe now; go on with the step shown");
    if (turn.step().kind == StepKind::CheckList)
        return refuse("starting-again", "event", "machine off; the session starts again once the list is confirmed");
    turn.startAgain();
    return std::nullopt;
}

std::optional<Error> handle(Turn& turn, const Event& event)
{
    switch (event.kind) {
    case BathEventKind::Begin: return begin(turn);
    case BathEventKind::Raised: return raised(turn);
    case BathEventKind::Reading: return reading(turn, event.reading);
    case BathEventKind::Discomfort: return discomfort(turn);
    case BathEventKind::Lowered: return lowered(turn);
    case BathEventKind::Swapped: return change(turn, StepKind::Swap);
    case BathEventKind::MovedSide: return change(turn, StepKind::MoveSide);
    case BathEventKind::OutOfWater: return outOfWater(turn);
    case BathEventKind::Stop: turn.stop(); return std::nullopt;
    case BathEventKind::StopPressed: pressStop(turn); return std::nullopt;
    case BathEventKind::StopTakenBack:
    case BathEventKind::Resumed:
        return refuse("nothing-to-resume", "event",
                      "the session is running and waits for no answer; go on with the step shown");
    case BathEventKind::SwitchedOn: return switchedOn(turn);
    case BathEventKind::Tick:
    case BathEventKind::Away: return std::nullopt;
    }
    return refuse("unknown-event", "event",
                  "this is not something a session knows; go on with the step shown, or stop");
}

} // namespace

Milliamps State::target() const
{
    const Milliamps limit = script.request.limit;
    const Milliamps most = steady ? limit : Milliamps{std::max(0.0, limit.mA - kDriftRoom.mA)};
    return std::min(wanted, most);
}

State prepared(const protocol::Script& script, Milliamps target, const Before& before)
{
    State s;
    s.script = script;
    const bool sound = std::isfinite(target.mA) && target.mA >= 0;
    s.wanted = sound ? std::min(target, script.request.limit) : script.request.limit;
    s.planned = s.wanted.mA > 0 ? s.wanted : script.request.limit;
    s.before = before;
    return s;
}

Result<Outcome> step(const State& state, const Event& event, Instant now)
{
    return advance(state, event, now, kLateMs);
}

Result<Outcome> advance(const State& state, const Event& event, Instant now, long long late)
{
    if (state.script.steps.empty())
        return Error{"no-script", "state",
                     "no session is prepared; choose a site and begin again with the current at zero"};
    Turn turn{state, now, late};
    if (ended(state))
        return refuse("session-ended", "event",
                      "the session has ended; machine off and current zero, start a new one when you are ready");
    if (state.phase == Phase::AwaitingMeanwhile)
        return takeWhileAwaiting(turn, event);
    if (state.pressed)
        return takeWhileStopping(turn, event);
    if (event.kind == BathEventKind::Away || wasAway(turn))
        return takeAfterGap(turn, event);
    passTime(turn);
    turn.s.last = now;
    if (auto error = handle(turn, event))
        return *error;
    // Between kept events there must never be a gap, or replaying them would look like an absence.
    const bool keep = event.kind != BathEventKind::Tick || turn.changed || turn.minute;
    return turn.finish(keep ? std::optional(event) : std::nullopt);
}

Seconds remainingInStep(const State& state)
{
    if (ended(state) || state.script.steps.empty())
        return {};
    const long long left = lengthMs(state.script.steps[state.step]) - state.stepElapsedMs;
    return {static_cast<int>(std::max(0LL, (left + 999) / 1000))};
}

Seconds remainingInAll(const State& state)
{
    Seconds sum = remainingInStep(state);
    if (ended(state))
        return sum;
    for (std::size_t i = state.step + 1; i < state.script.steps.size(); ++i)
        sum.s += state.script.steps[i].length.s;
    return sum;
}

} // namespace firstdew::bath
