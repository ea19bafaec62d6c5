#include "outlook/Predictive.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <random>
#include <rapidcheck.h>

using namespace firstdew::outlook;

namespace {

Predictive learned(const std::vector<Interval>& spells)
{
    std::vector<Evidence> evidence;
    for (const Interval& x : spells)
        evidence.push_back(evidenceOf(x));
    return Predictive(evidence);
}

bool orderly(const Predictive& p)
{
    double before = 1;
    for (double t = 0; t < 5000; t = t * 1.05 + 0.25) {
        const double s = p.survivor(t);
        if (!(s >= 0 && s <= before))
            return false;
        before = s;
    }
    for (const double left : {0.0, 0.5, 3.0, 40.0, 1000.0, 1e6}) {
        double at = left;
        for (const double q : {0.001, 0.05, 0.1, 0.2, 0.5, 0.8, 0.9, 0.999}) {
            const double t = p.quantile(q, left);
            if (!std::isfinite(t) || t < at)
                return false;
            at = t;
        }
    }
    return true;
}

/// The same posterior predictive, integrated anew on a grid many times as fine and far wider, on which a wandering
/// median takes the exact normal step of a process that returns to the population's: the Ornstein-Uhlenbeck process.
class Brute {
public:
    explicit Brute(const std::vector<Interval>& spells)
    {
        for (const bool wanders : {false, true})
            for (const bool weibull : {true, false})
                for (int s = 0; s <= kShapes; ++s) {
                    const double shape = (weibull ? 3 : 0.36) * std::exp(0.25 * (8.0 * s / kShapes - 4));
                    add(weibull, shape, kept(spells, weibull, shape, wanders),
                        (weibull ? 0.9 : 0.1) * (wanders ? 0.35 : 0.65) *
                            std::exp(-0.5 * std::pow(8.0 * s / kShapes - 4, 2)));
                }
    }

    [[nodiscard]] double survivor(double days) const
    {
        double sum = 0;
        double total = 0;
        for (const Column& c : m_columns)
            for (int m = 0; m <= kMedians; ++m) {
                total += c.weights[static_cast<std::size_t>(m)];
                sum += c.weights[static_cast<std::size_t>(m)] * survivor(c.weibull, m, c.shape, days);
            }
        return sum / total;
    }

private:
    static constexpr int kMedians = 600;
    static constexpr int kShapes = 32;
    struct Column {
        bool weibull = true;
        double shape = 1;
        std::vector<double> weights;
    };

    static double z(int m) { return 12.0 * m / kMedians - 6; }
    static double survivor(bool weibull, int m, double shape, double t)
    {
        if (t <= 0)
            return 1;
        const double x = std::log(t) - std::numbers::ln10 - 0.6 * z(m);
        return weibull ? std::exp(-std::numbers::ln2 * std::exp(shape * x))
                       : 0.5 * std::erfc(x / (shape * std::numbers::sqrt2));
    }

    static std::vector<double> kept(const std::vector<Interval>& spells, bool weibull, double shape, bool wanders)
    {
        std::vector<double> w;
        for (int m = 0; m <= kMedians; ++m)
            w.push_back(std::exp(-0.5 * z(m) * z(m)));
        for (const Interval& x : spells) {
            for (int m = 0; m <= kMedians; ++m) {
                const double tail = x.right ? survivor(weibull, m, shape, *x.right) : 0;
                w[static_cast<std::size_t>(m)] *= std::max(1e-12, survivor(weibull, m, shape, x.left) - tail);
            }
            if (wanders)
                w = stepped(w, x.right.has_value());
        }
        return w;
    }

    /// Where a median may go in one step, and with what probability.
    struct Reached {
        std::size_t first = 0;
        std::vector<double> shares;
    };

    static std::vector<Reached> reachedFromEach(double seen)
    {
        const double gain = 1 - std::pow(0.5, 1 / 1.75);
        const double step = std::numbers::pi / (3 * std::sqrt(6)) * gain / std::sqrt(1 - gain) / 0.6;
        const double stay = std::exp(-0.5 * seen * step * step);
        const double sd = std::sqrt(1 - stay * stay);
        const int reach = static_cast<int>(8 * sd * kMedians / 12) + 2;
        std::vector<Reached> out;
        for (int from = 0; from <= kMedians; ++from) {
            Reached reached{static_cast<std::size_t>(std::max(0, from - reach)), {}};
            double sum = 0;
            for (int to = std::max(0, from - reach); to <= std::min(kMedians, from + reach); ++to) {
                const double off = (z(to) - stay * z(from)) / sd;
                reached.shares.push_back(std::exp(-0.5 * off * off));
                sum += reached.shares.back();
            }
            for (double& share : reached.shares)
                share /= sum;
            out.push_back(std::move(reached));
        }
        return out;
    }

    static std::vector<double> stepped(const std::vector<double>& w, bool whole)
    {
        static const auto kWhole = reachedFromEach(1);
        static const auto kCensored = reachedFromEach(0.9);
        const auto& reached = whole ? kWhole : kCensored;
        std::vector<double> out(w.size());
        for (std::size_t from = 0; from < w.size(); ++from)
            for (std::size_t i = 0; i < reached[from].shares.size(); ++i)
                out[reached[from].first + i] += w[from] * reached[from].shares[i];
        return out;
    }

