#pragma once

#include "facts/Result.h"
#include "outlook/Forecast.h"
#include "rehearsal/Flatness.h"
#include "rehearsal/World.h"

#include <array>
#include <vector>

namespace firstdew::rehearsal {

/// When a person treats. After full sweating, all but the first repeat the course.
enum class Policy {
    Early,          ///< as the app advises, day by day
    Weekly,         ///< every seventh day
    Late,           ///< only when full sweating is back
    FirstClammy,    ///< at the first report of dampness
    WeeklyOrClammy, ///< at the first report of dampness, on the seventh day at the latest
    MeanOrClammy,   ///< at the first report of dampness, at the mean of the person's gaps at the latest
    /// Treats by the app's renewal rule, reads the check-ins and knows all else but chance: the person, the season, how
    /// often reports are wrong, how fast sweating returns.
    Knowing,
    Seeing, ///< sees the skin at each check-in and knows all else but chance: damp, or at the age that costs least
    Oracle  ///< knows its distribution and the skin at each check-in: damp, or at the age that costs least
};
} // namespace firstdew::rehearsal

namespace firstdew::facts {
FIRSTDEW_TOKENS(rehearsal::Policy, "early", "weekly", "late", "first-clammy", "weekly-or-clammy", "mean-or-clammy",
                "knowing", "seeing", "oracle");
} // namespace firstdew::facts

namespace firstdew::rehearsal {

inline constexpr std::size_t kPolicies = facts::allOf<Policy>().size();
inline constexpr std::size_t kTerciles = 3; ///< thirds of people by true median dry spell, shortest first

/// Means per person and year.
struct Figures {
    double sessions = 0;
    double clammyDays = 0;
    double sweatingDays = 0;
    double minutes = 0;         ///< treated time: 20 minutes a session, as for both hands
    double cost = 0;            ///< sessions, each damp day counted as costOfDampDay(request) of them
    double aboveEarly = 0;      ///< cost above that of the same people as the app advises
    double aboveEarlyError = 0; ///< standard error of that difference
};

/// What the app called for, as shares.
struct Conduct {
    long long calls = 0;       ///< for a top-up by the forecast alone
    double onDry = 0;          ///< of calls: on dry skin
    double asNamed = 0;        ///< of calls: on the day that was named for it the day before
    long long restarts = 0;    ///< of the course
    double restartsNotWet = 0; ///< of restarts: on skin that did not sweat
};

/// How forecasts at the start of a spell and daily beliefs compare with the truth.
struct Calibration {
    std::array<double, 3> coverage{}; ///< share of spells inside the central 50, 80 and 95 % intervals
    std::array<long long, 10> pit{};  ///< spells by tenth of their own predictive distribution
    /// The same with one spell per person, so that the values are independent. The number of that spell, 1 to 20, is
    /// drawn beforehand. People with fewer spells are left out, because a draw among the spells they had would prefer
    /// short ones.
    std::array<long long, 10> pitOneEach{};
    Flatness flatness;         ///< of `pitOneEach`
    double brier = 0;          ///< mean square of the difference between the chance of dampness and the truth (0 or 1)
    double dueHitRate = 0;     ///< share of spells that are clammy before the day on which silence calls begins
    double onTheDayRate = 0;   ///< share of spells that are clammy by the check-in of that day
    double meanMisfit = 0;     ///< mean over people of the e-value against the forecasts fitting, at the end
    double found = 0;          ///< share of people whom the forecasts were found not to fit, at some time
    long long shortenings = 0; ///< found
    double shortened = 0;      ///< share of people in whom one was found after the day on which medians change
    long long spells = 0;
    long long days = 0;
};

struct Request {
    World world;
    int people = 1000; ///< 1 to 1 000 000
    int days = 730;    ///< 1 to 36 600
    unsigned long long seed = 1;
    int threads = 1; ///< does not affect the result
    outlook::Settings settings;
};

struct Outcome {
    std::array<Figures, kPolicies> policies; ///< in the order of Policy
    std::array<std::array<Figures, kTerciles>, kPolicies> terciles;
    Calibration calibration; ///< of the early policy
    Conduct conduct;         ///< of the early policy
};

/// Sessions that a return of dampness costs by these settings.
[[nodiscard]] double returnCostOf(const Request& request);
/// Sessions that one damp day costs: half of a return, which brings about two of them (our own choice).
[[nodiscard]] double costOfDampDay(const Request& request);

/// Simulates `people` people over `days` days under each policy. Errors: a number out of range.
[[nodiscard]] facts::Result<Outcome> rehearse(const Request& request);

} // namespace firstdew::rehearsal
