#include "bath/Absence.h"

#include "bath/PassTime.h"

#include <algorithm>

namespace firstdew::bath {

using protocol::Prompt;
using protocol::StepKind;

namespace {

void switchedOff(Turn& turn)
{
    turn.s.current = Current::Zero;
    turn.silenceAlarm();
    turn.emit(EffectKind::StepChanged);
    const StepKind kind = turn.step().kind;
    if (kind == StepKind::Lower)
        turn.enterNext();
    else
        turn.say(kind == StepKind::Hold ? Prompt::RaiseSlowly : turn.step().prompt);
}

/// The time away counts in a hold, so that nobody is treated for longer than the phase; true where that ended it.
bool holdIsOver(Turn& turn)
{
    State& s = turn.s;
    const long long left = lengthMs(turn.step()) - s.stepElapsedMs;
    const long long counted = std::min(between(s.last, turn.now), left);
    s.stepElapsedMs += counted;
    s.sessionMs += counted;
    return counted == left;
}

void keptRunning(Turn& turn)
{
    turn.s.current = Current::Flowing;
    turn.emit(EffectKind::StepChanged);
    const StepKind kind = turn.step().kind;
    if (!inPhase(kind)) {
        turn.say(Prompt::LowerToZero);
        return;
    }
    if (kind == StepKind::Lower) { // whoever was away has not heard it
        turn.s.stepElapsedMs = 0;
        turn.say(Prompt::LowerToZero);
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

} // namespace

bool wasAway(const Turn& turn)
{
    const State& s = turn.s;
    // A wall clock set back and forth shows a gap to one of them alone.
    return s.step > 0 && std::max(between(s.kept.at, turn.now), between(s.last, turn.now)) > kGapMs;
}

Result<Outcome> takeAfterGap(Turn& turn, const Event& event)
{
    State& s = turn.s;
    s.current = Current::Unknown;
    s.last = s.kept.at; // the time away is counted from there
    s.stepElapsedMs = s.kept.stepElapsedMs;
    s.sessionMs = s.kept.sessionMs;
    if (event.kind != BathEventKind::Tick)
        return takeWhileAwaiting(turn, event);
    s.phase = Phase::AwaitingMeanwhile;
    turn.emit(EffectKind::AskMeanwhile);
    return turn.finish(true);
}

Result<Outcome> takeWhileAwaiting(Turn& turn, const Event& event)
{
    if (event.kind == BathEventKind::Tick)
        return turn.finish(false);
    if (event.kind == BathEventKind::Stop)
        turn.stop();
    else if (event.kind == BathEventKind::OutOfWater)
        turn.startAgain();
    else if (event.kind == BathEventKind::Resumed && event.meanwhile)
        resume(turn, *event.meanwhile);
    else
        return refuse("awaiting-answer", "event",
                      "first say what the machine did meanwhile; if you do not know, switch it off");
    turn.s.last = turn.now;
    return turn.finish(true);
}

} // namespace firstdew::bath