    void add(bool weibull, double shape, std::vector<double> weights, double prior)
    {
        for (double& w : weights)
            w *= prior;
        m_columns.push_back({weibull, shape, std::move(weights)});
    }

    std::vector<Column> m_columns;
};

} // namespace

TEST_CASE("the predictive distribution equals the integral over both parameters within 0.008")
{
    const std::vector<std::vector<Interval>> people{
        {},
        {{9, 10}},
        {{4, {}}, {4, {}}, {5, {}}},
        {{6, 7}, {5, 6}, {8, 10}, {3, {}}, {6, 8}},
        {{25, 30}, {28, 29}},
        {{0, 2}, {1, 2}},
        {{5, 6}, {5, 7}, {4, 6}, {5, 6}, {6, 7}, {9, 10}, {8, {}}, {9, 11}, {10, 12}, {9, 10}}};
    for (const auto& spells : people) {
        const auto p = learned(spells);
        const Brute brute(spells);
        for (const double t : {1.0, 2.0, 3.0, 5.0, 7.0, 10.0, 14.0, 20.0, 30.0, 60.0, 100.0})
            CHECK(p.survivor(t) == Approx(brute.survivor(t)).margin(0.008));
    }
}

TEST_CASE("survivor and quantiles are finite and ordered for every record")
{
    CHECK(orderly(learned({})));
    CHECK(orderly(learned({{9, 10}})));
    CHECK(orderly(learned({{9, 10}, {3, {}}})));
    CHECK(orderly(learned(std::vector<Interval>(200, {13, 14}))));
    CHECK(orderly(learned(std::vector<Interval>(200, {5, {}}))));
    CHECK(orderly(learned(std::vector<Interval>(200, {0, 1}))));
    CHECK(orderly(learned(std::vector<Interval>(200, {7, 7}))));
    CHECK(orderly(learned({{3000, {}}, {100000, {}}, {3000, 3650}})));
    CHECK(orderly(learned({{1e6, {}}})));
    CHECK(rc::check([] {
        std::vector<Interval> spells;
        for (int n = *rc::gen::inRange(0, 200); n > 0; --n) {
            const double left = *rc::gen::inRange(0, 60);
            const int width = *rc::gen::inRange(-3, 12);
            if (left + width > 0 || width <= 0)
                spells.push_back({left, width > 0 ? std::optional<double>(left + width) : std::nullopt});
        }
        RC_ASSERT(orderly(learned(spells)));
    }));
}

TEST_CASE("two hundred equal spells give a narrow forecast, and longer spells lengthen it")
{
    const auto sure = learned(std::vector<Interval>(200, {13, 14}));
    CHECK(sure.quantile(0.5) == Approx(13.5).margin(1));
    CHECK(sure.quantile(0.1) > 9);
    CHECK(sure.quantile(0.9) < 17);
    double before = 0;
    for (double days = 2; days < 40; days += 3) {
        const double median = learned(std::vector<Interval>(6, {days, days + 1})).quantile(0.5);
        CHECK(median > before);
        before = median;
    }
}

TEST_CASE("within a day the survivor follows the hazard, and quantiles invert it to the minute")
{
    for (const auto& spells : std::vector<std::vector<Interval>>{{}, {{2, 3}, {3, 4}, {2, 3}}, {{20, 25}, {18, 20}}}) {
        const auto p = learned(spells);
        const Brute brute(spells);
        for (const double t : {0.5, 0.9, 1.5, 2.5, 3.3, 8.7, 30.5})
            CHECK(p.survivor(t) == Approx(brute.survivor(t)).margin(0.01));
        for (const double q : {0.001, 0.03, 0.2, 0.5, 0.8, 0.97})
            for (const double left : {0.0, 0.4, 6.0, 7.25})
                CHECK(p.survivor(p.quantile(q, left)) == Approx((1 - q) * p.survivor(left)).epsilon(1e-6));
    }
}

TEST_CASE("recent spells count more than the same spells long ago")
{
    // Twelve short spells, then twelve long ones, against the reverse; neither forgets the other half.
    std::vector<Interval> slower(12, {5, 6});
    slower.insert(slower.end(), 12, {9, 10});
    const std::vector<Interval> faster(slower.rbegin(), slower.rend());
    const double late = learned(slower).quantile(0.5);
    const double early = learned(faster).quantile(0.5);
    CHECK(late > early + 0.5);
    CHECK(late < 10);
    CHECK(early > 5);
    // Spells that say nothing leave the population's own prior what it is, however many they are.
    const Evidence nothing{{{0, 1e9, 1}}, 0};
    const Predictive prior(std::span<const Evidence>{});
    const Predictive waited(std::vector<Evidence>(400, nothing));
    for (const double t : {2.0, 5.0, 10.0, 20.0, 50.0})
        CHECK(waited.survivor(t) == Approx(prior.survivor(t)).epsilon(1e-4));
}

TEST_CASE("learning spells one by one equals learning them at once")
{
    const std::vector<Interval> spells{{3, 5}, {8, {}}, {7, 9}, {4, {}}, {5, 6}};
    Predictive slow(std::span<const Evidence>{});
    for (const Interval& x : spells) {
        const Evidence e = evidenceOf(x);
        slow.learn({&e, 1});
    }
    const auto quick = learned(spells);
    for (const double t : {1.0, 4.5, 9.0, 30.0})
        CHECK(slow.survivor(t) == quick.survivor(t));
}
