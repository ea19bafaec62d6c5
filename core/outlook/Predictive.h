#pragma once

#include "outlook/Evidence.h"

#include <span>
#include <vector>

namespace firstdew::outlook {

/// Half-life of a spell's pull on the forecasts of a person whose rhythm drifts, in later spells (our own choice).
inline constexpr double kHalfLifeSpells = 8;

/// A person's own distribution of the time from the last session to the first clamminess, in days.
///
/// Weibull and log-normal, each over its median and shape, with the prior of the population (median 10 days, 90 %
/// between 3 and 35: our own choice, from the range of common practice), updated by the spells through summation over a
/// fixed grid. A person's median either stays, or wanders a little from spell to spell within what is usual among
/// people, so that older spells weigh less; families and ways of keeping are averaged by their evidence.
class Predictive {
public:
    /// From past spells, oldest first.
    explicit Predictive(std::span<const Evidence> past);

    /// Takes further spells into account, oldest first. The result equals building anew with them appended.
    void learn(std::span<const Evidence> spells);

    /// Chance that the spell lasts longer than `days` (0 or more).
    [[nodiscard]] double survivor(double days) const;
    /// Smallest number of days with survivor(days) <= 1 - p, for p in (0, 1), given dry at `left` days. Never below
    /// `left`; at most ten years, beyond which nothing is forecast.
    [[nodiscard]] double quantile(double p, double left = 0) const;

private:
    void updateCurve();

    std::vector<double> m_steady;  ///< per point of the grid: chance that the median stays and is that of the point
    std::vector<double> m_wanders; ///< likewise, of a median that wanders; both together sum to 1
    std::vector<double> m_curve;   ///< log survivor at the nodes of time, up to the first that counts as 0
};

} // namespace firstdew::outlook
