#pragma once

#include <array>
#include <span>

namespace firstdew::rehearsal {

/// Pearson's chi-square test that as many values fall into one class as into any other.
struct Flatness {
    double statistic = 0;
    double p = 1; ///< chance of so great a statistic or a greater one if that is so; 1 where nothing was counted
};

/// Of values counted in ten classes, each independent of the others: 9 degrees of freedom.
[[nodiscard]] Flatness flatnessOf(std::span<const long long, 10> counts);

} // namespace firstdew::rehearsal
