#include "bath/Turn.h"

#include <cmath>

namespace firstdew::bath {

using protocol::Prompt;
using protocol::StepKind;

namespace {

constexpr double kMicroampMsPerMilliampMinute = 1000.0 * 60'000;

/// By a whole number, so that it comes to the same however the time was cut into pieces.
long long microampMs(MilliampMinutes charge) { return std::llround(charge.mAmin * kMicroampMsPerMilliampMinute); }

} // namespace

bool chargeIsSpent(const State& s)
{
    const double planned = 1e6 * s.planned.mA * s.script.holdTotal().s;
    return static_cast<double>(microampMs(s.before.charge) + s.spent) >= kMostOfPlanned * planned;
}

bool enoughForToday(const State& s)
{
    return s.before.runs + s.restarts > kMostRestarts || (s.before.runs + s.restarts > 0 && chargeIsSpent(s));
}

Before sumOf(std::span<const State> earlier)
{
    Before sum;
    for (const State& s : earlier) {
        sum.runs += s.stretch > 0 ? s.restarts + 1 : 0;
        sum.charge.mAmin += static_cast<double>(s.spent) / kMicroampMsPerMilliampMinute;
    }
    return sum;
}

void Turn::enter(std::size_t step)
{
    const bool held = this->step().kind == StepKind::Hold && step > s.step;
    s.step = step;
    s.stepElapsedMs = 0;
    changed = true;
    const protocol::Step& entered = this->step();
    if (held)
        s.heldMs = 0;
    if (entered.kind == StepKind::Raise) {
        s.current = Current::Flowing; // from here on current may flow
        ++s.stretch;
        s.steady = false;
    }
    if (entered.kind == StepKind::Hold)
        s.stepElapsedMs = s.heldMs;
    if (entered.kind == StepKind::HandsOut)
        s.current = Current::Unknown; // lowering was asked for and its time is over; nobody has said that it is done
    emit(EffectKind::StepChanged);
    say(entered.prompt);
    if (entered.kind == StepKind::Finish) {
        s.phase = Phase::Finished;
        say(Prompt::Done);
        emit(EffectKind::Completed);
    }
}

void Turn::leavePhase()
{
    if (s.stoppedBy == StoppedBy::Enough) {
        stop(StoppedBy::Enough);
        return;
    }
    const std::size_t next = s.step + 1;
    enter(s.script.steps[next].kind == StepKind::HandsOut ? next + 1 : next);
}

std::size_t Turn::phaseBegin() const
{
    std::size_t i = s.step;
    while (s.script.steps[i].kind != StepKind::Raise)
        --i;
    return under() ? i - 1 : i;
}

void Turn::enterPhaseAgain()
{
    if (step().kind == StepKind::Hold)
        s.heldMs = s.stepElapsedMs;
    enter(phaseBegin());
}

void Turn::keepAsInterrupted()
{
    s.interrupted.insert(s.interrupted.end(), s.readings.begin(), s.readings.end());
    s.readings.clear();
    s.lastReading.reset();
    s.steady = false;
}

void Turn::startAgain()
{
    silenceAlarm();
    keepAsInterrupted();
    ++s.restarts;
    if (enoughForToday(s)) {
        --s.restarts;
        stop(StoppedBy::Enough);
        return;
    }
    s.phase = Phase::Running;
    s.current = Current::Unknown; // zero only once the check list says so
    s.step = 0;
    s.stepElapsedMs = 0;
    s.heldMs = 0;
    s.resume.reset();
    changed = true;
    say(Prompt::MachineOff);
    say(Prompt::StartAgain);
    emit(EffectKind::Interrupted);
    emit(EffectKind::StepChanged);
}

void Turn::stop(StoppedBy by)
{
    silenceAlarm();
    s.phase = Phase::Stopped;
    s.stoppedBy = by;
    s.resume.reset();
    s.pressed.reset();
    changed = true;
    if (by == StoppedBy::Enough)
        say(Prompt::EnoughForToday);
    if (by == StoppedBy::TooLongAgo)
        say(Prompt::TooLongAgo);
    sayStopped();
    emit(EffectKind::Interrupted);
}

void Turn::silenceAlarm()
{
    if (s.alarm)
        emit(EffectKind::AlarmOff);
    s.alarm = false;
}

} // namespace firstdew::bath
