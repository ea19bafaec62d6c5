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
    Early,  ///< as this program advises, day by day
    Weekly, ///< every seventh day, and the course again where full sweating is back
    Late    ///< not before full sweating is back, then the course again
};
inline constexpr std::size_t kPolicies = 3;
inline constexpr std::size_t kTerciles = 3; ///< of the true median dry spell: shortest third first

/// Per person and year.
struct Figures {
    double sessions = 0;
    double clammyDays = 0;
    double sweatingDays = 0;
    double minutes = 0; ///< in the bath: 20 a session, as for both hands
};

/// What was forecast at the start of a spell against what the body did, and what was believed each day.
struct Calibration {
    std::array<double, 3> coverage{}; ///< share of spells inside the central 50, 80 and 95 % intervals
    std::array<long long, 10> pit{};  ///< spells by tenth of their own predictive distribution
    /// The same of one spell a person, so that each is independent of the others: which one, of the first twenty, is
    /// drawn before the first. Whoever had fewer is left out, since a choice among those had would prefer short ones.
    std::array<long long, 10> pitOneEach{};
    Flatness flatness;       ///< of `pitOneEach`
    double brier = 0;        ///< mean square of chance of dampness less 0 or 1
    double dueHitRate = 0;   ///< share of spells clammy before their due day began, at midnight
    double onTheDayRate = 0; ///< share of spells clammy by the check-in of the due day itself
    long long spells = 0;
    long long days = 0;
};

struct Request {
    World world;
    int people = 1000; ///< 1 to 1 000 000
    int days = 730;    ///< 1 to 36 600
    unsigned long long seed = 1;
    int threads = 1; ///< the answer does not depend on it
    outlook::Settings settings;
};

struct Outcome {
    std::array<Figures, kPolicies> policies; ///< in the order of Policy
    std::array<std::array<Figures, kTerciles>, kPolicies> terciles;
    Calibration calibration; ///< of the early policy
};

/// Lets `people` simulated people live through `days` days under each policy. Errors: a number out of its range.
[[nodiscard]] facts::Result<Outcome> rehearse(const Request& request);

} // namespace firstdew::rehearsal

namespace firstdew::facts {
FIRSTDEW_WORDS(rehearsal::Policy, "early", "weekly", "late");
} // namespace firstdew::facts
