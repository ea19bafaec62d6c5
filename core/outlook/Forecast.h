#pragma once

#include "diary/Diary.h"
#include "outlook/FilterRules.h"

#include <array>
#include <optional>
#include <vector>

namespace firstdew::outlook {

using namespace facts;
using diary::DayReport;
using diary::Diary;
using diary::SiteDiary;

/// Belief about a site on one day; sums to 1.
struct StateProbability {
    double dry = 1;
    double clammy = 0;
    double sweating = 0;
};

struct DayChance {
    LocalDate date;
    double begun = 0; ///< chance that clamminess has begun by that day
    StateProbability state;
};

/// One treated spell as evidence: time from its last session to the first clammy level.
struct Spell {
    LocalDate lastSession;
    int left = 0;             ///< days known to be dry
    std::optional<int> right; ///< day on which clamminess was reported; nullopt: still dry at `left` (censored)
    bool gotDry = true;       ///< false: the session had no effect, so there was no dry spell
    int watched = 0;          ///< days from the last session to the next one, or to today
    bool operator==(const Spell&) const = default;
};

/// Harm of one day of untreated dampness and harm of a needless top-up. The app calls for a top-up as soon as waiting
/// until tomorrow has the greater expected harm. The defaults were chosen by rehearsal, see COSTS.md. They hold for the
/// default risk. For a person who accepts a greater risk, waiting counts less, in proportion to the odds.
struct Costs {
    double waitingADay = 6;
    double needlessTopUp = 1;
};

struct Settings {
    double risk = 0.2; ///< chance of clamminess at which a top-up is due, 0.01 to 0.9
    Costs costs;
    FilterRules rules;
};

struct Forecast {
    DiarySite site{};
    std::optional<LocalDate> lastSession; ///< end of the present treated spell
    std::vector<Spell> spells;            ///< evidence, oldest first, the present one last
    int censored = 0;
    StateProbability today;
    std::optional<LocalDate> due; ///< day by which the chance of clamminess reaches the risk
    /// Day on which the app calls for a top-up if nothing is reported before; never after `due`.
    std::optional<LocalDate> call;
    double risk = 0.2;
    /// Days (not before the last session) by which clamminess has begun with chance 0.1, 0.2, 0.5, 0.8, 0.9.
    std::optional<std::array<LocalDate, 5>> quantiles;
    std::vector<DayChance> days; ///< today and the following 28
    double usualFrom = 0;        ///< 10 %, 50 % and 90 % quantile of this person's dry spell, in days
    double usualMedian = 0;
    double usualTo = 0;
    double soonest = 0;    ///< its 5 % quantile: a clammy report at rest from this day on is first dew
    bool firstDew = false; ///< today, waiting has more expected harm than a needless top-up
};

inline constexpr std::array<double, 5> kForecastLevels{0.1, 0.2, 0.5, 0.8, 0.9};

/// The outlook of one diary site on the diary's day.
[[nodiscard]] Forecast forecastFor(const Diary& diary, DiarySite site, const Settings& settings = {});

} // namespace firstdew::outlook
