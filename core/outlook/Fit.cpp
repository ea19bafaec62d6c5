#include "outlook/Fit.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <string>
#include <utility>
#include <vector>

namespace firstdew::outlook {

namespace {

using facts::Error;
using Vector = std::array<double, 2>;

constexpr int kMostSteps = 200;
constexpr int kHalvings = 40;
constexpr double kSmall = 1e-200; // a product of chances above this has full precision
constexpr double kFew = 8;        // up to this many equal chances, multiplying is faster than pow()
constexpr double kEnough = 1e-13; // bound of the Newton decrement, relative to the log likelihood

/// W at one point: the density, its logarithm and the slope of that logarithm, and both sides of the distribution
/// function. The smaller side is computed directly, so that neither tail loses precision.
struct Weibull {
    double hazard, survivor, upTo, density, logDensity, slope, curvature;

    explicit Weibull(double z)
        : hazard(std::exp(z)), survivor(hazard < std::numbers::ln2 ? 1 + std::expm1(-hazard) : std::exp(-hazard)),
          upTo(hazard < std::numbers::ln2 ? -std::expm1(-hazard) : 1 - survivor), density(hazard * survivor),
          logDensity(z - hazard), slope(1 - hazard), curvature(-hazard)
    {
    }
    static double between(const Weibull& a, const Weibull& b)
    {
        return b.survivor < a.survivor / 2 ? a.survivor - b.survivor : a.survivor * -std::expm1(a.hazard - b.hazard);
    }
};

struct Normal {
    double z, survivor, upTo, logDensity, density, slope, curvature = -1;

    explicit Normal(double at)
        : z(at), survivor(at < 0 ? 1 - survivorOf(-at) : survivorOf(at)), upTo(at < 0 ? survivorOf(-at) : 1 - survivor),
          logDensity(logDensityOf(at)), density(std::exp(logDensity)), slope(-at)
    {
    }
    static double between(const Normal& a, const Normal& b)
    {
        return a.z > 0 ? a.survivor - b.survivor : b.upTo - a.upTo;
    }
    static double survivorOf(double z) { return 0.5 * std::erfc(z / std::numbers::sqrt2); }
    static double logDensityOf(double z) { return -0.5 * (z * z + std::log(2 * std::numbers::pi)); }
};

/// Intervals by their ends. Whole days repeat, so that what depends on one end is computed once.
class Spells {
public:
    static constexpr std::size_t kNone = std::numeric_limits<std::size_t>::max();
    struct Kind {
        std::size_t left = kNone;  ///< index in `logs`; kNone if the interval begins at 0
        std::size_t right = kNone; ///< kNone if the interval is open
        double count = 0;
    };

    explicit Spells(std::span<const Interval> data)
    {
        m_days.reserve(data.size());
        m_kinds.reserve(data.size());
        for (const Interval& x : data) {
            const std::size_t left = x.left > 0 ? endAt(x.left) : kNone;
            const std::size_t right = x.right ? endAt(*x.right) : kNone;
            const auto same = std::find_if(m_kinds.begin(), m_kinds.end(),
                                           [&](const Kind& k) { return k.left == left && k.right == right; });
            if (same != m_kinds.end())
                same->count += 1;
            else
                m_kinds.push_back({left, right, 1});
        }
        m_logs.reserve(m_days.size());
        for (const double day : m_days)
            m_logs.push_back(std::log(day));
    }

    [[nodiscard]] const std::vector<double>& logs() const { return m_logs; }
    [[nodiscard]] const std::vector<Kind>& kinds() const { return m_kinds; }

private:
    std::size_t endAt(double day)
    {
        const auto at = std::find(m_days.begin(), m_days.end(), day);
        if (at == m_days.end()) {
            m_days.push_back(day);
            return m_days.size() - 1;
        }
        return static_cast<std::size_t>(at - m_days.begin());
    }

    std::vector<double> m_days;
    std::vector<double> m_logs;
    std::vector<Kind> m_kinds;
};

/// Log likelihood in b = (location / spread, 1 / spread), with z = b1 log t - b0, and its two derivatives.
struct Slopes {
    double value = 0;
    Vector gradient{};
    std::array<Vector, 2> hessian{};
    double chances = 1; ///< product of the chances not yet in `value`: one logarithm serves many

