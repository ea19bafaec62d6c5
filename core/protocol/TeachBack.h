#pragma once

#include "diary/Diary.h"
#include "facts/Result.h"

#include <optional>
#include <vector>

// Teach-back: a first session that somebody who knows the treatment watched. Common practice in nursing, no source;
// what is asked is our own choice (facts::TaughtTick).
namespace firstdew::protocol {

using namespace facts;
using diary::Diary;

/// Longest name of who watched, in characters (our own choice).
inline constexpr std::size_t kMostWatcher = 120;

/// The taught session of `site` that counts: the latest one, and of one day the one recorded last. Nullptr where nobody
/// was taught there.
[[nodiscard]] const Entry<Taught>* taughtAt(const Diary& diary, Site site);
/// The taught session of each kind of session that has one, in the order of the sites.
[[nodiscard]] std::vector<Entry<Taught>> taughtSessions(const Diary& diary);

/// Sessions at a site after which it is asked whether somebody taught it (our own choice: as long as the list is gone
/// through line by line).
inline constexpr int kTeachBackSessions = 3;
/// Whether to ask that after a session at `site`: nobody was taught there, and at most kTeachBackSessions - 1 were
/// completed there before today.
[[nodiscard]] bool offersTeachBack(const Diary& diary, Site site);

/// Whether `taught` may be recorded on the diary's day. Refused: nobody named, nothing ticked and no level agreed, a
/// waveform that is not open at that site, and a level of zero or above the limit that holds there.
[[nodiscard]] Result<Done> checkTaught(const Diary& diary, const Taught& taught);

/// The level agreed to begin with at `site` in that waveform: that of the care sheet in force or of the taught session,
/// the lower one where both say one.
[[nodiscard]] std::optional<Milliamps> agreedLevel(const Diary& diary, Site site, Waveform waveform);

} // namespace firstdew::protocol
