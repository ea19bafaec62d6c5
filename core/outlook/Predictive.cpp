#include "outlook/Predictive.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>

namespace firstdew::outlook {

namespace {

constexpr std::size_t kMedians = 48;
constexpr double kMedianStep = 8.0 / (kMedians - 1); // in standard deviations between people
constexpr std::size_t kShapes = 9;
constexpr std::size_t kOfFamily = kMedians * kShapes; // Weibull times first, then log-normal ones
constexpr std::size_t kPoints = 2 * kOfFamily;
constexpr std::size_t kWholeDays = 64;     // nodes of time at 0, 1, ... 64 days, then at a constant ratio
constexpr double kLongest = 3660;          // days
constexpr double kNothing = 1e-30;         // a survivor below this is treated as 0
constexpr double kLeastLikelihood = 1e-12; // so that no spell rules out every point
constexpr double kVanishing = 1e-100;      // a weight below this is treated as 0, because denormal numbers are slow

// The constants below are our own choice. COSTS.md judges the coverage of the intervals by rehearsal; a test holds the
// prior predictive to a median of 10 days with 90 % between 3 and 35.
constexpr double kLogMedian = std::numbers::ln10;
constexpr double kLogMedianSd = 0.6; // between people
constexpr double kWeibullShape = 3;
constexpr double kLognormalSd = 0.36;
constexpr double kLogShapeSd = 0.25;
/// Prior share of the Weibull. The log-normal makes clamminess less likely the longer a person stays dry beyond the
/// usual time, which is less plausible and less cautious.
constexpr double kWeibull = 0.9;
constexpr double kSteady = 0.65; ///< prior chance that a person's median stays constant
/// After a spell that was cut short while still dry, the median wanders a little less, since little was seen.
constexpr double kUnseenWandersLess = 0.1;

struct Point {
    bool weibull = true;
    double logMedian = 0;
    double shape = 1; ///< Weibull shape, or sd of the logarithm
    double prior = 0;
};

/// The chance that a time is longer than exp(`logDays`) days; 1 for minus infinity.
double chanceOfLonger(const Point& p, double logDays)
{
    const double x = logDays - p.logMedian;
    if (p.weibull)
        return std::exp(-std::numbers::ln2 * std::exp(p.shape * x));
    return 0.5 * std::erfc(x / (p.shape * std::numbers::sqrt2));
}

/// The points of the grid, and the survivor of each point at the nodes of time. It is computed once per process.
struct Grid {
    std::vector<Point> points;
    std::vector<double> nodes;
    std::vector<double> survivors; ///< node by node, all points of a node together
    /// By point, how its weight and that of the next longer median exchange. Not for the longest medians of a family,
    /// which have no neighbour above.
    std::vector<double> rises;
    std::vector<double> falls;

    Grid()
    {
        double sum = 0;
        for (const bool weibull : {true, false})
            for (std::size_t m = 0; m < kMedians; ++m)
                for (std::size_t s = 0; s < kShapes; ++s) {
                    const double zm = kMedianStep * static_cast<double>(m) - 4;
                    const double zs = 5.0 * static_cast<double>(s) / (kShapes - 1) - 2.5;
                    const double prior = (weibull ? kWeibull : 1 - kWeibull) * std::exp(-0.5 * (zm * zm + zs * zs));
                    const double middle = weibull ? kWeibullShape : kLognormalSd;
                    points.push_back(
                        {weibull, kLogMedian + kLogMedianSd * zm, middle * std::exp(kLogShapeSd * zs), prior});
                    sum += prior;
                }
        for (Point& p : points)
            p.prior /= sum;
        for (std::size_t i = 0; i + kShapes < kPoints; ++i) {
            const double lesser = std::min(points[i].prior, points[i + kShapes].prior);
            rises.push_back(lesser / points[i].prior);
            falls.push_back(lesser / points[i + kShapes].prior);
        }
        for (std::size_t d = 0; d <= kWholeDays; ++d)
            nodes.push_back(static_cast<double>(d));
        for (const double ratio = std::exp(kLogMedianSd * kMedianStep); nodes.back() * ratio < kLongest;)
            nodes.push_back(nodes.back() * ratio);
        nodes.push_back(kLongest);
        survivors.reserve(nodes.size() * kPoints);
        for (const double days : nodes) {
            const double logDays = std::log(days);
            for (const Point& p : points)
                survivors.push_back(chanceOfLonger(p, logDays));
        }
    }

