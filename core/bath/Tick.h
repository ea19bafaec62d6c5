#pragma once

#include "bath/Engine.h"

namespace firstdew::bath {

/// Whoever leads a session ticks at least this often (our own choice: nobody notices a tenth of a second).
inline constexpr int kTickMs = 100;

/// Milliseconds until the next tick of whoever leads. All that is told by the clock is told at a whole second of its
/// step: that moment is met, and not passed by a tick.
[[nodiscard]] int untilNextTick(const State& state);

} // namespace firstdew::bath
