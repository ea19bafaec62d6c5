#include "rehearsal/Flatness.h"

#include <cmath>
#include <numbers>
#include <numeric>

namespace firstdew::rehearsal {

Flatness flatnessOf(std::span<const long long, 10> counts)
{
    const auto n = static_cast<double>(std::accumulate(counts.begin(), counts.end(), 0LL));
    if (n == 0)
        return {};
    const double expected = n / static_cast<double>(counts.size());
    double x = 0;
    for (const long long count : counts)
        x += (static_cast<double>(count) - expected) * (static_cast<double>(count) - expected) / expected;
    // Upper tail for nine degrees of freedom: Abramowitz & Stegun, Handbook of Mathematical Functions 1964, 26.4.4
    const double series = 1 + x / 3 + x * x / 15 + x * x * x / 105;
    return {x, std::erfc(std::sqrt(x / 2)) + std::sqrt(2 * x / std::numbers::pi) * std::exp(-x / 2) * series};
}

} // namespace firstdew::rehearsal
