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
    std::vector<Effect> effects;
    bool changed = false; ///< more than the time
    bool minute = false;  ///< a minute of the session was filled

    [[nodiscard]] const protocol::Step& step() const { return s.script.steps[s.step]; }

    void say(protocol::Prompt prompt) { emit(EffectKind::Say, prompt); }
    void emit(EffectKind kind, std::optional<protocol::Prompt> prompt = std::nullopt)
    {
        effects.push_back({kind, prompt});
    }

    void enterNext();
    /// What was read so far belongs to no run of the script any more.
    void keepAsInterrupted();
    /// Machine off, and back to the check list; what was read so far is kept as interrupted.
    void startAgain();
    void stop();
    void silenceAlarm();
    /// The outcome; nothing of the turn is left.
    [[nodiscard]] Outcome finish(bool keep)
    {
        if (keep)
            s.kept = {s.last, s.stepElapsedMs, s.sessionMs};
        return {std::move(s), std::move(effects), keep};
    }
};

/// Raising, holding or lowering: the steps in which current may flow.
[[nodiscard]] inline bool inPhase(protocol::StepKind kind)
{
    using enum protocol::StepKind;
    return kind == Raise || kind == Hold || kind == Lower;
}

[[nodiscard]] inline long long lengthMs(const protocol::Step& step) { return 1000LL * step.length.s; }

[[nodiscard]] inline bool ended(const State& s) { return s.phase == Phase::Finished || s.phase == Phase::Stopped; }

[[nodiscard]] inline Error refuse(std::string code, std::string input, std::string message)
{
    return {std::move(code), std::move(input), std::move(message)};
}

} // namespace firstdew::bath
