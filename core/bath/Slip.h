#pragma once

#include "bath/Turn.h"

namespace firstdew::bath {

/// Stop was pressed: it is said at once, and nothing moves until it is taken back or final.
void pressStop(Turn& turn);

/// An event while a stop can still be taken back. A stop that nobody took back in time is final, whatever comes then.
/// Anything that the person reports in time takes it back, too.
[[nodiscard]] Result<Outcome> takeWhileStopping(Turn& turn, const Event& event);

} // namespace firstdew::bath
