#pragma once

#include "facts/Payloads.h"

#include <optional>

namespace firstdew::situation {

using namespace facts;

/// How long the app may be away from the front, in milliseconds, before the owner is asked for again.
inline constexpr long long kAwayMs = 60'000;

/// What the app lock remembers. A fresh one, of an app that just started, has nobody confirmed.
struct LockState {
    bool confirmed = false;      ///< the owner was confirmed, and the app was not away for long since
    std::optional<Instant> left; ///< when the app left the front; nothing while it is there
    bool operator==(const LockState&) const = default;
};

/// The app left the front. Leaving again while away changes nothing.
[[nodiscard]] LockState afterLeaving(LockState state, Instant now);
/// The app is at the front again. Who was away for long is no longer confirmed, whatever else runs meanwhile.
[[nodiscard]] LockState afterReturn(LockState state, Instant now);
/// The system confirmed the owner.
[[nodiscard]] LockState afterConfirming(LockState state, Instant now);

struct LockFacts {
    bool wanted = false;  ///< somebody whose record is here wants the lock (diary::lockWanted)
    bool canAsk = false;  ///< the system has a lock, and can ask for it
    bool session = false; ///< a session runs, waits for an answer or has an end that is not written down; not practice
};

enum class Guard {
    Open,        ///< everything is shown
    Unguarded,   ///< everything is shown, and said that the system cannot ask
    SessionOnly, ///< the session is shown and nothing else: Stop is never behind a lock
    Locked,      ///< nothing is shown until the owner is confirmed
};

/// What may be shown now. Somebody away for kAwayMs or more by either clock counts as gone, and so does everybody once
/// a clock went back. A system that cannot ask locks nobody out of their own record.
[[nodiscard]] Guard guard(const LockState& state, const LockFacts& facts, Instant now);

} // namespace firstdew::situation
