#include "outlook/Predictive.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>

namespace firstdew::outlook
{

namespace
{

constexpr std::size_t kMedians = 48;
constexpr std::size_t kShapes = 9;
constexpr std::size_t kPoints = 2 * kMedians * kShapes;
constexpr std::size_t kLanes = 12;
static_assert(kPoints % kLanes == 0);
constexpr std::size_t kWholeDays = 64; // nodes of time at 0, 1, ... 64 days, then ever wider apart
constexpr double kWider = 1.05;
constexpr double kLongest = 3660;       // days
constexpr double kNothing = 1e-30;     // a survivor below this is none
/// Share of a spell's weight that never fades: what a person was like last year tells more than what others are like.
constexpr double kLasting = 0.25;
/// A spell cut short while still dry shows little of how long it would have lasted; it ages the others by a fifth of what
/// one that came to its end does (both our own choice, from rehearsal).
constexpr double kUnseenAgesLess = 0.8;
constexpr double kLeastLikelihood = 1e-12; // so that no spell can rule out everything

// Spread of the medians between people and of the shape within a family. Our own choice: the prior predictive has its
// median at 10 days and 90 % between 3 and 35 days (tests/core/outlook checks it), and how that spread is shared out
// between people and within one person is what kept the intervals honest in rehearsal (COSTS.md).
constexpr double kLogMedian = std::numbers::ln10;
constexpr double kLogMedianSd = 0.62;
constexpr double kWeibullShape = 3.2;
constexpr double kLognormalSd = 0.36;
constexpr double kLogShapeSd = 0.25;

struct Point {
    bool weibull = true;
    double logMedian = 0;
    double shape = 1; ///< Weibull shape, or sd of the logarithm
    double prior = 0;
};

double survivorAt(const Point& p, double days)
{
    if (days <= 0)
        return 1;
    const double x = std::log(days) - p.logMedian;
    if (p.weibull)
        return std::exp(-std::numbers::ln2 * std::exp(p.shape * x));
    return 0.5 * std::erfc(x / (p.shape * std::numbers::sqrt2));
}

/// The grid, and on it the survivor at the nodes of time: computed once, looked up ever after.
struct Grid {
    std::vector<Point> points;
    std::vector<double> nodes;
    std::vector<float> survivors; ///< single precision is plenty, and half the memory; node by node, all points of a node together

    Grid()
    {
        double sum = 0;
        for (const bool weibull : {true, false})
            for (std::size_t m = 0; m < kMedians; ++m)
                for (std::size_t s = 0; s < kShapes; ++s) {
                    const double zm = 8.0 * static_cast<double>(m) / (kMedians - 1) - 4;
                    const double zs = 5.0 * static_cast<double>(s) / (kShapes - 1) - 2.5;
                    const double prior = std::exp(-0.5 * (zm * zm + zs * zs));
                    const double middle = weibull ? kWeibullShape : kLognormalSd;
                    points.push_back(
                        {weibull, kLogMedian + kLogMedianSd * zm, middle * std::exp(kLogShapeSd * zs), prior});
                    sum += prior;
                }
        for (Point& p : points)
            p.prior /= sum;
        for (std::size_t d = 0; d <= kWholeDays; ++d)
            nodes.push_back(static_cast<double>(d));
        while (nodes.back() < kLongest)
            nodes.push_back(std::min(kLongest, nodes.back() * kWider));
        survivors.reserve(nodes.size() * kPoints);
        for (const double t : nodes)
            for (const Point& p : points)
                survivors.push_back(static_cast<float>(survivorAt(p, t)));
    }

