#include "outlook/Odds.h"

#include <array>
#include <cmath>
#include <limits>

namespace firstdew::outlook {

namespace {

constexpr double kLeast = 1.0 / 40;
constexpr std::array<Frequency, 10> kFrequencies{
    {{0, kDots}, {1, 20}, {1, 10}, {1, 5}, {1, 3}, {1, 2}, {2, 3}, {4, 5}, {9, 10}, {kDots, kDots}}};

double logOdds(double p) { return std::log(p / (1 - p)); }

} // namespace

Odds oddsOf(double chance)
{
    if (!(chance >= kLeast))
        return Odds::Hardly;
    if (chance > 1 - kLeast)
        return Odds::Nearly;
    std::size_t nearest = 1;
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 1; i + 1 < kFrequencies.size(); ++i) {
        const double away =
            std::abs(logOdds(static_cast<double>(kFrequencies[i].of) / kFrequencies[i].in) - logOdds(chance));
        if (away < least) {
            least = away;
            nearest = i;
        }
    }
    return static_cast<Odds>(nearest);
}

Frequency frequencyOf(Odds odds) { return kFrequencies[static_cast<std::size_t>(odds)]; }

int dotsOf(Odds odds)
{
    const Frequency f = frequencyOf(odds);
    return static_cast<int>(std::lround(static_cast<double>(kDots) * f.of / f.in));
}

} // namespace firstdew::outlook