    [[nodiscard]] const double* at(std::size_t node) const { return survivors.data() + node * kPoints; }
};

const Grid& grid()
{
    static const Grid g;
    return g;
}

using PerPoint = std::array<double, kPoints>;

/// The survivor of every point at so many days, which are finite: from the table, or else computed into `room`.
const double* survivorsAt(double days, PerPoint& room)
{
    const Grid& g = grid();
    if (days >= 0 && days <= static_cast<double>(kWholeDays) && days == std::floor(days))
        return g.at(static_cast<std::size_t>(days));
    const double logDays = std::log(std::max(0.0, days));
    for (std::size_t i = 0; i < kPoints; ++i)
        room[i] = chanceOfLonger(g.points[i], logDays);
    return room.data();
}

/// Adds factor * survivor(days) to every point's sum.
void addSurvivor(PerPoint& sums, double factor, double days)
{
    if (!std::isfinite(days))
        return;
    PerPoint room;
    const double* const row = survivorsAt(days, room);
    for (std::size_t i = 0; i < kPoints; ++i)
        sums[i] += factor * row[i];
}

PerPoint likelihoods(const Evidence& spell)
{
    PerPoint out;
    out.fill(spell.regardless);
    // Neighbouring pieces share an end, which is evaluated once.
    double end = spell.pieces.front().from;
    double factor = 0;
    for (const Evidence::Piece& p : spell.pieces) {
        if (p.from != end) {
            addSurvivor(out, factor, end);
            factor = 0;
        }
        addSurvivor(out, factor + p.weight, p.from);
        factor = -p.weight;
        end = p.to;
    }
    addSurvivor(out, factor, end);
    for (double& value : out)
        value = std::max(kLeastLikelihood, value);
    return out;
}

/// Standard deviation of a median's step from one spell to the next, in those between people. Exponential smoothing
/// with gain g is the best forecast of a random walk seen through noise where step / noise = g / sqrt(1 - g) (Muth, J
/// Am Stat Assoc 1960;55:299-306); the gain is that of the half-life, the noise that of the logarithm of a Weibull
/// time.
double stepOfMedian()
{
    const double gain = 1 - std::exp2(-1 / kHalfLifeSpells);
    const double noise = std::numbers::pi / std::sqrt(6.0) / kWeibullShape;
    return noise * gain / std::sqrt(1 - gain) / kLogMedianSd;
}

/// Lets the median wander after a spell: neighbours on the grid exchange weight at rates that leave the prior
/// unchanged, once upwards and once downwards. Exchanged in turn at the rate r, a weight moves with variance
/// 2 r / (1 - r), in steps of the grid.
void wander(std::vector<double>& weights, const Evidence& spell)
{
    static const double kStep = stepOfMedian() / kMedianStep;
    const Grid& g = grid();
    const bool open = !std::isfinite(spell.pieces.back().to);
    const double seen = 1 - (open ? kUnseenWandersLess * spell.pieces.back().weight : 0);
    const double variance = seen * kStep * kStep / 2; // each way
    const double rate = variance / (2 + variance);
    double* const w = weights.data();
    const double* const rises = g.rises.data();
    const double* const falls = g.falls.data();
    const auto exchange = [=](std::size_t median) { // with the next longer one, each family and shape for itself
        for (const std::size_t family : {std::size_t{0}, kOfFamily})
            for (std::size_t i = family + median * kShapes; i < family + (median + 1) * kShapes; ++i) {
                const double flow = rate * (rises[i] * w[i] - falls[i] * w[i + kShapes]);
                w[i] -= flow;
                w[i + kShapes] += flow;
            }
    };
    for (std::size_t median = 0; median + 1 < kMedians; ++median)
        exchange(median);
    for (std::size_t median = kMedians - 1; median-- > 0;)
        exchange(median);
}

/// The sum over the points of weight times value. Several sums side by side, so that one addition need not wait for the
/// one before.
double weighedSum(const double* weights, const double* values)
{
    constexpr std::size_t kLanes = 8;
    static_assert(kPoints % kLanes == 0);
    std::array<double, kLanes> sums{};
    for (std::size_t i = 0; i < kPoints; i += kLanes)
        for (std::size_t lane = 0; lane < kLanes; ++lane)
            sums[lane] += weights[i + lane] * values[i + lane];
    return std::accumulate(sums.begin(), sums.end(), 0.0);
}

/// The mean over the points, by those weights, of the chances of lasting longer than each of these days. The weights
/// sum to `total`.
std::vector<double> meanSurvivors(const double* weights, double total, std::span<const double> days)
{
    std::vector<double> out;
    PerPoint room;
    for (const double day : days)
        out.push_back(std::isfinite(day) ? std::min(1.0, weighedSum(weights, survivorsAt(day, room)) / total) : 0);
    return out;
}

} // namespace

Predictive::Predictive(std::span<const Evidence> past)
{
    for (const Point& p : grid().points) {
        m_steady.push_back(kSteady * p.prior);
        m_wanders.push_back((1 - kSteady) * p.prior);
    }
    learn(past);
}

void Predictive::learn(std::span<const Evidence> spells)
{
    learn(spells.size(), [&](std::size_t i) { return spells[i]; });
}

void Predictive::learn(std::size_t spells, const std::function<Evidence(std::size_t)>& next)
{
    for (std::size_t n = 0; n < spells; ++n) {
        const Evidence spell = next(n);
        if (spell.pieces.empty())
            continue;
        const PerPoint told = likelihoods(spell);
        const double sum = weighedSum(m_steady.data(), told.data()) + weighedSum(m_wanders.data(), told.data());
        for (auto* weights : {&m_steady, &m_wanders})
            for (std::size_t i = 0; i < kPoints; ++i) {
                const double w = (*weights)[i] * told[i] * (1 / sum);
                (*weights)[i] = w < kVanishing ? 0 : w;
            }
        wander(m_wanders, spell);
    }
    updateCurve();
}

std::vector<double> Predictive::survivorsOn(std::span<const double> days) const
{
    return meanSurvivors(both().data(), 1, days);
}

std::vector<double> Predictive::steadySurvivorsOn(std::span<const double> days) const
{
    const double steady = std::accumulate(m_steady.begin(), m_steady.end(), 0.0);
    return steady > 0 ? meanSurvivors(m_steady.data(), steady, days) : survivorsOn(days);
}

std::vector<double> Predictive::both() const
{
    std::vector<double> out(m_steady);
    for (std::size_t i = 0; i < kPoints; ++i)
        out[i] += m_wanders[i];
    return out;
}

Predictive Predictive::reshaped(const std::function<double(double)>& as) const
{
    Predictive out = *this;
    for (double& c : out.m_curve)
        c = std::min(0.0, std::log(std::max(kNothing, as(std::exp(c)))));
    return out;
}

void Predictive::updateCurve()
{
    const Grid& g = grid();
    const std::vector<double> weights = both();
    m_curve.clear();
    for (std::size_t n = 0; n < g.nodes.size(); ++n) {
        const double survivor = std::min(1.0, weighedSum(weights.data(), g.at(n)));
        if (survivor < kNothing)
            break;
        m_curve.push_back(std::min(std::log(survivor), m_curve.empty() ? 0.0 : m_curve.back()));
    }
}

namespace {

// Between two nodes of time the log survivor follows the Weibull through both, so that it has the right curvature.
// Within the first day it follows the Weibull through days 1 and 2. If no Weibull fits, it is a straight line.

double exponentOfFirstDay(const std::vector<double>& curve)
{
    const bool bends = curve.size() > 2 && curve[1] < 0 && curve[2] < curve[1];
    return bends ? std::log2(curve[2] / curve[1]) : 1;
}

double logSurvivorBetween(const std::vector<double>& curve, std::size_t next, double days)
{
    const std::vector<double>& t = grid().nodes;
    if (next == 1)
        return curve[1] * std::pow(days, exponentOfFirstDay(curve));
    const double before = curve[next - 1];
    if (!(before < 0))
        return before + (curve[next] - before) * (days - t[next - 1]) / (t[next] - t[next - 1]);
    return before * std::pow(curve[next] / before, std::log(days / t[next - 1]) / std::log(t[next] / t[next - 1]));
}

/// The inverse: the time between node `next` - 1 and node `next` at which the log survivor is `wanted` (at most 0).
double daysBetween(const std::vector<double>& curve, std::size_t next, double wanted)
{
    const std::vector<double>& t = grid().nodes;
    if (next == 1)
        return std::pow(wanted / curve[1], 1 / exponentOfFirstDay(curve));
    const double before = curve[next - 1];
    if (!(before < 0))
        return t[next - 1] + (t[next] - t[next - 1]) * (wanted - before) / (curve[next] - before);
    return t[next - 1] * std::pow(t[next] / t[next - 1], std::log(wanted / before) / std::log(curve[next] / before));
}

} // namespace

Predictive Predictive::stretched(double by) const
{
    Predictive out = *this;
    out.m_curve.clear();
    for (const double days : grid().nodes) {
        const double chance = survivor(days / by);
        if (chance < kNothing)
            break;
        out.m_curve.push_back(std::min(std::log(chance), out.m_curve.empty() ? 0.0 : out.m_curve.back()));
    }
    return out;
}

double Predictive::survivor(double days) const
{
    const Grid& g = grid();
    if (!(days > 0))
        return 1;
    const auto next =
        static_cast<std::size_t>(std::upper_bound(g.nodes.begin(), g.nodes.end(), days) - g.nodes.begin());
    if (next < m_curve.size() && days != g.nodes[next - 1])
        return std::exp(std::clamp(logSurvivorBetween(m_curve, next, days), m_curve[next], m_curve[next - 1]));
    return next <= m_curve.size() && days == g.nodes[next - 1] ? std::exp(m_curve[next - 1]) : 0;
}

double Predictive::quantile(double p, double left) const
{
    const Grid& g = grid();
    const double now = survivor(left);
    if (now <= 0)
        return std::max(0.0, left);
    const double wanted = std::log1p(-p) + std::log(now);
    const auto at = std::partition_point(m_curve.begin(), m_curve.end(), [&](double v) { return v > wanted; });
    const auto node = static_cast<std::size_t>(at - m_curve.begin());
    if (node == 0) // only if p is tiny
        return std::max(0.0, left);
    if (at == m_curve.end())
        return std::max(left, g.nodes[std::min(node, g.nodes.size() - 1)]);
    return std::max(left, std::clamp(daysBetween(m_curve, node, wanted), g.nodes[node - 1], g.nodes[node]));
}

} // namespace firstdew::outlook
