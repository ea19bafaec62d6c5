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
constexpr std::size_t kLanes = 12;
static_assert(kPoints % kLanes == 0);
constexpr std::size_t kWholeDays = 64;     // nodes of time at 0, 1, ... 64 days, then ever wider apart
constexpr double kLongest = 3660;          // days
constexpr double kNothing = 1e-30;         // a survivor below this is none
constexpr double kLeastLikelihood = 1e-12; // so that no spell can rule out everything
constexpr double kVanishing = 1e-100;      // a weight below this is none: tiny numbers are slow

// Everything below is our own choice. How it keeps the intervals honest is judged by rehearsal (COSTS.md); that the
// prior predictive has its median at 10 days and 90 % between 3 and 35 is tested.
constexpr double kLogMedian = std::numbers::ln10;
constexpr double kLogMedianSd = 0.6; // between people
constexpr double kWeibullShape = 3;
constexpr double kLognormalSd = 0.36;
constexpr double kLogShapeSd = 0.25;
constexpr double kWeibull =
    0.9; ///< log-normal says the longer dry beyond the usual, the safer: less likely, and less cautious
constexpr double kSteady = 0.8; ///< that a person's median stays
/// A spell cut short while still dry shows little of how long it would have lasted; the median wanders the less.
constexpr double kUnseenWandersLess = 0.8;

struct Point {
    bool weibull = true;
    double logMedian = 0;
    double shape = 1; ///< Weibull shape, or sd of the logarithm
    double prior = 0;
    double perPrior = 0; ///< 1 / prior
};

/// Ends a state in which Intel's processors may take twenty times as long for exp() and erfc(): the upper halves of the
/// AVX registers in use, by which every change between the two kinds of instructions in the mathematical library is
/// dear. Some libraries leave it so as they load. A compiler that may use these registers itself ends it by itself.
void leaveUpperHalves()
{
#if defined(__x86_64__) && !defined(__AVX__)
    static const bool there = __builtin_cpu_supports("avx") != 0;
    if (there)
        asm volatile("vzeroupper");
#endif
}

/// What single precision does not tell from 0 or 1 is not worked out.
double survivorOfHazard(double hazard)
{
    constexpr double kNone = 150;  // exp(-150) is below the least number of single precision
    constexpr double kAll = 1e-10; // 1 - 1e-10 is 1 there
    return hazard > kNone ? 0 : hazard < kAll ? 1 : std::exp(-hazard);
}

/// `logDays` of a time above 0.
double survivorAtLog(const Point& p, double logDays)
{
    const double x = logDays - p.logMedian;
    if (p.weibull)
        return survivorOfHazard(std::numbers::ln2 * std::exp(p.shape * x));
    // erfc(13) is below the least number of single precision, too
    const double z = x / (p.shape * std::numbers::sqrt2);
    return z > 13 ? 0 : z < -5 ? 1 : 0.5 * static_cast<double>(std::erfc(static_cast<float>(z)));
}

double survivorAt(const Point& p, double days) { return days <= 0 ? 1 : survivorAtLog(p, std::log(days)); }

/// The grid, and on it the survivor at the nodes of time: computed once, looked up ever after.
struct Grid {
    std::vector<Point> points;
    std::vector<double> firstDay; ///< hazard of the first day, of the Weibull times alone
    std::vector<double> nodes;
    std::vector<float>
        survivors; ///< single precision is plenty, and half the memory; node by node, all points of a node together

    Grid()
    {
        leaveUpperHalves();
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
        for (Point& p : points) {
            p.prior /= sum;
            p.perPrior = 1 / p.prior;
            if (p.weibull)
                firstDay.push_back(std::numbers::ln2 * std::exp(-p.shape * p.logMedian));
        }
        const double step = kLogMedianSd * kMedianStep;
        const auto wide = static_cast<std::size_t>(std::log(kLongest / kWholeDays) / step) + 1;
        nodes.reserve(1 + kWholeDays + wide + 1);
        survivors.reserve(nodes.capacity() * kPoints);
        nodes.push_back(0);
        survivors.assign(kPoints, 1.0F);
        for (std::size_t d = 1; d <= kWholeDays; ++d)
            add(static_cast<double>(d));
        for (const double wider = std::exp(step); nodes.back() * wider < kLongest;)
            addWider(nodes.back() * wider);
        add(kLongest);
    }

