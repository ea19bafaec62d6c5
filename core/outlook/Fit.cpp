#include "outlook/Fit.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <string>

namespace firstdew::outlook
{

namespace
{

using facts::Error;
using Vector = std::array<double, 2>;

constexpr int kMostSteps = 200;
constexpr double kEnough = 1e-13; // of the Newton decrement, relative to the log likelihood

/// Density of W, its logarithm's slope, and differences of its distribution function, without loss in either tail.
struct Weibull {
    static double logDensity(double z) { return z - std::exp(z); }
    static double slope(double z) { return 1 - std::exp(z); }
    static double curvature(double z) { return -std::exp(z); }
    static double survivor(double z) { return std::exp(-std::exp(z)); }
    static double between(double a, double b) { return survivor(a) * -std::expm1(std::exp(a) - std::exp(b)); }
    static double upTo(double z) { return -std::expm1(-std::exp(z)); }
};

struct Normal {
    static double logDensity(double z) { return -0.5 * (z * z + std::log(2 * std::numbers::pi)); }
    static double slope(double z) { return -z; }
    static double curvature(double) { return -1; }
    static double survivor(double z) { return 0.5 * std::erfc(z / std::numbers::sqrt2); }
    static double upTo(double z) { return survivor(-z); }
    static double between(double a, double b) { return a > 0 ? survivor(a) - survivor(b) : upTo(b) - upTo(a); }
};

/// Log likelihood in b = (location / spread, 1 / spread), with z = b1 log t - b0, and its two derivatives.
struct Slopes {
    double value = 0;
    Vector gradient{};
    std::array<Vector, 2> hessian{};

