#pragma once

#include <array>
#include <span>

namespace firstdew::rehearsal {

/// Pearson's chi-square test of the hypothesis that all classes are equally likely.
struct Flatness {
    double statistic = 0;
    double p = 1; ///< chance of a statistic at least this great under the hypothesis; 1 if nothing was counted
};

/// Tests counts of independent values in ten classes, with 9 degrees of freedom.
[[nodiscard]] Flatness flatnessOf(std::span<const long long, 10> counts);

} // namespace firstdew::rehearsal