    void addLog(double chance, double count)
    {
        if (count <= kFew) {
            double all = chances;
            for (int k = 0; k < static_cast<int>(count); ++k)
                all *= chance;
            if (all > kSmall) {
                chances = all;
                return;
            }
        }
        value += count * std::log(chance);
    }
    void gather() { value += std::log(std::exchange(chances, 1)); }
    void add(double factor, Vector by)
    {
        for (std::size_t i = 0; i < 2; ++i)
            gradient[i] += factor * by[i];
    }
    void addOuter(double factor, Vector x)
    {
        for (std::size_t i = 0; i < 2; ++i)
            for (std::size_t j = 0; j < 2; ++j)
                hessian[i][j] += factor * x[i] * x[j];
    }
};

template <class W>
void addExact(Slopes& s, double slope, double count, double log, const W& at)
{
    s.value += count * (at.logDensity + std::log(slope) - log);
    s.add(count * at.slope, {-1, log});
    s.addOuter(count * at.curvature, {-1, log});
    s.gradient[1] += count / slope;
    s.hessian[1][1] -= count / (slope * slope);
}

/// `left` and `right` are null if the interval has no such end. An interval without ends carries no information.
template <class W>
void addInterval(Slopes& s, double count, const W* left, double logLeft, const W* right, double logRight)
{
    if (left == nullptr && right == nullptr)
        return;
    const double chance = left == nullptr ? right->upTo : right != nullptr ? W::between(*left, *right) : left->survivor;
    Vector gradient{};
    const auto end = [&](double sign, const W& at, double log) {
        const double ratio = sign * at.density / chance;
        gradient[0] -= ratio;
        gradient[1] += ratio * log;
        s.addOuter(count * ratio * at.slope, {-1, log});
    };
    if (left != nullptr)
        end(-1, *left, logLeft);
    if (right != nullptr)
        end(1, *right, logRight);
    s.addLog(chance, count);
    s.add(count, gradient);
    s.addOuter(-count, gradient);
}

/// `at` is scratch space for W at every end.
template <class W>
Slopes slopesAt(Vector b, const Spells& spells, std::vector<W>& at)
{
    const auto& logs = spells.logs();
    at.clear();
    for (const double log : logs)
        at.emplace_back(b[1] * log - b[0]);
    Slopes s;
    for (const auto& [left, right, count] : spells.kinds()) {
        const bool begins = left != Spells::kNone;
        const bool ends = right != Spells::kNone;
        if (begins && left == right)
            addExact(s, b[1], count, logs[left], at[left]);
        else
            addInterval(s, count, begins ? &at[left] : nullptr, begins ? logs[left] : 0, ends ? &at[right] : nullptr,
                        ends ? logs[right] : 0);
    }
    s.gather();
    return s;
}

/// The starting point: mean and deviation of the logarithms of the midpoints, plus the spread within the intervals.
Vector startOf(const Spells& spells)
{
    double n = 0;
    double sum = 0;
    double squares = 0;
    for (const auto& [left, right, count] : spells.kinds()) {
        if (left == Spells::kNone && right == Spells::kNone)
            continue; // no information
        const double last = spells.logs()[right != Spells::kNone ? right : left];
        const double first = left != Spells::kNone ? spells.logs()[left]
                                                   : last - 2 * std::numbers::ln2; // the midpoint is half of `right`
        const double middle = (first + last) / 2;
        const double open = right != Spells::kNone ? last - first : 0;
        n += count;
        sum += count * middle;
        squares += count * (middle * middle + open * open / 12);
    }
    const double spread = std::sqrt(std::max(1e-4, squares / n - sum * sum / (n * n)));
    return {sum / n / spread, 1 / spread};
}

Error noEstimate()
{
    return {"no-estimate", "intervals", "the likelihood has no maximum; record more spells that end in clamminess"};
}

/// The error if no estimate can exist; checked before the first step.
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
        return Error{"no-events", "intervals", "every time is right-censored; record at least two that ended"};
    if (latest < soonest || (exact && latest == soonest))
        return Error{"no-spread", "intervals",
                     "a single time explains all intervals, so that no spread can be estimated; record more"};
    return std::nullopt;
}

double determinant(const std::array<Vector, 2>& m) { return m[0][0] * m[1][1] - m[0][1] * m[1][0]; }

/// One damped Newton step. Returns false once the likelihood cannot rise further.
template <class W>
bool step(const Spells& spells, Vector& b, Slopes& s, std::vector<W>& at)
{
    const double det = determinant(s.hessian);
    Vector move = s.gradient;
    if (det > 0 && s.hessian[0][0] < 0)
        move = {-(s.hessian[1][1] * s.gradient[0] - s.hessian[0][1] * s.gradient[1]) / det,
                -(s.hessian[0][0] * s.gradient[1] - s.hessian[1][0] * s.gradient[0]) / det};
    const double gain = move[0] * s.gradient[0] + move[1] * s.gradient[1];
    if (!(gain > kEnough * (1 + std::abs(s.value))))
        return false;
    double factor = 1;
    for (int halvings = 0; halvings < kHalvings; ++halvings, factor /= 2) {
        const Vector next{b[0] + factor * move[0], b[1] + factor * move[1]};
        if (next[1] <= 0)
            continue;
        const Slopes there = slopesAt(next, spells, at);
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
        const double off = (p < 0.5 ? Normal::survivorOf(-z) - p : (1 - p) - Normal::survivorOf(z)) /
                           std::exp(Normal::logDensityOf(z));
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

template <class W>
facts::Result<FamilyFit> fitOf(Family family, const Spells& spells)
{
    std::vector<W> at;
    at.reserve(spells.logs().size());
    Vector b = startOf(spells);
    Slopes s = slopesAt(b, spells, at);
    for (int i = 0; i < 40 && !std::isfinite(s.value); ++i) {
        b = {b[0] / 2, b[1] / 2};
        s = slopesAt(b, spells, at);
    }
    int steps = 0;
    while (steps < kMostSteps && step(spells, b, s, at))
        ++steps;
    if (!std::isfinite(s.value) || b[1] < 1e-4 || b[1] > 1e4 || !(determinant(s.hessian) > 0))
        return noEstimate();
    return FamilyFit{family, b[0] / b[1], 1 / b[1], s.value, covarianceOf(s, b)};
}

} // namespace

std::optional<Error> faultIn(std::span<const Interval> data)
{
    if (data.empty())
        return Error{"no-data", "intervals", "no interval given; give at least two"};
    for (std::size_t i = 0; i < data.size(); ++i) {
        const Interval& x = data[i];
        const auto at = [&] { return "interval " + std::to_string(i + 1); };
        if (!std::isfinite(x.left) || x.left < 0 || x.left > 1e6)
            return Error{"bad-left", at(), "left must be a number of days from 0 to 1 000 000"};
        if (x.right && (!std::isfinite(*x.right) || *x.right < x.left || *x.right <= 0 || *x.right > 1e6))
            return Error{"bad-right", at(),
                         "right must be a number of days above 0, at least left and at most 1 000 000"};
    }
    return std::nullopt;
}

facts::Result<FamilyFit> fit(Family family, std::span<const Interval> data)
{
    if (const auto fault = faultIn(data))
        return *fault;
    if (const auto empty = emptyOfEvidence(data))
        return *empty;
    return family == Family::Weibull ? fitOf<Weibull>(family, Spells(data)) : fitOf<Normal>(family, Spells(data));
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

double FamilyFit::quantile(double p) const { return std::exp(location + spread * standardQuantile(family, p)); }

double FamilyFit::logQuantileError(double p) const
{
    const double by = spread * standardQuantile(family, p); // derivative with respect to log spread
    return std::sqrt(std::max(0.0, covariance[0][0] + 2 * by * covariance[0][1] + by * by * covariance[1][1]));
}

double FamilyFit::survivor(double days) const
{
    if (days <= 0)
        return 1;
    const double z = (std::log(days) - location) / spread;
    return family == Family::Weibull ? Weibull(z).survivor : Normal::survivorOf(z);
}

} // namespace firstdew::outlook
