#pragma once

#include "facts/Enumerations.h"
#include "facts/Result.h"

#include <array>
#include <optional>
#include <span>

namespace firstdew::outlook {

/// One time in days, as far as it is known: it lies in (left, right]. Without `right` it is longer than `left`
/// (right-censored). With left 0 it is left-censored. With right equal to left it is exact.
struct Interval {
    double left = 0;
    std::optional<double> right;
};

enum class Family { Weibull, LogNormal };

/// Maximum-likelihood fit of log T = location + spread * W, with W a standard least extreme value (Weibull) or a
/// standard normal (log-normal) variable.
struct FamilyFit {
    Family family{};
    double location = 0;
    double spread = 1;
    double logLikelihood = 0; ///< of the times, not of their logarithms
    /// Covariance of (location, log spread), the inverse of the observed information.
    std::array<std::array<double, 2>, 2> covariance{};

    /// The family's usual two parameters: Weibull shape and scale, log-normal meanlog and sdlog.
    [[nodiscard]] std::array<double, 2> parameters() const;
    /// Their standard errors (delta method).
    [[nodiscard]] std::array<double, 2> standardErrors() const;
    /// The time in days that is not exceeded with chance `p`, 0 < p < 1.
    [[nodiscard]] double quantile(double p) const;
    /// Standard error of log quantile(p), for intervals on the logarithmic scale.
    [[nodiscard]] double logQuantileError(double p) const;
    /// Chance that the time is longer than `days`.
    [[nodiscard]] double survivor(double days) const;
};

/// The error in the intervals, or nullopt: no interval, or an end that is negative, infinite or out of order.
[[nodiscard]] std::optional<facts::Error> faultIn(std::span<const Interval> data);

/// Fits a family by Newton's method in (location / spread, 1 / spread), where the log likelihood is concave.
/// Errors: see faultIn; `no-events` if every time is right-censored; `no-spread` if a single time explains all
/// intervals, so that no estimate exists; `no-estimate` if the likelihood has no inner maximum.
[[nodiscard]] facts::Result<FamilyFit> fit(Family family, std::span<const Interval> data);

} // namespace firstdew::outlook

namespace firstdew::facts {
FIRSTDEW_TOKENS(outlook::Family, "weibull", "lognormal");
} // namespace firstdew::facts
