#pragma once

#include "bath/Turn.h"

namespace firstdew::bath {

/// Time between two instants, never below zero: by the clock that never jumps; by the wall where that one stood still
/// or began anew.
[[nodiscard]] long long between(const Instant& a, const Instant& b);

/// Lets the session live from its last event up to `turn.now`: clocks of steps, what is said on the way, alarms
/// repeated.
void passTime(Turn& turn);

} // namespace firstdew::bath
