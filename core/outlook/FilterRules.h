#pragma once

#include <array>

namespace firstdew::outlook {

/// Shares of reports that are wrong.
struct ErrorRates {
    double falseCalm = 0;    ///< of calm days on dry skin
    double falseStirred = 0; ///< of stirred days on dry skin
    double missed = 0;       ///< of days on clammy skin, reported dry
};

/// How often reports are usually wrong and how fast sweating returns. Reporting moves the shares of wrong ones. All
/// numbers are our own choice. COSTS.md tests them in worlds that behave differently.
struct FilterRules {
    double stayDryAfterSession = 0.95; ///< chance that a session left the site dry
    double stayDryAfterDamp = 0.8;     ///< the same for a session on skin reported damp: one or two are usually enough
    double sweatingIfNot = 0.25;       ///< if it did not: chance that it left the site fully sweating
    double clammyToSweating = 0.25;    ///< chance per day that clamminess turns into full sweating
    /// P(level reported | state), state dry, clammy, sweating; on a calm and on a stirred day.
    std::array<std::array<double, 4>, 3> calm{
        {{0.980, 0.015, 0.004, 0.001}, {0.10, 0.75, 0.12, 0.03}, {0.02, 0.13, 0.50, 0.35}}};
    std::array<std::array<double, 4>, 3> stirred{
        {{0.85, 0.11, 0.03, 0.01}, {0.10, 0.67, 0.18, 0.05}, {0.02, 0.10, 0.48, 0.40}}};
    bool operator==(const FilterRules&) const = default;
};

} // namespace firstdew::outlook
