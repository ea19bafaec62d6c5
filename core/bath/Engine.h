#pragma once

#include "facts/Fact.h"
#include "facts/Result.h"
#include "protocol/Script.h"

#include <optional>
#include <span>
#include <vector>

// The running session as a pure state machine. Time comes in with each event; every event that is
// accepted is to be appended to the journal before its effects are carried out, so that replaying the
// journal's events gives back the same state.
namespace firstdew::bath {

using namespace facts;

struct Event {
    BathEventKind kind{};
    std::optional<Milliamps> reading;   ///< for Reading
    std::optional<Meanwhile> meanwhile; ///< for Resumed
};

/// Meter readings above this are taken for a slip of the finger and refused (our own choice: far above any limit).
inline constexpr Milliamps kMostPlausibleReading{100};
/// Room left under the limit while the reading may still drift up (our own choice, cautious; the drift of
/// 1-3 mA a minute is common practice, no source).
inline constexpr Milliamps kDriftRoom{3};
/// Readings in a row that differ by no more count as steady (our own choice).
inline constexpr Milliamps kSteadyWithin{0.5};
/// An alarm that stands is sounded again after this time.
inline constexpr long long kAlarmRepeatMs = 3000;
/// Longer without a kept event (there is one every minute), and the app was not there: it has to ask what the machine
/// did.
inline constexpr long long kGapMs = 90'000;

enum class EffectKind {
    Say,   ///< speak `prompt`
    Alarm, ///< reading above the limit: loud, at once; repeated until a lower reading or stop
    AlarmOff,
    StepChanged,
    AskMeter,     ///< a minute has passed: ask for the reading
    AskMeanwhile, ///< back after an interruption: what did the machine do?
    Completed,    ///< all phases done
    Interrupted   ///< script starts again or ends; charge so far kept as interrupted
};

struct Effect {
    EffectKind kind{};
    std::optional<protocol::Prompt> prompt;
};

/// What is known of the current: never assumed zero after an interruption.
enum class Current { Zero, Flowing, Unknown };
enum class Phase { Running, AwaitingMeanwhile, Finished, Stopped };

struct MeterReading {
    long long atMs = 0; ///< of session time
    Milliamps current;
    int phase = 0;
    int polarity = 0;
    std::optional<Side> side;
    int stretch = 0; ///< counts how often the current was raised from zero: no line joins two stretches
    bool operator==(const MeterReading&) const = default;
};

/// Where the session stood at its last kept event. A break in the events is measured and counted from there, so that
/// replaying the journal, which knows of kept events alone, comes to the same.
struct Kept {
    Instant at;
    long long stepElapsedMs = 0;
    long long sessionMs = 0;
    bool operator==(const Kept&) const = default;
};

struct State {
    protocol::Script script;
    std::size_t step = 0;
    Phase phase = Phase::Running;
    Current current = Current::Zero;
    long long stepElapsedMs = 0; ///< time spent in this step, frozen while awaiting an answer
    long long sessionMs = 0;     ///< time since Begin, frozen while awaiting an answer
    Instant last;                ///< of the last event; while awaiting an answer, of the last one before
    Kept kept;
    Milliamps wanted;    ///< level aimed for: what was comfortable last, lowered by discomfort
    bool steady = false; ///< the last two readings of this phase were alike
    std::optional<MeterReading> lastReading;
    std::vector<MeterReading> readings;    ///< of the present run of the script
    std::vector<MeterReading> interrupted; ///< of runs that started again
    bool alarm = false;
    int stretch = 0; ///< times the current was raised from zero
    int restarts = 0;
    int discomforts = 0;
    bool operator==(const State&) const = default;
    /// Advised level now: what is wanted, but 3 mA under the limit until two readings in a row are steady.
    [[nodiscard]] Milliamps target() const;
};

struct Outcome {
    State state;
    std::vector<Effect> effects;
    bool journal = true; ///< whether this event changed anything and has to be kept (an idle tick does not)
};

/// The state at the check list, before Begin.
[[nodiscard]] State prepared(const protocol::Script& script, Milliamps target);

/// Another session in place of `present`, say with another waveform. Refused while current may flow in that one.
[[nodiscard]] Result<State> preparedInstead(const State& present, const protocol::Script& script, Milliamps target);

/// The next state, or why the event is impossible now (the state stands). Errors name what is safe to do.
/// Time counts up to `now` whatever the event; ticks come at least every second while the session runs. After more
/// than kGapMs without a kept event only Stop, OutOfWater and Resumed are taken; a Tick asks what the machine did
/// meanwhile.
[[nodiscard]] Result<Outcome> step(const State& state, const Event& event, Instant now);

/// The state after events read back from the journal, and then the phone's return at `now`: awaiting
/// the person's word on what the machine did, unless the session had ended.
[[nodiscard]] Result<State> replay(const BathPrepared& prepared, std::span<const BathEvent> events);

/// The prepared script a journal entry stands for.
[[nodiscard]] Result<protocol::Script> scriptOf(const BathPrepared& prepared);

/// Remaining time of the present step, and of the whole session, if nothing is interrupted.
[[nodiscard]] Seconds remainingInStep(const State& state);
[[nodiscard]] Seconds remainingInAll(const State& state);

} // namespace firstdew::bath
