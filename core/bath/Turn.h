#pragma once

#include "bath/Engine.h"

#include <string>

// Inside the engine: one event's turn. The files beside this one each do a part of it: PassTime.h what the clock does,
// Absence.h what a break in the events means, Engine.cpp what the person reports.
namespace firstdew::bath {

inline constexpr long long kMinuteMs = 60'000;

/// The state an event works on, and what has to be done because of it.
struct Turn {
    State s;
    Instant now;
    long long late = kLateMs; ///< without an event for longer, nobody led
    std::vector<Effect> effects{};
    std::vector<Kept> keep{};
    bool changed = false; ///< more than the time
    bool minute = false;  ///< a minute of the session was filled

    [[nodiscard]] const protocol::Step& step() const { return s.script.steps[s.step]; }
    [[nodiscard]] const protocol::ScriptRequest& request() const { return s.script.request; }
    [[nodiscard]] bool under() const { return request().way == WayOfWorking::HandsUnder; }

    void say(protocol::Prompt prompt) { emit(EffectKind::Say, prompt); }
    /// What is said when the session is stopped.
    void sayStopped()
    {
        if (s.current != Current::Zero)
            say(protocol::Prompt::MachineOff);
        say(protocol::stoppedPrompt(request()));
    }
    void sayLower() { say(protocol::lowerPrompt(request())); }
    void emit(EffectKind kind, std::optional<protocol::Prompt> prompt = std::nullopt)
    {
        effects.push_back({kind, prompt});
    }

    void enter(std::size_t step);
    void enterNext() { enter(s.step + 1); }
    /// After a phase was lowered, on the person's word.
    void leavePhase();
    /// Where the present phase begins, at zero current; what was held of it counts.
    void enterPhaseAgain();
    [[nodiscard]] std::size_t phaseBegin() const;
    /// What was read so far belongs to no run of the script any more.
    void keepAsInterrupted();
    /// Machine off, and back to the check list, or enough for today; what was read so far is kept as interrupted.
    void startAgain();
    void stop(StoppedBy by = StoppedBy::Person);
    void silenceAlarm();
    /// The outcome; nothing of the turn is left.
    [[nodiscard]] Outcome finish(const std::optional<Event>& kept)
    {
        if (kept)
            keep.push_back({*kept, now});
        if (!keep.empty())
            s.kept = keep.back().at;
        return {std::move(s), std::move(effects), std::move(keep)};
    }
};

/// Raising, holding or lowering: the steps in which current may flow.
[[nodiscard]] inline bool inPhase(protocol::StepKind kind)
{
    using enum protocol::StepKind;
    return kind == Raise || kind == Hold || kind == Lower;
}

/// step(), where nothing is late before `late` milliseconds.
[[nodiscard]] Result<Outcome> advance(const State& state, const Event& event, Instant now, long long late);

/// Of the charge that one day may bring, nothing is left.
[[nodiscard]] bool chargeIsSpent(const State& s);

[[nodiscard]] inline long long lengthMs(const protocol::Step& step) { return 1000LL * step.length.s; }

[[nodiscard]] inline bool ended(const State& s) { return s.phase == Phase::Finished || s.phase == Phase::Stopped; }

[[nodiscard]] inline Error refuse(std::string code, std::string input, std::string message)
{
    return {std::move(code), std::move(input), std::move(message)};
}

} // namespace firstdew::bath
