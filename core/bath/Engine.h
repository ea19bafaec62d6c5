#pragma once

#include "diary/Diary.h"
#include "facts/Fact.h"
#include "facts/Result.h"
#include "protocol/Drawings.h"
#include "protocol/MayBegin.h"
#include "protocol/Script.h"

#include <optional>
#include <span>
#include <string>
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
/// Readings this far apart in time that differ by no more than kSteadyWithin count as steady (our own choice).
inline constexpr Milliamps kSteadyWithin{0.5};
inline constexpr long long kSteadyApartMs = 45'000;
/// An alarm that stands is sounded again after this time.
inline constexpr long long kAlarmRepeatMs = 3000;
/// What the machine did is asked again, aloud, after this time without an answer (our own choice).
inline constexpr long long kAskAgainMs = 10'000;
/// A tick that comes later than this asks what the machine did and moves nothing (our own choice: a phone that leads
/// ticks many times a second).
inline constexpr long long kLateMs = 10'000;
/// Longer without a kept event (there is one every minute), and the app was not there (our own choice).
inline constexpr long long kGapMs = 90'000;
/// A stop can be taken back for this long (our own choice: long enough to see a drip on the screen, too short to wait
/// for).
inline constexpr long long kSlipMs = 5000;
/// "I switched it off" goes on with the session only this soon after (our own choice, cautious).
inline constexpr long long kResumableMs = 600'000;
/// Restarts of one skin in one day (our own choice, cautious).
inline constexpr int kMostRestarts = 2;
/// Of the planned charge, for one skin in one day, where a session starts again (our own choice, cautious).
inline constexpr double kMostOfPlanned = 1.5;

