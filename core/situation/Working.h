#pragma once

#include "situation/Assess.h"
#include "situation/DampDays.h"

namespace firstdew::situation {

/// Whether the treatment works at a site, by what the person noted. It is no diagnosis.
enum class Working { TooEarly, NotYet, Partly, Yes };

/// Why it is too early to say.
enum class WorkingWait {
    NoSession,    ///< nothing was treated there yet
    MoreCheckIns, ///< `missing` check-ins more within four weeks
    MoreSessions  ///< no change yet, and a course takes `missing` sessions more
};

/// The answer and the figures behind it.
struct SiteWorking {
    Working answer{};
    std::optional<WorkingWait> wait; ///< only where it is too early
    int missing = 0;
    std::optional<double> dampBefore; ///< damp days a week before the first session
    std::optional<double> dampNow;    ///< and in the last four weeks, since that session
    std::optional<int> scoreBefore;   ///< severity 1 to 4 before the course, if there is a score that is recent enough
    std::optional<int> scoreNow;      ///< and that score
    bool shortSpells = false;         ///< the latest dry spells each lasted less than kShortSpellDays
    int sessions = 0;                 ///< days with a completed session
    bool manySessions = false;        ///< as many as control usually takes
    bool operator==(const SiteWorking&) const = default;
};

/// Days looked at, before the first session and up to today: as long as a course (our own choice).
inline constexpr int kWorkingDays = 28;
/// Check-ins in these days from which they tell something (our own choice).
inline constexpr int kLeastNow = 7;
inline constexpr int kLeastBefore = 4;
/// Check-ins from which a line of them tells how long somebody stays dry: two weeks (our own choice).
inline constexpr int kCheckInsThatTell = 14;
/// Sessions of the default course: before them, no change says little (number of sessions: common practice).
inline constexpr int kSessionsOfCourse = 7;
/// Most people need a session twice a week to once a month (common practice); shorter spells are not yet enough.
inline constexpr int kShortSpellDays = 3;
/// Shares of the damp days before at which it counts as working in part and as working. They follow what one and two
/// steps of the score stand for: half the sweat, and 80 % less (Solish et al., Dermatol Surg 2007;33:908-923; from
/// memory). That damp days can be read in the same way is our own choice.
inline constexpr double kPartlyShare = 0.5;
inline constexpr double kWorkingShare = 0.2;

/// Answers by the damp days a week now against those before the first session, by the score if it is at most
/// protocol::kScoreDays old, and by the length of the latest dry spells. Where figures disagree the answer is Partly.
/// Without notes from before, every day counts as damp before (our own choice).
[[nodiscard]] SiteWorking workingAt(const Diary& diary, const SiteSituation& site);

} // namespace firstdew::situation

namespace firstdew::facts {
FIRSTDEW_TOKENS(situation::Working, "too-early", "not-yet", "partly", "yes");
FIRSTDEW_TOKENS(situation::WorkingWait, "no-session", "more-check-ins", "more-sessions");
} // namespace firstdew::facts
