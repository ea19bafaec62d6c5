#include "bath/Engine.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace firstdew::bath
{

using protocol::Prompt;
using protocol::Step;
using protocol::StepKind;

namespace
{

constexpr long long kMinuteMs = 60'000;
constexpr long long kTenSecondsMs = 10'000;

const Step& stepOf(const State& s)
{
    return s.script.steps[s.step];
}

bool inPhase(StepKind kind)
{
    return kind == StepKind::Raise || kind == StepKind::Hold || kind == StepKind::Lower;
}

long long lengthMs(const Step& step)
{
    return 1000LL * step.length.s;
}

/// Beyond this the wall clock saw time that the other did not: the phone slept or was started anew.
constexpr long long kSleptMs = 1000;

/// Time between two instants, by the clock that never jumps; by the wall where that one stood still or began anew. Their
/// small differences are rounding and correction of the wall, and would add up over a phase's thousands of ticks.
long long between(const Instant& a, const Instant& b)
{
    const long long steady = b.monotonicMs - a.monotonicMs;
    const long long wall = b.wallMs - a.wallMs;
    return std::max(0LL, wall > steady + kSleptMs ? wall : steady);
}

bool ended(const State& s)
{
    return s.phase == Phase::Finished || s.phase == Phase::Stopped;
}

/// Applies one event to a copy of the state and collects what has to be done.
class Stepper
{
public:
    Stepper(const State& state, Instant now) : m_s(state), m_now(now) {}

    Result<Outcome> take(const Event& event)
    {
        if (ended(m_s))
            return refuse("session-ended", "event",
                          "the session has ended; machine off and current zero, start a new one when you are ready");
        if (m_s.phase == Phase::AwaitingMeanwhile)
            return takeWhileAwaiting(event);
        if (m_s.step > 0 && between(m_s.last, m_now) > kGapMs)
            return takeAfterGap(event);
        passTime();
        m_s.last = m_now;
        if (ended(m_s))
            noteAfterEnd(event);
        else if (auto error = handle(event))
            return *error;
        // Between kept events there must never be a gap, or replaying them would look like an absence.
        const bool keep = event.kind != BathEventKind::Tick || m_changed || m_minute;
        return Outcome{std::move(m_s), std::move(m_effects), keep};
    }

private:
    static Error refuse(std::string code, std::string input, std::string message)
    {
        return {std::move(code), std::move(input), std::move(message)};
    }

    Result<Outcome> takeWhileAwaiting(const Event& event)
    {
        if (event.kind == BathEventKind::Tick)
            return Outcome{m_s, {}, false};
        if (event.kind == BathEventKind::Stop)
            stop();
        else if (event.kind == BathEventKind::OutOfWater)
            startAgain();
        else if (event.kind == BathEventKind::Resumed && event.meanwhile)
            resume(*event.meanwhile);
        else
            return refuse("awaiting-answer", "event",
                          "first say what the machine did meanwhile; if you do not know, switch it off");
        m_s.last = m_now;
        return Outcome{std::move(m_s), std::move(m_effects), true};
    }

    /// Nobody watched for so long that the clock of a step means nothing: only ending is taken at its word.
    Result<Outcome> takeAfterGap(const Event& event)
    {
        if (event.kind == BathEventKind::Tick)
            return awaitMeanwhile();
        m_s.current = Current::Unknown;
        return takeWhileAwaiting(event);
    }

    /// The last step ran out just before this event.
    void noteAfterEnd(const Event& event)
    {
        const bool flows = event.kind == BathEventKind::Reading && event.reading && event.reading->mA > 0;
        if (flows || event.kind == BathEventKind::Discomfort || event.kind == BathEventKind::OutOfWater)
            say(Prompt::MachineOff);
    }

    Result<Outcome> awaitMeanwhile()
    {
        m_s.phase = Phase::AwaitingMeanwhile;
        m_s.current = Current::Unknown;
        emit(EffectKind::AskMeanwhile);
        return Outcome{std::move(m_s), std::move(m_effects), true};
    }

    std::optional<Error> handle(const Event& event)
    {
        switch (event.kind) {
        case BathEventKind::Begin: return begin();
        case BathEventKind::Raised: return raised();
        case BathEventKind::Reading: return reading(event.reading);
        case BathEventKind::Discomfort: return discomfort();
        case BathEventKind::Lowered: return lowered();
        case BathEventKind::Swapped: return change(StepKind::Swap);
        case BathEventKind::MovedSide: return change(StepKind::MoveSide);
        case BathEventKind::OutOfWater: return outOfWater();
        case BathEventKind::Stop: stop(); return std::nullopt;
        case BathEventKind::Resumed:
            return refuse("nothing-to-resume", "event",
                          "the session is running and waits for no answer; go on with the step shown");
        case BathEventKind::Tick: return std::nullopt;
        }
        return refuse("unknown-event", "event",
                      "this is not something a session knows; go on with the step shown, or stop");
    }

    std::optional<Error> begin()
    {
        if (stepOf(m_s).kind != StepKind::CheckList)
            return refuse("already-begun", "event", "the check list was confirmed before; go on with the step shown");
        m_s.current = Current::Zero;
        m_s.sessionMs = 0;
        enterNext();
        return std::nullopt;
    }

    std::optional<Error> raised()
    {
        const StepKind kind = stepOf(m_s).kind;
        if (kind == StepKind::Hold && m_s.current != Current::Flowing) {
            m_s.current = Current::Flowing;
            ++m_s.stretch;
            m_s.steady = false;
            m_changed = true;
            say(Prompt::HoldStill);
            return std::nullopt;
        }
        if (kind != StepKind::Raise)
            return refuse("not-raising", "event",
                          kind == StepKind::CheckList
                              ? "nothing may be raised before the check list is confirmed; leave the current at zero"
                              : "this is not the time to raise the current; leave it as the step shown says");
        m_s.current = Current::Flowing;
        enterNext();
        return std::nullopt;
    }

    std::optional<Error> reading(std::optional<Milliamps> value)
    {
        if (!value || !std::isfinite(value->mA))
            return refuse(
                "reading-not-a-number", "reading",
                "the reading is not a number; look at the meter again, and if it cannot be read, lower to zero");
        if (value->mA < 0)
            return refuse("reading-negative", "reading",
                          fmt::format("{} mA is below zero; enter the number without its sign", value->mA));
        if (*value > kMostPlausibleReading)
            return refuse(
                "reading-implausible", "reading",
                fmt::format(
                    "{:g} mA cannot be a meter reading; if the meter shows it, machine off now; otherwise read again",
                    value->mA));
        const Step& step = stepOf(m_s);
        if (m_s.lastReading && !m_s.readings.empty())
            m_s.steady = m_s.lastReading->phase == step.phase && m_s.lastReading->stretch == m_s.stretch &&
                         std::abs(m_s.lastReading->current.mA - value->mA) <= kSteadyWithin.mA;
        m_s.lastReading = MeterReading{m_s.sessionMs, *value, step.phase, step.polarity, step.side, m_s.stretch};
        m_s.readings.push_back(*m_s.lastReading);
        m_changed = true;
        if (value->mA > 0) {
            m_s.current = Current::Flowing; // whatever was said before: the meter knows better
            if (!inPhase(step.kind))
                say(Prompt::LowerToZero);
        }
        judge(*value);
        return std::nullopt;
    }

    void judge(Milliamps value)
    {
        if (value > m_s.script.request.limit) {
            m_s.alarm = true;
            emit(EffectKind::Alarm, Prompt::TooHigh);
        } else if (m_s.alarm) {
            m_s.alarm = false;
            emit(EffectKind::AlarmOff);
        }
    }

    std::optional<Error> discomfort()
    {
        if (m_s.current == Current::Zero)
            return refuse("no-current", "event",
                          "the current is at zero; if it still hurts, machine off, lift out and look at the skin");
        const double down = m_s.script.request.waveform == Waveform::Direct ? 1 : 2;
        const double from = m_s.lastReading ? std::min(m_s.wanted.mA, m_s.lastReading->current.mA) : m_s.wanted.mA;
        m_s.wanted = {std::max(0.0, from - down)};
        ++m_s.discomforts;
        m_changed = true;
        say(Prompt::LowerALittle);
        return std::nullopt;
    }

    /// Lowering is never refused while a session runs. Early, it pauses the phase at zero.
    std::optional<Error> lowered()
    {
        m_s.current = Current::Zero;
        m_changed = true;
        if (m_s.alarm) {
            m_s.alarm = false;
            emit(EffectKind::AlarmOff);
        }
        if (stepOf(m_s).kind == StepKind::Lower)
            enterNext();
        return std::nullopt;
    }

    std::optional<Error> change(StepKind kind)
    {
        if (m_s.current != Current::Zero)
            return refuse("current-flows", "event", "current may be flowing: change nothing, lower to zero first");
        if (stepOf(m_s).kind != kind)
            return refuse("not-now", "event", "this is not the time to change anything; go on with the step shown");
        enterNext();
        return std::nullopt;
    }

    std::optional<Error> outOfWater()
    {
        if (m_s.current == Current::Zero)
            return refuse("no-current", "event",
                          "the current is at zero, so lifting out is safe now; go on with the step shown");
        startAgain();
        return std::nullopt;
    }

    void startAgain()
    {
        silenceAlarm();
        m_s.interrupted.insert(m_s.interrupted.end(), m_s.readings.begin(), m_s.readings.end());
        m_s.readings.clear();
        m_s.lastReading.reset();
        m_s.steady = false;
        m_s.phase = Phase::Running;
        m_s.current = Current::Unknown; // zero only once the check list says so
        m_s.step = 0;
        m_s.stepElapsedMs = 0;
        ++m_s.restarts;
        m_changed = true;
        say(Prompt::MachineOff);
        say(Prompt::StartAgain);
        emit(EffectKind::Interrupted);
        emit(EffectKind::StepChanged);
    }

    void stop()
    {
        silenceAlarm();
        m_s.phase = Phase::Stopped;
        m_changed = true;
        if (m_s.current != Current::Zero)
            say(Prompt::MachineOff);
        say(Prompt::Stopped);
        emit(EffectKind::Interrupted);
    }

    void silenceAlarm()
    {
        if (m_s.alarm)
            emit(EffectKind::AlarmOff);
        m_s.alarm = false;
    }

    void resume(Meanwhile meanwhile)
    {
        if (meanwhile == Meanwhile::LimbsOut || meanwhile == Meanwhile::DoNotKnow) {
            startAgain();
            return;
        }
        m_s.phase = Phase::Running;
        m_changed = true;
        const StepKind kind = stepOf(m_s).kind;
        if (meanwhile == Meanwhile::SwitchedOff) {
            m_s.current = Current::Zero;
            silenceAlarm();
            emit(EffectKind::StepChanged);
            if (kind == StepKind::Lower)
                enterNext();
            else
                say(kind == StepKind::Hold ? Prompt::RaiseSlowly : stepOf(m_s).prompt);
            return;
        }
        keptRunning(kind);
    }

    /// The current flowed on: in a hold its time counts, so that nobody is treated for longer than the phase.
    void keptRunning(StepKind kind)
    {
        m_s.current = Current::Flowing;
        emit(EffectKind::StepChanged);
        if (!inPhase(kind)) {
            say(Prompt::LowerToZero);
            return;
        }
        if (kind == StepKind::Lower) { // whoever was away has not heard it
            m_s.stepElapsedMs = 0;
            say(Prompt::LowerToZero);
        }
        if (kind == StepKind::Hold) {
            const long long away = between(m_s.last, m_now);
            const long long counted = std::min(away, lengthMs(stepOf(m_s)) - m_s.stepElapsedMs);
            m_s.stepElapsedMs += counted;
            m_s.sessionMs += counted;
            if (m_s.stepElapsedMs >= lengthMs(stepOf(m_s))) {
                enterNext();
                return;
            }
        }
        emit(EffectKind::AskMeter, Prompt::LookAtMeter);
    }

    /// Whether the clock of the present step runs.
    [[nodiscard]] bool clockRuns() const
    {
        const Step& step = stepOf(m_s);
        if (!step.timed)
            return false;
        if (inPhase(step.kind))
            return m_s.current == Current::Flowing;
        return m_s.current == Current::Zero;
    }

    void passTime()
    {
        long long ms = between(m_s.last, m_now);
        if (m_s.step == 0)
            return;
        if (m_s.alarm && (m_s.sessionMs + ms) / kAlarmRepeatMs > m_s.sessionMs / kAlarmRepeatMs)
            emit(EffectKind::Alarm, Prompt::TooHigh);
        m_minute = (m_s.sessionMs + ms) / kMinuteMs > m_s.sessionMs / kMinuteMs;
        m_s.sessionMs += ms;
        while (ms > 0 && !ended(m_s)) {
            const Step& step = stepOf(m_s);
            if (!clockRuns()) {
                if (!step.timed) {
                    askEveryMinute(step, m_s.stepElapsedMs, m_s.stepElapsedMs + ms);
                    m_s.stepElapsedMs += ms;
                }
                return;
            }
            const long long used = std::min(ms, lengthMs(step) - m_s.stepElapsedMs);
            announce(step, m_s.stepElapsedMs, m_s.stepElapsedMs + used);
            m_s.stepElapsedMs += used;
            ms -= used;
            if (m_s.stepElapsedMs < lengthMs(step))
                return;
            // Nobody has said that the current is under the limit again: a timed step must not go on to the next.
            if (m_s.alarm)
                return;
            if (step.kind == StepKind::Lower)
                m_s.current = Current::Zero; // hands under: the lowering was announced and its time has passed
            enterNext();
        }
    }

    /// What is said between `from` and `to` milliseconds of a timed step.
    void announce(const Step& step, long long from, long long to)
    {
        const long long length = lengthMs(step);
        const auto crossed = [&](long long at) { return from < at && at <= to && at < length; };
        if (step.kind == StepKind::Hold) {
            if (crossed(length / 2))
                say(Prompt::HalfWay);
            if (crossed(length - kMinuteMs))
                say(Prompt::OneMinute);
            askEveryMinute(step, from, std::min(to, length - 1));
        }
        if (length > 2 * kTenSecondsMs && crossed(length - kTenSecondsMs))
            say(Prompt::TenSeconds);
    }

    /// While current may flow, the reading is asked for every minute (common practice, no source: it drifts up).
    void askEveryMinute(const Step& step, long long from, long long to)
    {
        if (!inPhase(step.kind) || m_s.current == Current::Zero)
            return;
        for (long long minute = from / kMinuteMs; minute < to / kMinuteMs; ++minute)
            emit(EffectKind::AskMeter, Prompt::LookAtMeter);
    }

    void enterNext()
    {
        ++m_s.step;
        m_s.stepElapsedMs = 0;
        m_changed = true;
        const Step& step = stepOf(m_s);
        if (step.kind == StepKind::Raise) {
            m_s.current = Current::Flowing; // from here on current may flow
            ++m_s.stretch;
            m_s.steady = false;
        }
        emit(EffectKind::StepChanged);
        say(step.prompt);
        if (step.kind == StepKind::Finish) {
            m_s.phase = Phase::Finished;
            say(Prompt::Done);
            emit(EffectKind::Completed);
        }
    }

    void say(Prompt prompt) { emit(EffectKind::Say, prompt); }
    void emit(EffectKind kind, std::optional<Prompt> prompt = std::nullopt) { m_effects.push_back({kind, prompt}); }

    State m_s;
    Instant m_now;
    std::vector<Effect> m_effects;
    bool m_changed = false;
    bool m_minute = false;
};

} // namespace

Milliamps State::target() const
{
    const Milliamps limit = script.request.limit;
    const Milliamps most = steady ? limit : Milliamps{std::max(0.0, limit.mA - kDriftRoom.mA)};
    return std::min(wanted, most);
}

State prepared(const protocol::Script& script, Milliamps target)
{
    State s;
    s.script = script;
    const bool sound = std::isfinite(target.mA) && target.mA >= 0;
    s.wanted = sound ? std::min(target, script.request.limit) : script.request.limit;
    return s;
}

Result<State> preparedInstead(const State& present, const protocol::Script& script, Milliamps target)
{
    if (!ended(present) && present.current != Current::Zero)
        return Error{"current-flows", "script",
                     "current may be flowing: change neither site nor waveform, lower to zero and stop first"};
    return prepared(script, target);
}

Result<Outcome> step(const State& state, const Event& event, Instant now)
{
    if (state.script.steps.empty())
        return Error{"no-script", "state",
                     "no session is prepared; choose a site and begin again with the current at zero"};
    return Stepper(state, now).take(event);
}

Seconds remainingInStep(const State& state)
{
    if (ended(state) || state.script.steps.empty())
        return {};
    const long long left = lengthMs(stepOf(state)) - state.stepElapsedMs;
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
