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
    int left = 0;             ///< days known dry
    std::optional<int> right; ///< day by which clamminess was seen; nothing: still dry at `left` (censored)
    bool gotDry = true;       ///< false: never dry after the session, no dry spell
    int watched = 0;          ///< days from the last session to the next one, or to today
    bool operator==(const Spell&) const = default;
};

/// Harm of waiting a day in which dampness has begun, against that of a needless top-up. A top-up is called for where
/// the expected harm of waiting until tomorrow is the greater. Defaults chosen by rehearsal: see COSTS.md. They hold
/// for the default risk; a person who accepts a greater risk minds waiting less, in proportion to the odds.
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
    std::optional<LocalDate> due; ///< by then the chance of clamminess reaches the risk
    /// Day on which a top-up is called for, unless something is reported meanwhile; never after `due`.
    std::optional<LocalDate> call;
    double risk = 0.2;
    /// Days (not before the last session) by which clamminess has begun with chance 0.1, 0.2, 0.5, 0.8, 0.9.
    std::optional<std::array<LocalDate, 5>> quantiles;
    std::vector<DayChance> days; ///< today and the following 28
    double usualFrom = 0;        ///< 10 %, 50 % and 90 % quantile of this person's dry spell, in days
    double usualMedian = 0;
    double usualTo = 0;
    double soonest = 0;    ///< 5 % quantile of it: clammy at rest from then on is first dew
    bool firstDew = false; ///< today the expected harm of waiting until tomorrow exceeds that of a needless top-up
};

inline constexpr std::array<double, 5> kForecastLevels{0.1, 0.2, 0.5, 0.8, 0.9};

/// The outlook of one diary site today.
[[nodiscard]] Forecast forecastFor(const Diary& diary, DiarySite site, const Settings& settings = {});

} // namespace firstdew::outlook
