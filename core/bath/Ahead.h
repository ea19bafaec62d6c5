#pragma once

#include "bath/Engine.h"

#include <vector>

// What the rest of a session sounds like while nobody answers: the engine led on by ticks alone. A player that has
// this beforehand leads on while the app cannot.
namespace firstdew::bath {

/// A prompt or a tone of the time ahead.
struct Cue {
    long long atMs = 0; ///< from the moment that was looked ahead from
    Effect effect;
};

struct Ahead {
    std::vector<Cue> cues; ///< in the order of time
    /// From here on nothing can be said without the app: silence, which tells the person to switch off.
    long long endsMs = 0;
};

/// How far is looked ahead: longer than any phase with its lowering (our own choice).
inline constexpr long long kAheadMs = 20 * 60'000;

/// Whether that may be said although nobody answers: it holds, lowers, takes out or switches off. What raises, swaps or
/// speaks of an end waits for a person or for the app that leads.
[[nodiscard]] bool saidUnanswered(protocol::Prompt prompt);

/// The rest of the session from `now` on. `state` has just been led up to `now`.
[[nodiscard]] Ahead ahead(const State& state, Instant now, long long mostMs = kAheadMs);

} // namespace firstdew::bath
