#include "bath/PassTime.h"

#include <algorithm>
#include <cmath>

namespace firstdew::bath {

using protocol::Prompt;
using protocol::Step;
using protocol::StepKind;

namespace {

constexpr long long kTenSecondsMs = 10'000;
/// What waits for a tap with dry hands is said again after this time (our own choice).
constexpr long long kSayAgainMs = 30'000;

/// Whether the clock of the present step runs.
bool clockRuns(const Turn& turn)
{
    if (!turn.step().timed)
        return false;
    return turn.s.current == (inPhase(turn.step().kind) ? Current::Flowing : Current::Zero);
}

/// While current may flow, the reading is asked for every minute until it is steady, since it drifts up (common
/// practice, no source), then every second minute (our own choice).
void askForTheMeter(Turn& turn, long long from, long long to)
{
    if (!inPhase(turn.step().kind) || turn.s.current == Current::Zero)
        return;
    for (long long minute = from / kMinuteMs + 1; minute <= to / kMinuteMs; ++minute)
        if (!turn.s.steady || minute % 2 == 0)
            turn.emit(EffectKind::AskMeter, Prompt::LookAtMeter);
}

/// What is said between `from` and `to` milliseconds of a timed step.
void announce(Turn& turn, long long from, long long to)
{
    const long long length = lengthMs(turn.step());
    const auto crossed = [&](long long at) { return from < at && at <= to; };
    if (turn.step().kind == StepKind::Hold) {
        if (crossed(length / 2))
            turn.say(Prompt::HalfWay);
        if (crossed(length - kMinuteMs))
            turn.say(Prompt::OneMinute);
        askForTheMeter(turn, from, std::min(to, length - 1));
    }
    if (length > 2 * kTenSecondsMs && crossed(length - kTenSecondsMs))
        turn.say(Prompt::TenSeconds);
}

/// Whoever lowers by a remote control looks at the machine, not at the phone.
void repeat(Turn& turn, long long from, long long to)
{
    if (turn.step().kind == StepKind::HandsOut && to / kSayAgainMs > from / kSayAgainMs)
        turn.say(turn.step().prompt);
}

/// Spends what it can of `ms` on the present step; true where the step is over and the next one may begin.
bool spendOnStep(Turn& turn, long long& ms)
{
    State& s = turn.s;
    if (!clockRuns(turn)) {
        if (!turn.step().timed) {
            askForTheMeter(turn, s.stepElapsedMs, s.stepElapsedMs + ms);
            s.stepElapsedMs += ms;
            spend(s, ms);
            repeat(turn, s.stepElapsedMs - ms, s.stepElapsedMs);
        }
        return false;
    }
    const long long length = lengthMs(turn.step());
    const long long used = std::min(ms, length - s.stepElapsedMs);
    announce(turn, s.stepElapsedMs, s.stepElapsedMs + used);
    s.stepElapsedMs += used;
    spend(s, used);
    ms -= used;
    // Nobody has said that the current is under the limit again: a timed step must not go on to the next.
    return s.stepElapsedMs >= length && !s.alarm;
}

/// A session that started again has brought what one day may bring: down to zero, and no further.
void endWhereItIsEnough(Turn& turn)
{
    State& s = turn.s;
    const StepKind kind = turn.step().kind;
    if ((kind != StepKind::Raise && kind != StepKind::Hold) || !enoughForToday(s))
        return;
    s.stoppedBy = StoppedBy::Enough;
    turn.say(Prompt::EnoughForToday);
    turn.enter(kind == StepKind::Raise ? s.step + 2 : s.step + 1);
}

} // namespace

long long between(const Instant& a, const Instant& b) { return std::max(0LL, b.monotonicMs - a.monotonicMs); }

long long unseen(const Instant& a, const Instant& b)
{
    return std::max({0LL, b.monotonicMs - a.monotonicMs, b.wallMs - a.wallMs});
}

void spend(State& s, long long ms)
{
    if (!inPhase(s.script.steps[s.step].kind) || s.current == Current::Zero)
        return;
    const bool known = s.lastReading && s.lastReading->stretch == s.stretch;
    s.spent += std::llround(1000 * (known ? s.lastReading->current.mA : s.wanted.mA)) * ms;
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
    while (ms > 0 && spendOnStep(turn, ms)) // the last step waits for a word
        turn.enterNext();
    endWhereItIsEnough(turn);
}

} // namespace firstdew::bath