    void add(double factor, Vector by)
    {
        for (std::size_t i = 0; i < 2; ++i)
            gradient[i] += factor * by[i];
    }
    void addOuter(double factor, Vector x, Vector y)
    {
        for (std::size_t i = 0; i < 2; ++i)
            for (std::size_t j = 0; j < 2; ++j)
                hessian[i][j] += factor * x[i] * y[j];
    }
};

template <class W>
void addExact(Slopes& s, Vector b, double t)
{
    const double log = std::log(t);
    const double z = b[1] * log - b[0];
    s.value += W::logDensity(z) + std::log(b[1]) - log;
    s.add(W::slope(z), {-1, log});
    s.addOuter(W::curvature(z), {-1, log}, {-1, log});
    s.gradient[1] += 1 / b[1];
    s.hessian[1][1] -= 1 / (b[1] * b[1]);
}

template <class W>
void addInterval(Slopes& s, Vector b, const Interval& x)
{
    const bool fromStart = x.left <= 0;
    if (fromStart && !x.right)
        return;
    const double logLeft = fromStart ? 0 : std::log(x.left);
    const double logRight = x.right ? std::log(*x.right) : 0;
    const double left = b[1] * logLeft - b[0];
    const double right = b[1] * logRight - b[0];
    const double chance = fromStart ? W::upTo(right) : x.right ? W::between(left, right) : W::survivor(left);
    Vector gradient{};
    const auto end = [&](double sign, double z, double log) {
        const double ratio = sign * std::exp(W::logDensity(z)) / chance;
        for (std::size_t i = 0; i < 2; ++i)
            gradient[i] += ratio * (i == 0 ? -1 : log);
        s.addOuter(ratio * W::slope(z), {-1, log}, {-1, log});
    };
    s.value += std::log(chance);
    if (!fromStart)
        end(-1, left, logLeft);
    if (x.right)
        end(1, right, logRight);
    s.add(1, gradient);
    s.addOuter(-1, gradient, gradient);
}

template <class W>
Slopes slopesAt(Vector b, std::span<const Interval> data)
{
    Slopes s;
    for (const Interval& x : data)
        x.right && *x.right == x.left ? addExact<W>(s, b, x.left) : addInterval<W>(s, b, x);
    return s;
}

Slopes slopesAt(Family family, Vector b, std::span<const Interval> data)
{
    return family == Family::Weibull ? slopesAt<Weibull>(b, data) : slopesAt<Normal>(b, data);
}

/// Where to begin: the mean of the logarithms, and a spread so wide that no interval is out of reach.
Vector startOf(std::span<const Interval> data)
{
    double sum = 0;
    double squares = 0;
    for (const Interval& x : data) {
        const double middle = x.right ? (x.left > 0 ? std::sqrt(x.left * *x.right) : *x.right / 2) : std::max(x.left, 1e-3);
        const double log = std::log(middle);
        sum += log;
        squares += log * log;
    }
    const auto n = static_cast<double>(data.size());
    const double spread = std::sqrt(std::max(0.0, squares / n - sum * sum / (n * n))) + 0.5;
    return {sum / n / spread, 1 / spread};
}

Error noEstimate()
{
    return {"no-estimate", "intervals", "the likelihood has no maximum here; record more spells that end in clamminess"};
}

/// Why no estimate can exist, judged before any step is taken.
std::optional<Error> emptyOfEvidence(std::span<const Interval> data)
{
    double latest = 0;
    double soonest = std::numeric_limits<double>::infinity();
    bool exact = false;
    for (const Interval& x : data) {
        latest = std::max(latest, x.left);
        if (x.right) {
            soonest = std::min(soonest, *x.right);
            exact = exact || *x.right == x.left;
        }
    }
    if (std::isinf(soonest))
        return Error{"no-events", "intervals", "every time is censored on the right; record at least two that came to an end"};
    if (latest < soonest || (exact && latest == soonest))
        return Error{"no-spread", "intervals", "one and the same time explains every interval, so no spread can be estimated; record more"};
    return std::nullopt;
}

double determinant(const std::array<Vector, 2>& m)
{
    return m[0][0] * m[1][1] - m[0][1] * m[1][0];
}

/// One damped Newton step; false once nothing is left to gain.
bool step(Family family, std::span<const Interval> data, Vector& b, Slopes& s)
{
    const double det = determinant(s.hessian);
    Vector move = s.gradient;
    if (det > 0 && s.hessian[0][0] < 0)
        move = {-(s.hessian[1][1] * s.gradient[0] - s.hessian[0][1] * s.gradient[1]) / det,
                -(s.hessian[0][0] * s.gradient[1] - s.hessian[1][0] * s.gradient[0]) / det};
    const double gain = move[0] * s.gradient[0] + move[1] * s.gradient[1];
    if (!(gain > kEnough * (1 + std::abs(s.value))))
        return false;
    for (double factor = 1; factor > 1e-12; factor /= 2) {
        const Vector next{b[0] + factor * move[0], b[1] + factor * move[1]};
        if (next[1] <= 0)
            continue;
        const Slopes there = slopesAt(family, next, data);
        if (std::isfinite(there.value) && there.value > s.value) {
            b = next;
            s = there;
            return true;
        }
    }
    return false;
}

/// Covariance of (location, log spread) from the Hessian in b = (location / spread, 1 / spread).
std::array<Vector, 2> covarianceOf(const Slopes& s, Vector b)
{
    const double det = determinant(s.hessian);
    const std::array<Vector, 2> inner{
        {{-s.hessian[1][1] / det, s.hessian[0][1] / det}, {s.hessian[1][0] / det, -s.hessian[0][0] / det}}};
    // location = b0 / b1, log spread = -log b1
    const std::array<Vector, 2> by{{{1 / b[1], -b[0] / (b[1] * b[1])}, {0, -1 / b[1]}}};
    std::array<Vector, 2> out{};
    for (std::size_t i = 0; i < 2; ++i)
        for (std::size_t j = 0; j < 2; ++j)
            for (std::size_t k = 0; k < 2; ++k)
                for (std::size_t l = 0; l < 2; ++l)
                    out[i][j] += by[i][k] * inner[k][l] * by[j][l];
    return out;
}

/// Quantile of the standard normal by Newton's method on the distribution function; exact to rounding.
double normalQuantile(double p)
{
    double z = 0;
    for (int i = 0; i < 100; ++i) {
        const double off = (p < 0.5 ? Normal::upTo(z) - p : (1 - p) - Normal::survivor(z)) / std::exp(Normal::logDensity(z));
        z -= std::clamp(off, -1.0, 1.0);
        if (std::abs(off) < 1e-15)
            break;
    }
    return z;
}

double standardQuantile(Family family, double p)
{
    return family == Family::Weibull ? std::log(-std::log1p(-p)) : normalQuantile(p);
}

} // namespace

std::optional<Error> faultIn(std::span<const Interval> data)
{
    if (data.empty())
        return Error{"no-data", "intervals", "there is no interval at all; give at least two"};
    for (std::size_t i = 0; i < data.size(); ++i) {
        const Interval& x = data[i];
        const auto at = "interval " + std::to_string(i + 1);
        if (!std::isfinite(x.left) || x.left < 0 || x.left > 1e6)
            return Error{"bad-left", at, "left is no number of days from 0 to a million"};
        if (x.right && (!std::isfinite(*x.right) || *x.right < x.left || *x.right <= 0 || *x.right > 1e6))
            return Error{"bad-right", at, "right is before left, or no number of days above 0 and up to a million"};
    }
    return std::nullopt;
}

facts::Result<FamilyFit> fit(Family family, std::span<const Interval> data)
{
    if (const auto fault = faultIn(data))
        return *fault;
    if (const auto empty = emptyOfEvidence(data))
        return *empty;
    Vector b = startOf(data);
    Slopes s = slopesAt(family, b, data);
    for (int i = 0; i < 40 && !std::isfinite(s.value); ++i) {
        b = {b[0] / 2, b[1] / 2};
        s = slopesAt(family, b, data);
    }
    int steps = 0;
    while (steps < kMostSteps && step(family, data, b, s))
        ++steps;
    if (!std::isfinite(s.value) || b[1] < 1e-4 || b[1] > 1e4 || !(determinant(s.hessian) > 0))
        return noEstimate();
    return FamilyFit{family, b[0] / b[1], 1 / b[1], s.value, covarianceOf(s, b)};
}

std::array<double, 2> FamilyFit::parameters() const
{
    return family == Family::Weibull ? std::array{1 / spread, std::exp(location)} : std::array{location, spread};
}

std::array<double, 2> FamilyFit::standardErrors() const
{
    const double ofLocation = std::sqrt(covariance[0][0]);
    const double ofLogSpread = std::sqrt(covariance[1][1]);
    return family == Family::Weibull ? std::array{ofLogSpread / spread, std::exp(location) * ofLocation}
                                     : std::array{ofLocation, spread * ofLogSpread};
}

double FamilyFit::quantile(double p) const
{
    return std::exp(location + spread * standardQuantile(family, p));
}

double FamilyFit::logQuantileError(double p) const
{
    const double by = spread * standardQuantile(family, p); // derivative by log spread
    return std::sqrt(std::max(0.0, covariance[0][0] + 2 * by * covariance[0][1] + by * by * covariance[1][1]));
}

double FamilyFit::survivor(double days) const
{
    if (days <= 0)
        return 1;
    const double z = (std::log(days) - location) / spread;
    return family == Family::Weibull ? Weibull::survivor(z) : Normal::survivor(z);
}

} // namespace firstdew::outlook
