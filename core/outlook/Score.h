#pragma once

#include "outlook/Forecast.h"
#include "outlook/Odds.h"

#include <vector>

namespace firstdew::outlook {

/// What the forecast of one evening said of the next day, and what the diary then said.
struct JudgedDay {
    LocalDate day;
    double said = 0;   ///< chance of dampness on that day, by the diary up to the evening before
    bool damp = false; ///< the report of that day
};

/// The forecasts that said about the same.
struct ScoreLine {
    Odds said{};
    int days = 0; ///< on which they were judged
    int damp = 0; ///< of these, days reported damp
    bool operator==(const ScoreLine&) const = default;
};

enum class ScoreVerdict {
    TooFew, ///< too few forecasts were judged to say anything
    Fits,   ///< the test has not found that they do not fit
    Widened ///< they did not fit, and the forecast now leaves more room on both sides
};

/// How the forecasts of a site have done.
struct Score {
    ScoreVerdict verdict{};
    int days = 0;    ///< judged
    int missing = 0; ///< judged days still needed, where they are too few
    double eValue = 1;
    std::vector<ScoreLine> lines; ///< those worth telling, the least chance first
    bool operator==(const Score&) const = default;
};

/// Judged days from which the score is told, and from which one line of it is (our own choice).
inline constexpr int kDaysThatScore = 20;
inline constexpr int kDaysOfLine = 10;
/// So many lines are told, those of the greatest chances: with small ones hardly anything comes (our own choice).
inline constexpr std::size_t kLinesTold = 3;
/// Dampness that was already that likely is no news, and its day is not judged (our own choice).
inline constexpr double kAlreadyLikely = 0.5;

/// The forecasts made evening by evening, judged by the diary.
///
/// Nothing of them is stored. Each is worked out again from the entries of the days before, in one pass over the
/// record. The result is exactly what forecastFor() said on that evening, and a test asks it on each evening. A stored
/// forecast would keep the slips of the diary: an entry that is put right later changes both what would have been said
/// and how it is judged.
///
/// Which days are judged is settled the evening before, so that it cannot depend on how they turn out: from the
/// second day after a session on, with no course open, no other treatment in the spell so far, and dampness not already
/// likely. Days without a report, and stirred ones, on which a report is weak evidence, are left
/// out. Ascending.
[[nodiscard]] std::vector<JudgedDay> judgedDays(const Diary& diary, DiarySite site, const Settings& settings = {});

/// The score that page, command line and summary tell.
[[nodiscard]] Score scoreOf(const Diary& diary, DiarySite site, const Settings& settings = {});

/// The next days of which the chance is told: tomorrow, in three days and in a week.
[[nodiscard]] std::vector<DayChance> daysToTell(const Forecast& forecast);

} // namespace firstdew::outlook

namespace firstdew::facts {
FIRSTDEW_TOKENS(outlook::ScoreVerdict, "too-few", "fits", "widened");
} // namespace firstdew::facts
