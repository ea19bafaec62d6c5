#pragma once

#include "outlook/Fit.h"

#include <vector>

namespace firstdew::outlook {

/// Mass of the non-parametric estimate on (from, to]; on the single point `to` where from equals to; beyond `from`
/// without `to`. Where within it the mass lies, the data cannot say.
struct Mass {
    double from = 0;
    std::optional<double> to;
    double mass = 0;
};

/// Non-parametric maximum-likelihood estimate of a distribution seen through intervals (Turnbull 1976), ascending.
/// With exact and right-censored times alone it is the Kaplan–Meier estimate. The log likelihood is within 1e-8 of the
/// greatest possible, which the gradient proves. Errors: see faultIn.
[[nodiscard]] facts::Result<std::vector<Mass>> turnbull(std::span<const Interval> data);

/// Log likelihood of the intervals under masses on turnbull()'s intervals.
[[nodiscard]] double logLikelihood(std::span<const Mass> masses, std::span<const Interval> data);

/// Chance of more than `days`: mass that may lie on either side counts as still to come.
[[nodiscard]] double survivor(std::span<const Mass> masses, double days);

} // namespace firstdew::outlook
