#include "bath/Turn.h"

namespace firstdew::bath {

using protocol::Prompt;
using protocol::StepKind;

void Turn::enterNext()
{
    ++s.step;
    s.stepElapsedMs = 0;
    changed = true;
    if (step().kind == StepKind::Raise) {
        s.current = Current::Flowing; // from here on current may flow
        ++s.stretch;
        s.steady = false;
    }
    emit(EffectKind::StepChanged);
    say(step().prompt);
    if (step().kind == StepKind::Finish) {
        s.phase = Phase::Finished;
        say(Prompt::Done);
        emit(EffectKind::Completed);
    }
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
    s.phase = Phase::Running;
    s.current = Current::Unknown; // zero only once the check list says so
    s.step = 0;
    s.stepElapsedMs = 0;
    ++s.restarts;
    changed = true;
    say(Prompt::MachineOff);
    say(Prompt::StartAgain);
    emit(EffectKind::Interrupted);
    emit(EffectKind::StepChanged);
}

void Turn::stop()
{
    silenceAlarm();
    s.phase = Phase::Stopped;
    changed = true;
    if (s.current != Current::Zero)
        say(Prompt::MachineOff);
    say(Prompt::Stopped);
    emit(EffectKind::Interrupted);
}

void Turn::silenceAlarm()
{
    if (s.alarm)
        emit(EffectKind::AlarmOff);
    s.alarm = false;
}

} // namespace firstdew::bath
