#pragma once

#include "diary/Diary.h"

#include <vector>

namespace firstdew::protocol {

using namespace facts;
using diary::Diary;

/// Why a level is advised.
enum class CurrentReason {
    FirstTime,         ///< nothing known at this site with this waveform: begin low
    AfterComfortable,  ///< one step above the last comfortable level
    AfterDiscomfort,   ///< one step below it
    AtLimit,           ///< the step would have gone above the limit
    AfterInterruption, ///< the last session was not completed: the same level again
    TryPulsed,         ///< direct not tolerated above 10 mA: pulsed next, if the machine has it
    TryDirect,         ///< an older child comfortable at 20 mA pulsed: suggest direct for hands and feet
    SameAgain          ///< strong, or nobody said it was comfortable: the same level again
};

struct CurrentAdvice {
    Milliamps target;
    std::optional<Milliamps> last;      ///< the last comfortable level it builds on
    std::vector<CurrentReason> reasons; ///< the deciding one first
};

/// A child old enough to be advised to try direct current (our own choice).
inline constexpr int kOlderChildYears = 12;
/// Direct current not tolerated above this speaks for pulsed (common practice, no source).
inline constexpr Milliamps kPoorlyTolerated{10};

/// The level to aim for in the next session at `site` with `waveform`, never above `limit`. Advice on what was
/// comfortable before, never a push through discomfort.
[[nodiscard]] CurrentAdvice currentAdviceFor(const Diary& diary, Site site, Waveform waveform, Milliamps limit);

} // namespace firstdew::protocol

namespace firstdew::facts {
FIRSTDEW_WORDS(protocol::CurrentReason, "first-time", "after-comfortable", "after-discomfort", "at-limit",
               "after-interruption", "try-pulsed", "try-direct", "same-again");
} // namespace firstdew::facts
