#include "outlook/Predictive.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace firstdew::outlook
{

namespace
{

constexpr int kMedians = 49;
constexpr int kShapes = 11;
constexpr double kLongest = 3660; // days; nothing is forecast beyond

// Spread of the medians between people and of the shape within a family. Chosen so that the prior predictive has its
// median at 10 days and 90 % between 3 and 35 days; tests/core/outlook checks it.
constexpr double kLogMedian = 2.302585092994046; // ln 10
constexpr double kLogMedianSd = 0.58;
constexpr double kWeibullShape = 3.0;
constexpr double kLognormalSd = 0.4;
constexpr double kLogShapeSd = 0.35;

struct Point {
    bool weibull = true;
    double logMedian = 0;
    double shape = 1; ///< Weibull shape, or sd of the logarithm
    double prior = 0;
};

const std::vector<Point>& grid()
{
    static const std::vector<Point> points = [] {
        std::vector<Point> out;
        double sum = 0;
        for (const bool weibull : {true, false})
            for (int m = 0; m < kMedians; ++m)
                for (int s = 0; s < kShapes; ++s) {
                    const double zm = 8.0 * m / (kMedians - 1) - 4.0;
                    const double zs = 5.0 * s / (kShapes - 1) - 2.5;
                    const double prior = std::exp(-0.5 * (zm * zm + zs * zs));
                    const double middle = weibull ? kWeibullShape : kLognormalSd;
                    out.push_back(
                        {weibull, kLogMedian + kLogMedianSd * zm, middle * std::exp(kLogShapeSd * zs), prior});
                    sum += prior;
                }
        for (Point& p : out)
            p.prior /= sum;
        return out;
    }();
    return points;
}

double survivorAt(const Point& p, double days)
{
    if (days <= 0)
        return 1;
    const double x = std::log(days) - p.logMedian;
    if (p.weibull)
        return std::exp(-std::numbers::ln2 * std::exp(p.shape * x));
    return 0.5 * std::erfc(x / (p.shape * std::numbers::sqrt2));
}

/// Log likelihood of one spell, floored so that no single report can rule out everything.
double logLikelihood(const Point& p, const Spell& spell)
{
    const double least = 1e-12;
    const double left = survivorAt(p, spell.left);
    const double right = spell.right ? survivorAt(p, *spell.right) : 0.0;
    return std::log(std::max(least, left - right));
}

bool says(const Spell& spell)
{
    return spell.gotDry && spell.left >= 0 && (spell.right ? *spell.right > spell.left : spell.left > 0);
}

} // namespace

Predictive::Predictive(std::span<const Spell> past)
{
    const auto& points = grid();
    std::vector<double> log(points.size());
    double weight = 1;
    for (auto spell = past.rbegin(); spell != past.rend() && weight > 1e-3; ++spell) {
        if (!says(*spell))
            continue;
        for (std::size_t i = 0; i < points.size(); ++i)
            log[i] += weight * logLikelihood(points[i], *spell);
        weight *= std::exp2(-1 / kHalfLifeSpells);
    }
    const double highest = *std::max_element(log.begin(), log.end());
    double sum = 0;
    m_weights.resize(points.size());
    for (std::size_t i = 0; i < points.size(); ++i)
        sum += m_weights[i] = points[i].prior * std::exp(log[i] - highest);
    for (double& w : m_weights)
        w /= sum;
}

double Predictive::survivor(double days) const
{
    const auto& points = grid();
    double s = 0;
    for (std::size_t i = 0; i < points.size(); ++i)
        if (m_weights[i] > 1e-9)
            s += m_weights[i] * survivorAt(points[i], days);
    return std::clamp(s, 0.0, 1.0);
}

double Predictive::quantile(double p, double left) const
{
    const double wanted = (1 - p) * survivor(left);
    double low = left;
    double high = std::max(1.0, left * 2);
    while (high < kLongest && survivor(high) > wanted)
        high *= 2;
    high = std::min(high, kLongest);
    for (int i = 0; i < 40 && high - low > 1e-3; ++i) {
        const double middle = (low + high) / 2;
        (survivor(middle) <= wanted ? high : low) = middle;
    }
    return high;
}

} // namespace firstdew::outlook
