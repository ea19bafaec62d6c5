#pragma once

#include "outlook/Fit.h"

#include <vector>

namespace firstdew::outlook {

/// Mass of the non-parametric estimate on (from, to]. It is on the point `to` if from equals to, and beyond `from` if
/// there is no `to`. The data do not say where inside the interval the mass lies.
struct Mass {
    double from = 0;
    std::optional<double> to;
    double mass = 0;
};

/// Non-parametric maximum-likelihood estimate from interval-censored times (Turnbull 1976), ascending. With exact and
/// right-censored times only, it is the Kaplan–Meier estimate. The log likelihood is within 1e-8 of its maximum; a
/// bound from the gradient proves it. Errors: see faultIn.
[[nodiscard]] facts::Result<std::vector<Mass>> turnbull(std::span<const Interval> data);

/// Log likelihood of the intervals under masses that turnbull() returned.
[[nodiscard]] double logLikelihood(std::span<const Mass> masses, std::span<const Interval> data);

/// Chance of more than `days`. Mass in an interval that contains `days` counts as later.
[[nodiscard]] double survivor(std::span<const Mass> masses, double days);

} // namespace firstdew::outlook
