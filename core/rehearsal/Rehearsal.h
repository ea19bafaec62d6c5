#pragma once

#include "facts/Result.h"
#include "outlook/Forecast.h"
#include "rehearsal/Flatness.h"
#include "rehearsal/World.h"

#include <array>
#include <vector>

namespace firstdew::rehearsal {

/// When a person treats.
enum class Policy {
    Early,  ///< as the app advises, day by day
    Weekly, ///< every seventh day; the course again when full sweating is back
    Late    ///< only when full sweating is back; then the course again
};
inline constexpr std::size_t kPolicies = 3;
inline constexpr std::size_t kTerciles = 3; ///< thirds of people by true median dry spell, shortest first

/// Means per person and year.
struct Figures {
    double sessions = 0;
    double clammyDays = 0;
    double sweatingDays = 0;
    double minutes = 0; ///< treated time: 20 minutes a session, as for both hands
};

/// How forecasts at the start of a spell and daily beliefs compare with the truth.
struct Calibration {
    std::array<double, 3> coverage{}; ///< share of spells inside the central 50, 80 and 95 % intervals
    std::array<long long, 10> pit{};  ///< spells by tenth of their own predictive distribution
    /// The same with one spell per person, so that the values are independent. The number of that spell, 1 to 20, is
    /// drawn beforehand. People with fewer spells are left out, because a draw among the spells they had would prefer
    /// short ones.
    std::array<long long, 10> pitOneEach{};
    Flatness flatness;       ///< of `pitOneEach`
    double brier = 0;        ///< mean square of the difference between the chance of dampness and the truth (0 or 1)
    double dueHitRate = 0;   ///< share of spells that are clammy before their due day begins at midnight
    double onTheDayRate = 0; ///< share of spells that are clammy by the check-in of their due day
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
};

/// Simulates `people` people over `days` days under each policy. Errors: a number out of range.
[[nodiscard]] facts::Result<Outcome> rehearse(const Request& request);

} // namespace firstdew::rehearsal

namespace firstdew::facts {
FIRSTDEW_WORDS(rehearsal::Policy, "early", "weekly", "late");
} // namespace firstdew::facts
