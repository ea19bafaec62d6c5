#include "bath/Absence.h"

#include "bath/PassTime.h"

#include <algorithm>

namespace firstdew::bath {

using protocol::Prompt;
using protocol::StepKind;

namespace {

/// Back to the list; from there on to where the session was left.
void confirmAgain(Turn& turn, std::size_t goOnAt)
{
    State& s = turn.s;
    s.resume = Resume{goOnAt, s.resume ? s.resume->left : s.last};
    s.step = 0;
    s.stepElapsedMs = 0;
    turn.changed = true;
    turn.emit(EffectKind::StepChanged);
    turn.say(turn.step().prompt);
}

/// Where the session goes on after the machine was off; what was held of a phase counts.
std::size_t goOnAt(Turn& turn)
{
    State& s = turn.s;
    switch (turn.step().kind) {
    case StepKind::Hold: s.heldMs = s.stepElapsedMs; return turn.phaseBegin();
    case StepKind::Raise: return turn.phaseBegin();
    case StepKind::Lower: return s.step + (turn.under() ? 2 : 1);
    case StepKind::HandsOut: return s.step + 1;
    case StepKind::SwitchOn: return s.resume ? s.resume->step : s.step + 1;
    default: return s.step;
    }
}

void switchedOff(Turn& turn)
{
    State& s = turn.s;
    s.current = Current::Zero;
    turn.silenceAlarm();
    const StepKind kind = turn.step().kind;
    const std::size_t next = goOnAt(turn);
    const bool lowered = kind == StepKind::Lower || kind == StepKind::HandsOut;
    const bool last = s.script.steps[next].kind == StepKind::Finish || s.stoppedBy == StoppedBy::Enough;
    if (lowered && last)
        turn.leavePhase();
    else if (unseen(s.resume ? s.resume->left : s.last, turn.now) > kResumableMs)
        turn.stop(StoppedBy::TooLongAgo);
    else
        confirmAgain(turn, next);
}

/// How long the machine ran on. A clock that stands still while the phone sleeps leaves the wall clock alone to tell,
/// beyond what a correction of it may be.
long long ranOn(const Instant& from, const Instant& to)
{
    const long long steady = to.monotonicMs - from.monotonicMs;
    const long long wall = to.wallMs - from.wallMs;
    const bool stoodStill = steady < 0 || wall > steady + kGapMs;
    return std::max(0LL, stoodStill ? wall : steady);
}

/// The time away counts in a hold, so that nobody is treated for longer than the phase; true where that ended it.
bool holdIsOver(Turn& turn)
{
    State& s = turn.s;
    const long long left = lengthMs(turn.step()) - s.stepElapsedMs;
    const long long counted = std::min(ranOn(s.last, turn.now), left);
    s.stepElapsedMs += counted;
    s.sessionMs += counted;
    spend(s, counted);
    return counted == left;
}

void keptRunning(Turn& turn)
{
    turn.s.current = Current::Flowing;
    turn.emit(EffectKind::StepChanged);
    const StepKind kind = turn.step().kind;
    if (!inPhase(kind)) {
        turn.sayLower();
        return;
    }
    if (kind == StepKind::Lower) { // whoever was away has not heard it
        turn.s.stepElapsedMs = 0;
        turn.sayLower();
    }
    if (kind == StepKind::Hold && holdIsOver(turn))
        turn.enterNext();
    else
        turn.emit(EffectKind::AskMeter, Prompt::LookAtMeter);
}

void resume(Turn& turn, Meanwhile meanwhile)
{
    if (meanwhile == Meanwhile::LimbsOut || meanwhile == Meanwhile::DoNotKnow) {
        turn.startAgain();
        return;
    }
    turn.s.phase = Phase::Running;
    if (meanwhile == Meanwhile::SwitchedOff)
        switchedOff(turn);
    else
        keptRunning(turn);
}

Result<Outcome> askAgain(Turn& turn)
{
    if (unseen(turn.s.asked, turn.now) >= kAskAgainMs) {
        turn.s.asked = turn.now;
        turn.emit(EffectKind::AskMeanwhile, Prompt::WhatDidItDo);
    }
    return turn.finish(std::nullopt);
}

} // namespace

bool wasAway(const Turn& turn)
{
    const State& s = turn.s;
    return s.step > 0 && (unseen(s.last, turn.now) > turn.late || unseen(s.kept, turn.now) > kGapMs);
}

void awaitMeanwhile(State& s)
{
    s.phase = Phase::AwaitingMeanwhile;
    s.current = Current::Unknown;
}

Result<Outcome> takeAfterGap(Turn& turn, const Event& event)
{
    State& s = turn.s;
    if (s.step == 0) // at the list nothing flows and nothing counts
        return turn.finish(std::nullopt);
    if (event.kind == BathEventKind::Away && !wasAway(turn)) {
        passTime(turn);
        s.last = turn.now;
    }
    awaitMeanwhile(s);
    turn.keep.push_back({{BathEventKind::Away, {}, {}}, s.last}); // the last moment in which it led
    if (event.kind != BathEventKind::Tick && event.kind != BathEventKind::Away)
        return takeWhileAwaiting(turn, event);
    s.asked = turn.now;
    turn.emit(EffectKind::AskMeanwhile, Prompt::WhatDidItDo);
    return turn.finish(std::nullopt);
}

Result<Outcome> takeWhileAwaiting(Turn& turn, const Event& event)
{
    switch (event.kind) {
    case BathEventKind::Tick: return askAgain(turn);
    case BathEventKind::Away: return turn.finish(std::nullopt);
    case BathEventKind::Stop:
    case BathEventKind::StopPressed: turn.stop(); break;
    case BathEventKind::OutOfWater: turn.startAgain(); break;
    case BathEventKind::Resumed:
        if (event.meanwhile) {
            resume(turn, *event.meanwhile);
            break;
        }
        [[fallthrough]];
    default:
        return refuse("awaiting-answer", "event",
                      "first say what the machine did meanwhile; if you do not know, switch it off");
    }
    turn.s.last = turn.now;
    return turn.finish(event);
}

} // namespace firstdew::bath
