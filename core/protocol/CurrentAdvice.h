#pragma once

#include "diary/Diary.h"

#include <vector>

namespace firstdew::protocol {

using namespace facts;
using diary::Diary;

/// Why a level is advised.
enum class CurrentReason {
    FirstTime,         ///< no session yet at this site: begin low
    AfterComfortable,  ///< one step above the last comfortable level
    AfterDiscomfort,   ///< one step below it
    AtLimit,           ///< the step would have gone above the limit
    AfterInterruption, ///< the last session was not completed: the same level again
    TryPulsed,         ///< direct not tolerated above 10 mA: pulsed next, if the machine has it
    TryDirect,         ///< an older child comfortable at 20 mA pulsed: suggest direct for hands and feet
    AfterIrritation,   ///< redness, itch or pain lasted to the next day, or a blister or burn: well below
    AfterLapse,        ///< long without a session there: at most two thirds of the last level
    AsAgreed,          ///< nothing known yet; at most what was agreed when the person was taught
    SameAgain,         ///< strong, or nobody said it was comfortable: the same level again
    StartAnew,         ///< half a year or more without a session there: begin low again
    NoReading          ///< treated there, but no reading with this waveform was ever noted: begin low
};

struct CurrentAdvice {
    Milliamps target;
    std::optional<Milliamps> last;      ///< the last comfortable level it builds on
    std::vector<CurrentReason> reasons; ///< the deciding one first
};

/// A child old enough to be advised to try direct current (our own choice).
inline constexpr int kOlderChildYears = 12;
/// First aims where nothing is known of a person (our own choice, cautious), at most half of the limit.
inline constexpr Milliamps kFirstDirect{10};
inline constexpr Milliamps kFirstPulsed{15};
inline constexpr Milliamps kFirstPulsedArmpits{4};
[[nodiscard]] Milliamps firstAim(Site site, Waveform waveform, Milliamps limit);
/// Days without a session at a site after which the level comes down, and after which it starts anew, at the first aim
/// or at what the lapse leaves, whichever is less (our own choice).
inline constexpr int kLapseDays = 8 * 7;
inline constexpr int kAnewDays = 182;
/// Direct current not tolerated above this speaks for pulsed (common practice, no source).
inline constexpr Milliamps kPoorlyTolerated{10};

/// The level to aim for in the next session at `site` with `waveform`, never above `limit`. Advice on what was
/// comfortable before, never a push through discomfort.
[[nodiscard]] CurrentAdvice currentAdviceFor(const Diary& diary, Site site, Waveform waveform, Milliamps limit);

} // namespace firstdew::protocol

namespace firstdew::facts {
FIRSTDEW_TOKENS(protocol::CurrentReason, "first-time", "after-comfortable", "after-discomfort", "at-limit",
                "after-interruption", "try-pulsed", "try-direct", "after-irritation", "after-lapse", "as-agreed",
                "same-again", "start-anew", "no-reading");
} // namespace firstdew::facts