    [[nodiscard]] const float* at(std::size_t node) const { return survivors.data() + node * kPoints; }
};

const Grid& grid()
{
    static const Grid g;
    return g;
}

using PerPoint = std::array<double, kPoints>;

/// Adds factor * survivor(days) to every point's sum.
void addSurvivor(PerPoint& sums, double factor, double days)
{
    const Grid& g = grid();
    const bool tabled = days >= 0 && days <= static_cast<double>(kWholeDays) && days == std::floor(days);
    if (tabled) {
        const float* row = g.at(static_cast<std::size_t>(days));
        for (std::size_t i = 0; i < kPoints; ++i)
            sums[i] += factor * row[i];
    } else if (std::isfinite(days)) {
        for (std::size_t i = 0; i < kPoints; ++i)
            sums[i] += factor * survivorAt(g.points[i], days);
    }
}

PerPoint logLikelihoods(const Evidence& spell)
{
    PerPoint out;
    out.fill(spell.regardless);
    // Neighbouring pieces share an end, so that each end is looked up once.
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
        value = std::log(std::max(kLeastLikelihood, value));
    return out;
}

/// How much a further spell takes from the weight of those before it.
double fadeBy(const Evidence& spell)
{
    const bool open = !std::isfinite(spell.pieces.back().to);
    const double unseen = open ? spell.pieces.back().weight : 0;
    return std::exp2(-(1 - kUnseenAgesLess * unseen) / kHalfLifeSpells);
}

} // namespace

Predictive::Predictive(std::span<const Evidence> past) : m_fading(kPoints, 0), m_lasting(kPoints, 0)
{
    learn(past);
}

void Predictive::learn(std::span<const Evidence> spells)
{
    // Many spells of a regular person say the same; each such word is worked out once.
    std::vector<std::pair<const Evidence*, PerPoint>> known;
    for (const Evidence& spell : spells) {
        if (spell.pieces.empty())
            continue;
        auto same = std::find_if(known.begin(), known.end(), [&](const auto& k) { return *k.first == spell; });
        if (same == known.end())
            same = known.insert(known.end(), {&spell, logLikelihoods(spell)});
        const double fade = fadeBy(spell);
        for (std::size_t i = 0; i < kPoints; ++i) {
            m_fading[i] = fade * m_fading[i] + (1 - kLasting) * same->second[i];
            m_lasting[i] += kLasting * same->second[i];
        }
    }
    settle();
}

void Predictive::settle()
{
    const Grid& g = grid();
    std::array<double, kPoints> weights;
    for (std::size_t i = 0; i < kPoints; ++i)
        weights[i] = m_fading[i] + m_lasting[i];
    const double highest = *std::max_element(weights.begin(), weights.end());
    double sum = 0;
    for (std::size_t i = 0; i < kPoints; ++i)
        sum += weights[i] = g.points[i].prior * std::exp(weights[i] - highest);
    std::array<float, kPoints> shares;
    for (std::size_t i = 0; i < kPoints; ++i)
        shares[i] = static_cast<float>(weights[i] / sum);
    m_curve.clear();
    for (std::size_t n = 0; n < g.nodes.size(); ++n) {
        const float* row = g.at(n);
        std::array<float, kLanes> lanes{}; // sums side by side, for the sake of speed
        for (std::size_t i = 0; i < kPoints; i += kLanes)
            for (std::size_t k = 0; k < kLanes; ++k)
                lanes[k] += shares[i + k] * row[i + k];
        const double survivor = std::min(1.0, std::accumulate(lanes.begin(), lanes.end(), 0.0));
        if (survivor < kNothing)
            break;
        m_curve.push_back(std::min(std::log(survivor), m_curve.empty() ? 0.0 : m_curve.back()));
    }
}

double Predictive::survivor(double days) const
{
    const Grid& g = grid();
    if (!(days > 0))
        return 1;
    const auto after = std::upper_bound(g.nodes.begin(), g.nodes.end(), days) - g.nodes.begin();
    const auto next = static_cast<std::size_t>(after);
    if (next >= m_curve.size()) {
        const bool last = next == m_curve.size() && g.nodes[next - 1] == days;
        return last ? std::exp(m_curve.back()) : 0;
    }
    const double share = (days - g.nodes[next - 1]) / (g.nodes[next] - g.nodes[next - 1]);
    return std::exp(m_curve[next - 1] + share * (m_curve[next] - m_curve[next - 1]));
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
    if (at == m_curve.end())
        return std::max(left, g.nodes[std::min(node, g.nodes.size() - 1)]);
    const double before = m_curve[node - 1];
    const double share = (before - wanted) / (before - *at);
    return std::max(left, g.nodes[node - 1] + share * (g.nodes[node] - g.nodes[node - 1]));
}

} // namespace firstdew::outlook
