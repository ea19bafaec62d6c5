#include "core/Build.h"
#include "outlook/Fitting.h"
#include "outlook/Learned.h"
#include "outlook/UsualDays.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <functional>
#include <random>

using namespace firstdew::outlook;
using build::day;
using build::Facts;

namespace {

double uniform(std::mt19937& random) { return std::uniform_real_distribution<double>(1e-6, 1 - 1e-6)(random); }

/// A dry spell seen by a check-in a day, or cut short by a top-up after `stop` days.
Evidence seen(double days, double stop)
{
    const double last = std::floor(std::min(days, stop));
    return days < stop ? evidenceOf(Interval{last, last + 1}) : evidenceOf(Interval{stop, std::nullopt});
}

/// Somebody invented, as the population is; from one spell on, spells last `factor` times as long.
struct Someone {
    double median;
    double shape;
    int changesAt;
    double factor;

    Someone(std::mt19937& random, int changes, double by)
        : median(10 * std::exp(0.6 * std::normal_distribution<double>()(random))),
          shape(3 * std::exp(0.25 * std::normal_distribution<double>()(random))), changesAt(changes), factor(by)
    {
    }
    [[nodiscard]] double spell(int number, std::mt19937& random) const
    {
        const double usual = median * std::pow(-std::log(uniform(random)) / std::log(2), 1 / shape);
        return number >= changesAt ? factor * usual : usual;
    }
};

constexpr int kNever = 1'000'000;

struct Told {
    std::vector<Change> changes;
    std::vector<double> eValues; ///< after each spell
};

/// `risk`: the person tops up while dry, at that quantile of the forecast; 2: never.
Told lived(unsigned seed, int spells, int changesAt, double factor, double risk)
{
    std::mt19937 random(seed);
    const Someone one(random, changesAt, factor);
    OwnClock clock;
    Told out;
    for (int i = 0; i < spells; ++i) {
        const double stop = risk < 1 ? std::max(2.0, std::floor(clock.inForce().quantile(risk))) : 1e9;
        const Evidence e = seen(one.spell(i, random), stop);
        clock.learn({&e, 1});
        out.eValues.push_back(clock.shift().eValue());
        const auto& change = clock.change();
        if (change && (out.changes.empty() || out.changes.back().found != change->found))
            out.changes.push_back(*change);
    }
    return out;
}

} // namespace

TEST_CASE("without a change the e-value of a shortening is 1 on average at most")
{
    const double risk = GENERATE(2.0, 0.2);
    constexpr int kPeople = 600;
    std::vector<Told> all;
    for (unsigned person = 0; person < kPeople; ++person)
        all.push_back(lived(person, 30, kNever, 1, risk));
    for (const std::size_t after : {std::size_t{5}, std::size_t{14}, std::size_t{30}}) {
        double sum = 0;
        double squares = 0;
        for (const Told& one : all) {
            sum += one.eValues[after - 1];
            squares += one.eValues[after - 1] * one.eValues[after - 1];
        }
        const double mean = sum / kPeople;
        const double error = std::sqrt((squares / kPeople - mean * mean) / kPeople);
        CAPTURE(risk, after, mean, error);
        CHECK(mean <= 1 + 3 * error);
        CHECK(mean >= 0.2);
    }
}

TEST_CASE("without a change one is found in less than one of a hundred spells")
{
    const double risk = GENERATE(2.0, 0.2);
    constexpr int kPeople = 120;
    constexpr int kSpells = 100;
    int shorter = 0;
    for (unsigned person = 0; person < kPeople; ++person)
        shorter += static_cast<int>(lived(person, kSpells, kNever, 1, risk).changes.size());
    CAPTURE(risk, shorter);
    CHECK(shorter > 0); // or the test could not find anything
    CHECK(shorter <= kPeople * kSpells / 100);
}

TEST_CASE("spells that halve are found in most people after about five of them, at about the right one")
{
    // Half of those who top up beforehand have no spell seen to its end in a row; they are found less often.
    const double risk = GENERATE(2.0, 0.2);
    constexpr int kPeople = 100;
    constexpr int kBefore = 20;
    std::vector<int> delays;
    int near = 0;
    for (unsigned person = 0; person < kPeople; ++person)
        for (const Change& c : lived(7000 + person, 2 * kBefore, kBefore, 0.5, risk).changes)
            if (c.found >= kBefore) {
                delays.push_back(static_cast<int>(c.found) - kBefore + 1);
                near += std::abs(static_cast<int>(c.since) - kBefore) <= 2;
                break;
            }
    std::sort(delays.begin(), delays.end());
    CAPTURE(risk, delays.size(), near);
    REQUIRE(delays.size() >= (risk < 1 ? 75U : 95U));
    CAPTURE(delays[delays.size() / 2]);
    CHECK(delays[delays.size() / 2] <= 6);
    CHECK(near >= (risk < 1 ? 50 : 65));
}

TEST_CASE("once a shortening is found, the spells since are told by themselves, and later ones are looked at anew")
{
    std::vector<Evidence> all;
    OwnClock single;
    const auto spell = [&](double days) {
        all.push_back(seen(days, 1e9));
        single.learn({&all.back(), 1});
    };
    for (int i = 0; i < 16; ++i)
        spell(11.5 + i % 4);
    CHECK_FALSE(single.change());
    OwnClock kept = single;
    int after = 0;
    while (!single.change() && after < 10)
        spell(5.5 + after++ % 2);
    REQUIRE(single.change());
    CHECK(single.change()->since == 16);
    CHECK(single.change()->found == all.size() - 1);
    CHECK(single.since()->quantile(0.5) == Approx(Predictive(std::span(all).subspan(16)).quantile(0.5)));
    CHECK(single.since()->quantile(0.5) < 8);
    CHECK(single.learned().quantile(0.5) == Approx(Predictive(all).quantile(0.5))); // forecasts go by all of them
    CHECK(single.shift().eValue() == 1);
    // One by one and together they give the same.
    OwnClock together;
    together.learn(all);
    CHECK(together.change()->since == single.change()->since);
    CHECK(together.inForce().quantile(0.5) == single.inForce().quantile(0.5));
}

TEST_CASE("one spell that is far longer or shorter than all others is no change")
{
    for (const double odd : {70.0, 1.5}) {
        OwnClock clock;
        for (int i = 0; i < 20; ++i) {
            const Evidence e = seen(i == 12 ? odd : 12.5 + i % 2, 1e9);
            clock.learn({&e, 1});
        }
        CAPTURE(odd);
        CHECK_FALSE(clock.change());
    }
}
