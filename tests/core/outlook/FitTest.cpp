#include "outlook/Turnbull.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <rapidcheck.h>

using namespace firstdew::outlook;

namespace {

std::string refusal(Family family, std::vector<Interval> data)
{
    const auto result = fit(family, data);
    return result ? "" : result.error().code;
}

/// Invented times seen through visits on whole days; some exact, some cut off.
std::vector<Interval> someIntervals()
{
    const auto n = *rc::gen::inRange<std::size_t>(1, 60);
    std::vector<Interval> data;
    for (std::size_t i = 0; i < n; ++i) {
        const double left = *rc::gen::inRange(0, 40);
        const int width = *rc::gen::inRange(-1, 10);
        if (width < 0)
            data.push_back({left, std::nullopt});
        else if (left + width > 0)
            data.push_back({left, left + width});
    }
    if (data.empty())
        data.push_back({1, 2});
    return data;
}

} // namespace

TEST_CASE("a fit that cannot exist returns an error with its reason")
{
    for (const Family f : {Family::Weibull, Family::LogNormal}) {
        CHECK(refusal(f, {}) == "no-data");
        CHECK(refusal(f, {{3, {}}, {9, {}}}) == "no-events");
        CHECK(refusal(f, {{3, 5}}) == "no-spread");
        CHECK(refusal(f, {{7, 7}, {7, 7}, {7, 7}}) == "no-spread");
        CHECK(refusal(f, {{3, 8}, {5, 9}, {2, {}}}) == "no-spread");
        CHECK(refusal(f, {{10, {}}, {0, 5}, {12, {}}, {0, 4}}) == "no-estimate"); // the earlier the clammier: reversed
        CHECK(refusal(f, {{-1, 5}}) == "bad-left");
        CHECK(refusal(f, {{5, 4}}) == "bad-right");
        CHECK(refusal(f, {{0, 0}}) == "bad-right");
        CHECK(refusal(f, {{std::nan(""), 4}}) == "bad-left");
        CHECK(refusal(f, {{1, INFINITY}}) == "bad-right");
        CHECK(refusal(f, {{1, 1e300}}) == "bad-right");
    }
}

TEST_CASE("an estimate is finite and at a maximum with rising quantiles, or it is an error")
{
    CHECK(rc::check([] {
        const auto data = someIntervals();
        for (const Family f : {Family::Weibull, Family::LogNormal}) {
            const auto result = fit(f, data);
            if (!result)
                continue;
            const FamilyFit& best = *result;
            RC_ASSERT(std::isfinite(best.logLikelihood));
            for (const double v : best.standardErrors())
                RC_ASSERT(std::isfinite(v) && v > 0);
            double before = 0;
            for (const double p : {0.05, 0.1, 0.2, 0.5, 0.8, 0.9, 0.95}) {
                RC_ASSERT(best.quantile(p) > before);
                before = best.quantile(p);
                RC_ASSERT(std::abs(best.survivor(before) - (1 - p)) < 1e-9);
            }
            // Whatever spread is drawn, no parametric fit is likelier than the non-parametric one.
            const bool exact = std::any_of(data.begin(), data.end(), [](auto& x) { return x.right == x.left; });
            if (!exact)
                RC_ASSERT(best.logLikelihood <= logLikelihood(*turnbull(data), data) + 1e-7);
        }
    }));
}

TEST_CASE("Turnbull's masses sum to one, ascend, and explain every interval")
{
    CHECK(rc::check([] {
        const auto data = someIntervals();
        const auto masses = turnbull(data);
        RC_ASSERT(masses.ok());
        double sum = 0;
        double at = -1;
        for (const Mass& m : *masses) {
            RC_ASSERT(m.from >= at);
            at = m.to.value_or(INFINITY);
            RC_ASSERT(at >= m.from);
            sum += m.mass;
        }
        RC_ASSERT(std::abs(sum - 1) < 1e-9);
        RC_ASSERT(std::isfinite(logLikelihood(*masses, data)));
    }));
}

TEST_CASE("with exact and right-censored times Turnbull's estimate is the product-limit estimate")
{
    // Kaplan & Meier, J Am Stat Assoc 1958;53:457-481: the product over event times of (1 - events / at risk)
    CHECK(rc::check([] {
        std::vector<Interval> data;
        for (const int t : *rc::gen::nonEmpty(rc::gen::container<std::vector<int>>(rc::gen::inRange(1, 30))))
            data.push_back({double(t), *rc::gen::arbitrary<bool>() ? std::optional<double>(t) : std::nullopt});
        const auto masses = turnbull(data);
        RC_ASSERT(masses.ok());
        double product = 1;
        for (int t = 1; t <= 30; ++t) {
            int events = 0;
            int atRisk = 0;
            for (const Interval& x : data) {
                events += x.right == double(t);
                atRisk += x.left >= t;
            }
            if (atRisk > 0)
                product *= 1 - double(events) / atRisk;
            RC_ASSERT(std::abs(survivor(*masses, t) - product) < 1e-6);
        }
    }));
}
