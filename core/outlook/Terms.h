#pragma once

#include "outlook/Predictive.h"

#include <vector>

namespace firstdew::outlook {

/// The chance of a spell's reports as a sum: `regardless` + for each of the days its weight * P(longer than that day).
struct Terms {
    double regardless = 0;
    std::vector<double> days;
    std::vector<double> weights;
};
[[nodiscard]] Terms termsOf(const Evidence& spell);

/// The chance of the spell's reports by that distribution.
[[nodiscard]] double chanceOf(const Evidence& spell, const Predictive& clock);

} // namespace firstdew::outlook
