#pragma once

#include "bath/Turn.h"

namespace firstdew::bath {

/// Whether nobody led for so long that the clock of a step means nothing.
[[nodiscard]] bool wasAway(const Turn& turn);

/// An event after such a gap: a tick asks what the machine did; only ending is taken at its word.
[[nodiscard]] Result<Outcome> takeAfterGap(Turn& turn, const Event& event);

/// An event while the person's word on what the machine did is waited for.
[[nodiscard]] Result<Outcome> takeWhileAwaiting(Turn& turn, const Event& event);

/// From now on nothing is known of the current.
void awaitMeanwhile(State& s);

} // namespace firstdew::bath
