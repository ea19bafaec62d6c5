#pragma once

#include "bath/Turn.h"

namespace firstdew::bath {

/// Time between two instants by the clock that never jumps; 0 where that one began anew. The wall clock is set and
/// corrected: it moves no step.
[[nodiscard]] long long between(const Instant& a, const Instant& b);

/// How long nobody led, by whichever clock saw more of it.
[[nodiscard]] long long unseen(const Instant& a, const Instant& b);

/// Lets the session live from its last event up to `turn.now`: clocks of steps, what is said on the way, alarms
/// repeated.
void passTime(Turn& turn);

/// `ms` of current at the level known are counted.
void spend(State& s, long long ms);

} // namespace firstdew::bath
