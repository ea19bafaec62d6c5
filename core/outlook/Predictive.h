#pragma once

#include "outlook/Evidence.h"

#include <functional>
#include <span>
#include <vector>

namespace firstdew::outlook {

/// If a person's rhythm drifts, a spell's influence halves after this many later spells (our own choice).
inline constexpr double kHalfLifeSpells = 1.75;

/// A person's distribution of the time from the last session to the first clamminess, in days.
///
/// The distribution is a mixture of Weibull and log-normal ones over a fixed grid of median and shape. The prior is
/// that of the population (median 10 days, 90 % between 3 and 35: our own choice, from the range of common practice).
/// Each spell updates the weights. A person's median is either constant or wanders from spell to spell, within what is
/// usual among people, so that older spells weigh less. The evidence decides between the families and between
/// constant and wandering.
class Predictive {
public:
    /// From past spells, oldest first.
    explicit Predictive(std::span<const Evidence> past);

    /// Adds further spells, oldest first. The result equals a new object built with them appended.
    void learn(std::span<const Evidence> spells);
    /// The same. It asks `next` for each spell in turn; survivorsOn() then tells what was known until then. Spells
    /// without evidence are left out.
    void learn(std::size_t spells, const std::function<Evidence(std::size_t)>& next);
    /// Chance that the spell lasts longer than each of these days (0 or more, or infinite), by all spells learned.
    [[nodiscard]] std::vector<double> survivorsOn(std::span<const double> days) const;
    /// The same if this person's median is constant.
    [[nodiscard]] std::vector<double> steadySurvivorsOn(std::span<const double> days) const;
    /// The same distribution with another survivor, `as` of its own. `as` does not decrease, and `as(1)` is 1. It is
    /// for asking only: what is learned is learned by the one it was made from.
    [[nodiscard]] Predictive reshaped(const std::function<double(double)>& as) const;

    /// Chance that the spell lasts longer than `days` (0 or more).
    [[nodiscard]] double survivor(double days) const;
    /// Smallest number of days with survivor(days) <= 1 - p, for p in (0, 1), given dry at `left` days. At least `left`
    /// and at most ten years, the limit of the forecast.
    [[nodiscard]] double quantile(double p, double left = 0) const;
    /// The same distribution with all times `by` (above 0) times as long. It is for asking only.
    [[nodiscard]] Predictive stretched(double by) const;

private:
    /// Per point of the grid, its chance.
    [[nodiscard]] std::vector<double> both() const;
    void updateCurve();

    std::vector<double> m_steady;  ///< per point of the grid: chance that the median is constant and at this point
    std::vector<double> m_wanders; ///< the same for a median that wanders; both vectors together sum to 1
    std::vector<double> m_curve;   ///< log survivor at the nodes of time, up to the first one treated as 0
};

} // namespace firstdew::outlook
