#pragma once

#include "outlook/Forecast.h"

#include <span>
#include <vector>

namespace firstdew::outlook
{

/// Half-life of a spell's weight, in spells (our own choice).
inline constexpr double kHalfLifeSpells = 8;

/// A person's own distribution of the time from the last session to the first clamminess, in days.
///
/// Weibull and log-normal, each over its median and shape, with the prior of the population (median 10 days, 90 %
/// between 3 and 35: our own choice, from the range of common practice), updated by the spells through integration on
/// a fixed grid; older spells weigh less, and the families are averaged by their evidence.
class Predictive
{
public:
    /// From past spells, oldest first. Spells that never got dry, or say nothing, are left out.
    explicit Predictive(std::span<const Spell> past);

    /// Chance that the spell lasts longer than `days` (0 or more).
    [[nodiscard]] double survivor(double days) const;
    /// Smallest number of days with survivor(days) <= 1 - p, for p in (0, 1), given dry at `left` days.
    [[nodiscard]] double quantile(double p, double left = 0) const;

private:
    std::vector<double> m_weights; ///< one per point of the grid, summing to 1
};

} // namespace firstdew::outlook