enum class EffectKind {
    Say,   ///< speak `prompt`
    Alarm, ///< reading above the limit: loud, at once; repeated until a lower reading or stop
    AlarmOff,
    StepChanged,
    AskMeter,     ///< time to ask for the reading
    AskMeanwhile, ///< nobody led: ask aloud, with the alarm, what the machine did; repeated until answered
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

/// Who or what ended a session early.
enum class StoppedBy { Person, Enough, TooLongAgo, OtherVersion };

/// What that skin had of current earlier on the same day.
struct Before {
    int runs = 0; ///< begun with current, each start again counted
    MilliampMinutes charge;
    bool operator==(const Before&) const = default;
};

/// Where the session goes on, once list and waveform are confirmed again.
struct Resume {
    std::size_t step = 0;
    Instant left; ///< the last moment before nobody led
    bool operator==(const Resume&) const = default;
};

struct State {
    protocol::Script script;
    std::size_t step = 0;
    Phase phase = Phase::Running;
    Current current = Current::Zero;
    long long stepElapsedMs = 0; ///< time spent in this step, frozen while awaiting an answer
    long long sessionMs = 0;     ///< time since Begin, frozen while awaiting an answer
    long long heldMs = 0;        ///< of the hold of this phase, before it was interrupted
    Instant last;                ///< of the last event; while awaiting an answer, of the last one before
    Instant kept;                ///< of the last event that was kept
    Instant asked;               ///< when it was last asked what the machine did
    Milliamps wanted;            ///< level aimed for: what was comfortable last, lowered by discomfort
    bool steady = false;         ///< the readings of this phase have come to rest
    std::optional<MeterReading> lastReading;
    std::vector<MeterReading> readings;    ///< of the present run of the script
    std::vector<MeterReading> interrupted; ///< of runs that started again
    bool alarm = false;
    int stretch = 0; ///< times the current was raised from zero
    int restarts = 0;
    int discomforts = 0;
    Before before;
    Milliamps planned;   ///< level the session was planned with
    long long spent = 0; ///< charge by the level known at each moment, in µA·ms
    std::optional<Resume> resume;
    std::optional<Instant> pressed; ///< when Stop was pressed, while it can be taken back
    StoppedBy stoppedBy{};
    bool operator==(const State&) const = default;
    /// Advised level now: what is wanted, but 3 mA under the limit until the readings are steady.
    [[nodiscard]] Milliamps target() const;
};

/// An event and when it happened: what the journal keeps.
struct Kept {
    Event event;
    Instant at;
};

struct Outcome {
    State state;
    std::vector<Effect> effects;
    std::vector<Kept> keep; ///< what has to be kept, in this order; nothing for an idle tick
};

/// The state at the check list, before Begin.
[[nodiscard]] State prepared(const protocol::Script& script, Milliamps target, const Before& before = {});

/// What a session is kept as before its first event.
[[nodiscard]] BathPrepared preparationOf(const State& state, std::string bath);

/// What sessions of one skin on one day come to.
[[nodiscard]] Before sumOf(std::span<const State> earlier);
/// What the led sessions of today come to that treated skin which `site` treats, too.
[[nodiscard]] Before earlierToday(const diary::Diary& diary, Site site);
/// Whether that skin has had as many runs, or as much charge, as one day may bring it.
[[nodiscard]] bool enoughForToday(const State& state);
/// The same of the skin that `site` treats, before a session is prepared: measured by what was planned first today.
[[nodiscard]] bool enoughToday(const diary::Diary& diary, Site site);
/// Whether a session may be prepared. Refused: skin that had enough for today, before anything is asked; and what
/// protocol::mayBegin refuses.
[[nodiscard]] Result<protocol::LimitAnswer> mayPrepare(const diary::Diary& diary, Site site, Waveform waveform,
                                                       WayOfWorking way, protocol::Phone phone = {});

/// The next state, or why the event is impossible now (the state stands). Errors name what is safe to do.
/// Time counts up to `now` whatever the event, by the clock that never jumps; ticks come at least every second while
/// the session runs. More than kLateMs after the last one a Tick asks what the machine did, and only Stop, OutOfWater
/// and Resumed are taken besides.
[[nodiscard]] Result<Outcome> step(const State& state, const Event& event, Instant now);

/// The state after events read back from the journal, and then the phone's return at `now`: awaiting
/// the person's word on what the machine did, unless the session had ended. A session that was led by another order of
/// steps comes back as stopped, with the readings it has.
[[nodiscard]] Result<State> replay(const BathPrepared& prepared, std::span<const BathEvent> events);

/// Seconds in which a stop can still be taken back; 0 where nobody pressed Stop.
[[nodiscard]] Seconds stopsIn(const State& state, Instant now);

/// What the large button of the running page says now; nothing where there is no such button.
[[nodiscard]] std::optional<BathEventKind> mainEvent(const State& state);
/// Whether both hands are to be under water now, so that nobody can touch anything.
[[nodiscard]] bool handsAreUnder(const State& state);

/// What is to be done now, drawn: the step's own work, or first to bring the current down or the hands back in. Empty
/// where the session does not run.
[[nodiscard]] protocol::Drawings drawingsNow(const State& state);

/// Whether a meter can show that.
[[nodiscard]] bool plausible(Milliamps reading);
/// Whether that may count as a comfortable level: above zero and not above the limit. What set off the alarm never
/// does.
[[nodiscard]] bool mayBeComfortable(Milliamps reading, Milliamps limit);
/// The highest reading of the session that may count as comfortable.
[[nodiscard]] std::optional<Milliamps> mostComfortable(const State& state);
/// Whether the readings, all of one phase and one stretch, have come to rest: two at least 45 s apart within 0.5 mA,
/// all between them too, and no rise over the last three (our own choice).
[[nodiscard]] bool isSteady(std::span<const MeterReading> readings);

/// The prepared script a journal entry stands for.
[[nodiscard]] Result<protocol::Script> scriptOf(const BathPrepared& prepared);

/// Remaining time of the present step, and of the whole session, if nothing is interrupted.
[[nodiscard]] Seconds remainingInStep(const State& state);
[[nodiscard]] Seconds remainingInAll(const State& state);

} // namespace firstdew::bath

namespace firstdew::facts {
FIRSTDEW_TOKENS(bath::StoppedBy, "person", "enough", "too-long-ago", "other-version");
} // namespace firstdew::facts
