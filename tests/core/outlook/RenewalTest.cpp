#include "outlook/Renewal.h"

#include "outlook/Predictive.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

using namespace firstdew::outlook;

namespace {

auto weibull(double median, double shape)
{
    return [=](double days) { return std::exp(-std::numbers::ln2 * std::pow(days / median, shape)); };
}

} // namespace

TEST_CASE("a spell that does not age is never worth treating before it ends")
{
    // For an exponential time no age is better than waiting for dampness (Barlow & Hunter 1960).
    const Renewal r(weibull(10, 1), 2);
    CHECK(r.rate() == Approx(3 * std::numbers::ln2 / 10).epsilon(1e-3));
    for (int day = 0; day < 100; ++day)
        CHECK_FALSE(r.treat(day, 1));
}

TEST_CASE("at the best age the hazard of a damp day has reached the rate of cost")
{
    // The condition of the optimum: damp * h(t) = rate (Barlow & Hunter 1960), with Weibull hazards.
    for (const double shape : {2.0, 3.0, 5.0})
        for (const double median : {5.0, 10.0, 25.0})
            for (const double damp : {0.5, 2.0, 5.0}) {
                const Renewal r(weibull(median, shape), damp);
                const auto priceAt = [&](double t) {
                    return damp * std::numbers::ln2 * shape * std::pow(t / median, shape - 1) / median;
                };
                CAPTURE(shape, median, damp, r.age(), r.rate());
                CHECK(priceAt(r.age() - 1) <= r.rate());
                CHECK(priceAt(r.age() + 1) >= r.rate());
                CHECK(r.lost(0) == Approx(1).epsilon(1e-9));
                CHECK(r.lost(r.age()) == Approx(0).margin(1e-9));
                for (int day = 0; day < 3 * r.age(); ++day)
                    CHECK(r.treat(day, 1) == (day >= r.age()));
            }
}

TEST_CASE("likely dampness calls for a session at any age, unlikely dampness only if little of the spell is left")
{
    const Renewal r(weibull(10, 3), 2);
    for (int day = 0; day < 30; ++day) {
        CHECK(r.treat(day, 0));
        CHECK(r.treat(day, 0.3));
        for (const double dry : {0.2, 0.5, 0.9})
            CHECK((!r.treat(day, dry + 0.1) || r.treat(day, dry)));
    }
    CHECK_FALSE(r.treat(1, 0.8));
    CHECK(r.treat(r.age() - 1, 0.8));
}

TEST_CASE("a greater cost of a damp day never treats later")
{
    const Predictive prior(std::span<const Evidence>{});
    const auto survivor = [&](double days) { return prior.survivor(days); };
    int age = kLongestWait;
    for (const double damp : {0.1, 0.5, 1.0, 2.0, 5.0, 20.0, 1000.0}) {
        const Renewal r(survivor, damp);
        CHECK(r.age() <= age);
        age = r.age();
    }
    CHECK(age >= 1);
}
