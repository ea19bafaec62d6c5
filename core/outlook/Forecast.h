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
    bool onDamp = false;      ///< the site was reported damp shortly before that session
    /// What was reported after that session on its day, if the site was damp before it: such skin may need a second
    /// session. Of other skin it says nothing (our own choice).
    std::optional<DayReport> evening;
    bool gotDry = true;     ///< false: the session had no effect, so there was no dry spell
    bool otherwise = false; ///< another treatment worked in it: nothing is learned from it (our own choice)
    double dose = 1;        ///< of the session before it, see TreatedDay
    int watched = 0;        ///< days from the last session to the next one, or to today
    bool operator==(const Spell&) const = default;
};

/// When this person's dry spells became shorter.
struct Changed {
    LocalDate since;                    ///< session before the first spell after the change
    LocalDate found;                    ///< day on which the spell ended that told it
    double medianSince = 0;             ///< days
    std::optional<double> medianBefore; ///< days; for kShorterToldFor days after it was found
};

/// A shortening is told for so many days after it was found (our own choice).
inline constexpr int kShorterToldFor = 180;

/// On the day after a session the skin settles; the forecast calls for nothing then (our own choice).
inline constexpr int kSettlingDays = 1;

struct Settings {
    /// Says what a return of dampness costs, see returnCostOf: 0.01 to 0.9.
    double risk = 0.2;
    /// How many sessions the person would do to be spared one return of dampness. By default it follows from the risk.
    std::optional<double> returnCost;
    FilterRules rules;
};

/// How many sessions a return of dampness costs at that risk: (1 - risk) / (2 risk), so 2 at the default of 20 % (our
/// own choice, see COSTS.md). Dry spells of the usual shape are then ended while about that share would have ended
/// damp.
[[nodiscard]] double returnCostOf(double risk);

struct Forecast {
    DiarySite site{};
    std::optional<LocalDate> lastSession; ///< end of the present treated spell
    std::vector<Spell> spells;            ///< evidence, oldest first, the present one last
    int learned = 0;                      ///< spells that teach something
    int censored = 0;                     ///< of these, those without an end of their own
    int otherwise = 0;                    ///< spells that teach nothing, as another treatment worked in them
    std::optional<Changed> change;        ///< the latest one found
    double shortening = 1;                ///< e-value against spells having stayed as long as they were, see Shift
    StateProbability today;
    /// Day on which the app calls for a top-up, or has called. For a diary that is kept it is the day of the call if
    /// each check-in until then says dry, whether its own check-in was made or not. Nullopt if no call comes within a
    /// year.
    std::optional<LocalDate> due;
    std::optional<LocalDate> dueIfSilent; ///< the same if no check-in follows; never after `due`
    double returnCost = 2;                ///< sessions that a return of dampness costs
    double dampTomorrow = 0;              ///< chance of dampness by tomorrow, as the call weighs it
    int bestAge = 0;                      ///< days after which treating a dry site costs least in the long run
    /// Days (not before the last session) by which clamminess has begun with chance 0.1, 0.2, 0.5, 0.8, 0.9.
    std::optional<std::array<LocalDate, 5>> quantiles;
    std::vector<DayChance> days; ///< today and the following 28
    double usualFrom = 0;        ///< 10 %, 50 % and 90 % quantile of this person's dry spell, in days
    double usualMedian = 0;
    double usualTo = 0;
    double soonest = 0; ///< its 5 % quantile: a clammy report at rest from this day on is first dew
    ErrorRates errors;  ///< how often this person's reports are wrong, see Reporting
    double misfit = 1;  ///< e-value against these forecasts fitting this person, see Fitting
    /// They have not fitted, so this one leaves more room on both sides. Whoever knows less could also wait for longer:
    /// so the call then comes on the day of the forecast before widening, if that is the earlier one (cautious).
    bool widened = false;
    bool firstDew = false; ///< by today's reports, waiting costs more than a top-up now
};

inline constexpr std::array<double, 5> kForecastLevels{0.1, 0.2, 0.5, 0.8, 0.9};

/// The outlook of one diary site on the diary's day.
[[nodiscard]] Forecast forecastFor(const Diary& diary, DiarySite site, const Settings& settings = {});

} // namespace firstdew::outlook
