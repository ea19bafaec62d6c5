#include "bath/PassTime.h"

#include <algorithm>

namespace firstdew::bath {

using protocol::Prompt;
using protocol::Step;
using protocol::StepKind;

namespace {

constexpr long long kTenSecondsMs = 10'000;

/// Beyond this the wall clock saw time that the other did not: the phone slept or was started anew. The clocks' small
/// differences are rounding and correction of the wall, and would add up over a phase's thousands of ticks.
constexpr long long kSleptMs = 1000;

/// Whether the clock of the present step runs.
bool clockRuns(const Turn& turn)
{
    if (!turn.step().timed)
        return false;
    return turn.s.current == (inPhase(turn.step().kind) ? Current::Flowing : Current::Zero);
}

/// While current may flow, the reading is asked for every minute (common practice, no source: it drifts up).
void askEveryMinute(Turn& turn, long long from, long long to)
{
    if (!inPhase(turn.step().kind) || turn.s.current == Current::Zero)
        return;
    for (long long minute = from / kMinuteMs; minute < to / kMinuteMs; ++minute)
        turn.emit(EffectKind::AskMeter, Prompt::LookAtMeter);
}

/// What is said between `from` and `to` milliseconds of a timed step.
void announce(Turn& turn, long long from, long long to)
{
    const long long length = lengthMs(turn.step());
    const auto crossed = [&](long long at) { return from < at && at <= to && at < length; };
    if (turn.step().kind == StepKind::Hold) {
        if (crossed(length / 2))
            turn.say(Prompt::HalfWay);
        if (crossed(length - kMinuteMs))
            turn.say(Prompt::OneMinute);
        askEveryMinute(turn, from, std::min(to, length - 1));
    }
    if (length > 2 * kTenSecondsMs && crossed(length - kTenSecondsMs))
        turn.say(Prompt::TenSeconds);
}

/// Spends what it can of `ms` on the present step; true where the step is over and the next one may begin.
bool spendOnStep(Turn& turn, long long& ms)
{
    State& s = turn.s;
    if (!clockRuns(turn)) {
        if (!turn.step().timed) {
            askEveryMinute(turn, s.stepElapsedMs, s.stepElapsedMs + ms);
            s.stepElapsedMs += ms;
        }
        return false;
    }
    const long long length = lengthMs(turn.step());
    const long long used = std::min(ms, length - s.stepElapsedMs);
    announce(turn, s.stepElapsedMs, s.stepElapsedMs + used);
    s.stepElapsedMs += used;
    ms -= used;
    // Nobody has said that the current is under the limit again: a timed step must not go on to the next.
    return s.stepElapsedMs >= length && !s.alarm;
}

} // namespace

long long between(const Instant& a, const Instant& b)
{
    const long long steady = b.monotonicMs - a.monotonicMs;
    const long long wall = b.wallMs - a.wallMs;
    return std::max(0LL, wall > steady + kSleptMs ? wall : steady);
}

void passTime(Turn& turn)
{
    State& s = turn.s;
    if (s.step == 0)
        return;
    long long ms = between(s.last, turn.now);
    if (s.alarm && (s.sessionMs + ms) / kAlarmRepeatMs > s.sessionMs / kAlarmRepeatMs)
        turn.emit(EffectKind::Alarm, Prompt::TooHigh);
    turn.minute = (s.sessionMs + ms) / kMinuteMs > s.sessionMs / kMinuteMs;
    s.sessionMs += ms;
    while (ms > 0 && !ended(s) && spendOnStep(turn, ms)) {
        if (turn.step().kind == StepKind::Lower)
            s.current = Current::Zero; // hands under: the lowering was announced and its time has passed
        turn.enterNext();
    }
}

} // namespace firstdew::bath
