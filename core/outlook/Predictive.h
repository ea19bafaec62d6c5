#pragma once

#include "outlook/Evidence.h"

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
/// a fixed grid; older spells weigh less, down to a quarter, and the families are averaged by their evidence. Within a day the hazard is
/// taken as constant.
class Predictive
{
public:
    /// From past spells, oldest first.
    explicit Predictive(std::span<const Evidence> past);

    /// Takes further spells into account, oldest first; the same as building anew with them at the end.
    void learn(std::span<const Evidence> spells);

    /// Chance that the spell lasts longer than `days` (0 or more).
    [[nodiscard]] double survivor(double days) const;
    /// Smallest number of days with survivor(days) <= 1 - p, for p in (0, 1), given dry at `left` days. Never below
    /// `left`; at most ten years, beyond which nothing is forecast.
    [[nodiscard]] double quantile(double p, double left = 0) const;

private:
    void settle();

    std::vector<double> m_fading;  ///< log likelihood per point of the grid, older spells weighing less
    std::vector<double> m_lasting; ///< the share of it that is never forgotten
    std::vector<double> m_curve;   ///< log survivor at the nodes of time, as far as it is above nothing
};

} // namespace firstdew::outlook
