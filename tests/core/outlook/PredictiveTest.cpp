#include "outlook/Predictive.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <random>
#include <rapidcheck.h>

using namespace firstdew::outlook;

namespace
{

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

/// The same posterior predictive, integrated anew on a grid four times as fine in each direction and far wider.
double bruteSurvivor(const std::vector<Interval>& spells, double days)
{
    constexpr int kFine = 300;
    constexpr int kFineShapes = 60;
    const auto survivor = [](bool weibull, double logMedian, double shape, double t) {
        if (t <= 0)
            return 1.0;
        const double x = std::log(t) - logMedian;
        return weibull ? std::exp(-std::numbers::ln2 * std::exp(shape * x)) : 0.5 * std::erfc(x / (shape * std::numbers::sqrt2));
    };
    double sum = 0;
    double total = 0;
    for (const bool weibull : {true, false})
        for (int m = 0; m <= kFine; ++m)
            for (int s = 0; s <= kFineShapes; ++s) {
                const double zm = 12.0 * m / kFine - 6;
                const double zs = 8.0 * s / kFineShapes - 4;
                const double logMedian = std::numbers::ln10 + 0.62 * zm;
                const double shape = (weibull ? 3.2 : 0.36) * std::exp(0.25 * zs);
                double fading = 0;
                double lasting = 0;
                for (const Interval& x : spells) {
                    const double tail = x.right ? survivor(weibull, logMedian, shape, *x.right) : 0;
                    const double log = std::log(std::max(1e-12, survivor(weibull, logMedian, shape, x.left) - tail));
                    fading = fading * std::exp2(-(x.right ? 1.0 : 0.2) / 8) + 0.75 * log;
                    lasting += 0.25 * log;
                }
                const double w = std::exp(-0.5 * (zm * zm + zs * zs) + fading + lasting);
                total += w;
                sum += w * survivor(weibull, logMedian, shape, days);
            }
    return sum / total;
}

} // namespace

TEST_CASE("the predictive distribution is the integral over both parameters, to the third digit")
{
    const std::vector<std::vector<Interval>> people{
        {}, {{9, 10}}, {{4, {}}, {4, {}}, {5, {}}}, {{6, 7}, {5, 6}, {8, 10}, {3, {}}, {6, 8}}, {{25, 30}, {28, 29}}, {{0, 2}, {1, 2}}};
    for (const auto& spells : people) {
        const auto p = learned(spells);
        for (const double t : {1.0, 2.0, 3.0, 5.0, 7.0, 10.0, 14.0, 20.0, 30.0, 60.0, 100.0})
            CHECK(p.survivor(t) == Approx(bruteSurvivor(spells, t)).margin(0.004));
    }
}

TEST_CASE("whatever was recorded, survivor and quantiles are finite and in order")
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

TEST_CASE("two hundred equal spells leave little doubt, and longer spells lengthen the forecast")
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

TEST_CASE("learning spell by spell is learning them at once")
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