    /// The hazard of a Weibull time is that of the first day times a power of the days.
    void add(double days)
    {
        nodes.push_back(days);
        const double log = std::log(days);
        std::array<double, kShapes> powers;
        for (std::size_t s = 0; s < kShapes; ++s)
            powers[s] = std::exp(points[s].shape * log);
        for (std::size_t i = 0; i < kOfFamily; ++i)
            survivors.push_back(static_cast<float>(survivorOfHazard(firstDay[i] * powers[i % kShapes])));
        for (std::size_t i = kOfFamily; i < kPoints; ++i)
            survivors.push_back(static_cast<float>(survivorAtLog(points[i], log)));
    }

    /// Of a time that is longer than the last by the factor between neighbouring medians. To such a time each median is
    /// what the one below it is to the last, so that only the lowest have to be worked out.
    void addWider(double days)
    {
        nodes.push_back(days);
        const double log = std::log(days);
        const std::size_t last = survivors.size() - kPoints;
        for (std::size_t i = 0; i < kPoints; ++i) {
            const bool lowest = i % kOfFamily < kShapes;
            survivors.push_back(lowest ? static_cast<float>(survivorAtLog(points[i], log))
                                       : survivors[last + i - kShapes]);
        }
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

PerPoint likelihoods(const Evidence& spell)
{
    leaveUpperHalves();
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

/// Lets the median wander after a spell: neighbours on the grid exchange weight, at rates that leave the prior as it
/// is.
void wander(std::vector<double>& weights, const Evidence& spell)
{
    static const double kStep = stepOfMedian();
    const Grid& g = grid();
    const bool open = !std::isfinite(spell.pieces.back().to);
    const double seen = 1 - (open ? kUnseenWandersLess * spell.pieces.back().weight : 0);
    const double rate = seen * kStep * kStep / (2 * kMedianStep * kMedianStep);
    for (std::size_t i = 0; i + kShapes < kPoints; ++i) {
        if (i % kOfFamily >= kOfFamily - kShapes)
            continue; // the longest medians of a family have no neighbour above
        const std::size_t above = i + kShapes;
        const double lesser = std::min(g.points[i].prior, g.points[above].prior);
        const double flow =
            rate * lesser * (weights[i] * g.points[i].perPrior - weights[above] * g.points[above].perPrior);
        weights[i] -= flow;
        weights[above] += flow;
    }
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
    // Many spells of a regular person say the same; each such word is worked out once.
    std::vector<std::pair<const Evidence*, PerPoint>> known;
    known.reserve(spells.size());
    for (const Evidence& spell : spells) {
        if (spell.pieces.empty())
            continue;
        auto same = std::find_if(known.begin(), known.end(), [&](const auto& k) { return *k.first == spell; });
        if (same == known.end())
            same = known.insert(known.end(), {&spell, likelihoods(spell)});
        double sum = 0;
        for (std::size_t i = 0; i < kPoints; ++i) {
            m_steady[i] *= same->second[i];
            m_wanders[i] *= same->second[i];
            sum += m_steady[i] + m_wanders[i];
        }
        for (auto* weights : {&m_steady, &m_wanders})
            for (double& w : *weights)
                w = w < kVanishing * sum ? 0 : w / sum;
        wander(m_wanders, spell);
    }
    settle();
}

void Predictive::settle()
{
    const Grid& g = grid();
    std::array<float, kPoints> shares;
    for (std::size_t i = 0; i < kPoints; ++i)
        shares[i] = static_cast<float>(m_steady[i] + m_wanders[i]);
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

namespace {

// Between two nodes of time the log survivor follows the Weibull through both, so that it bends as it does on the grid;
// within the first day, the one through the ends of the first two days. Where none goes through, a straight line.

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

/// The inverse: when the log survivor, `wanted` of at most 0, is reached between the nodes before `next` and `next`.
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
    if (node == 0) // only where p is next to nothing
        return std::max(0.0, left);
    if (at == m_curve.end())
        return std::max(left, g.nodes[std::min(node, g.nodes.size() - 1)]);
    return std::max(left, std::clamp(daysBetween(m_curve, node, wanted), g.nodes[node - 1], g.nodes[node]));
}

} // namespace firstdew::outlook
