#pragma once

#include "diary/Diary.h"

#include <optional>

namespace firstdew::protocol {

using namespace facts;
using diary::Diary;

/// The first sessions at a site that are prepared line by line (our own choice, cautious).
inline constexpr int kLongWaySessions = 3;
/// Days without a completed session at a site after which the list is gone through again (our own choice, cautious).
inline constexpr int kLongWayDays = 28;

/// Minutes for which what was said of health and skin before a session stands (our own choice, cautious).
inline constexpr int kSaidHolds = 30;

/// Why the preparation is gone through line by line and not confirmed in one sentence.
enum class LongWayReason {
    FirstTimes, ///< fewer than kLongWaySessions sessions were completed there
    LongAgo,    ///< the last one was kLongWayDays ago or more
    Incident,   ///< something went wrong in the latest session of that skin, or after it
    OtherKit,   ///< another machine, or its polarity is swapped another way
    HandsUnder  ///< both hands under water, and never led through that before
};

/// The reason to go the long way into a session at `site`; nothing where the short way is enough. Whether the session
/// may begin at all is asked of mayBegin() either way.
[[nodiscard]] std::optional<LongWayReason> longWayReason(const Diary& diary, Site site, WayOfWorking way);

/// Whether something went wrong in the latest session that treated skin of `site`: it was not completed or not written
/// down, the reading was above the limit, the current had to come down, limbs left the water, nobody led for a while,
/// it was unpleasant or painful, or the skin did not take it well then or since.
[[nodiscard]] bool incidentAtLatest(const Diary& diary, Site site);

/// How a session is to be.
struct SessionChoice {
    Waveform waveform{};
    WayOfWorking way{};
    Side firstSide{};
    bool operator==(const SessionChoice&) const = default;
};

/// As last time at `site`; what is not open any more, or was not tolerated, gives way to what the trade offers first.
[[nodiscard]] SessionChoice choiceFor(const Diary& diary, Site site);

/// The session to follow one that was completed today at `site`: hands, then feet, where the last time at one of them
/// was also a day of the other. Nothing where no such habit is, or the other was treated today already.
[[nodiscard]] std::optional<Site> usuallyFollowedBy(const Diary& diary, Site site);

} // namespace firstdew::protocol

namespace firstdew::facts {
FIRSTDEW_TOKENS(protocol::LongWayReason, "first-times", "long-ago", "incident", "other-kit", "hands-under");
} // namespace firstdew::facts
