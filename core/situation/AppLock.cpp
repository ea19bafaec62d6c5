#include "situation/AppLock.h"

#include <algorithm>

namespace firstdew::situation {

namespace {

/// The steady clock may stand while a phone sleeps, and the wall clock may be set: the longer time counts.
bool awayForLong(Instant left, Instant now)
{
    const long long wall = now.wallMs - left.wallMs;
    const long long steady = now.monotonicMs - left.monotonicMs;
    return wall < 0 || steady < 0 || std::max(wall, steady) >= kAwayMs;
}

bool isConfirmed(const LockState& state, Instant now)
{
    if (!state.confirmed)
        return false;
    return !state.left || !awayForLong(*state.left, now);
}

} // namespace

LockState afterLeaving(LockState state, Instant now)
{
    if (!state.left)
        state.left = now;
    return state;
}

LockState afterReturn(LockState state, Instant now)
{
    state.confirmed = isConfirmed(state, now);
    state.left.reset();
    return state;
}

LockState afterConfirming(LockState state, Instant now)
{
    state.confirmed = true;
    if (state.left) // a system's own dialog may stand in front
        state.left = now;
    return state;
}

Guard guard(const LockState& state, const LockFacts& facts, Instant now)
{
    if (!facts.wanted || isConfirmed(state, now))
        return Guard::Open;
    if (!facts.canAsk)
        return Guard::Unguarded;
    return facts.session ? Guard::SessionOnly : Guard::Locked;
}

} // namespace firstdew::situation
