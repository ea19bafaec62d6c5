#include "outlook/Fitting.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <functional>
#include <random>

using namespace firstdew::outlook;

namespace {

/// A dry spell seen by a check-in a day, or cut short by a top-up after `stop` days.
Evidence seen(double days, double stop = 1e9)
{
    const double last = std::floor(std::min(days, stop));
    return days < stop ? evidenceOf(Interval{last, last + 1}) : evidenceOf(Interval{stop, std::nullopt});
}

using Draw = std::function<double(const OwnClock&, std::mt19937&)>;

struct Lived {
    double last = 1;
    double greatest = 1;
    int found = 0; ///< after so many spells; 0: not found
};

Lived lived(unsigned seed, int spells, const Draw& draw, double stopAt = 2)
{
    std::mt19937 random(seed);
    OwnClock clock;
    Lived out;
    for (int i = 1; i <= spells; ++i) {
        const double stop = stopAt < 1 ? std::max(2.0, std::floor(clock.inForce().quantile(stopAt))) : 1e9;
        const Evidence e = seen(draw(clock, random), stop);
        clock.learn({&e, 1});
        out.last = clock.fitting().eValue();
        out.greatest = std::max(out.greatest, out.last);
        if (out.found == 0 && clock.fitting().misfit())
            out.found = i;
    }
    return out;
}

double uniform(std::mt19937& random) { return std::uniform_real_distribution<double>(1e-6, 1 - 1e-6)(random); }

/// Somebody whose spells come as the forecast says; what is learned of each counts for the next.
double asSaid(const OwnClock& clock, std::mt19937& random) { return clock.learned().quantile(uniform(random)); }

/// Somebody whose spells scatter far more than anybody's whom the forecast knows: shape 1, median 10.
double scattered(const OwnClock&, std::mt19937& random) { return 10 * -std::log(uniform(random)) / std::log(2); }

/// Somebody who stays dry for four days or for twenty.
double twoKinds(const OwnClock&, std::mt19937& random)
{
    return (uniform(random) < 0.5 ? 4 : 20) * std::pow(-std::log(uniform(random)) / std::log(2), 1.0 / 5);
}

} // namespace

TEST_CASE("the e-value of forecasts that fit is 1 on average, and rarely reaches the threshold")
{
    // Ville's inequality: a test martingale reaches 20 with a chance of at most 1 in 20.
    const bool toppedUp = GENERATE(false, true);
    CAPTURE(toppedUp);
    constexpr int kPeople = 800;
    constexpr int kSpells = 25;
    double sum = 0;
    double squares = 0;
    int found = 0;
    for (unsigned person = 0; person < kPeople; ++person) {
        const Lived l = lived(person, kSpells, asSaid, toppedUp ? 0.5 : 2);
        sum += l.last;
        squares += l.last * l.last;
        found += l.greatest >= kForecastsMisfit;
    }
    const double mean = sum / kPeople;
    const double error = std::sqrt((squares / kPeople - mean * mean) / kPeople);
    CAPTURE(mean, error, found);
    CHECK(mean <= 1 + 3 * error);
    CHECK(mean >= 0.4);
    CHECK(found <= 0.05 * kPeople + 3 * std::sqrt(0.05 * 0.95 * kPeople));
}

TEST_CASE("somebody whom the forecasts do not fit is found")
{
    for (const auto& [draw, least] : {std::pair<Draw, int>(scattered, 95), std::pair<Draw, int>(twoKinds, 25)}) {
        int found = 0;
        int spells = 0;
        for (unsigned person = 0; person < 100; ++person) {
            const Lived l = lived(1000 + person, 60, draw);
            found += l.found > 0;
            spells += l.found;
        }
        CAPTURE(found, spells / std::max(1, found));
        CHECK(found >= least);
    }
}

TEST_CASE("a forecast that did not fit is widened, and then covers as much as it says")
{
    int widened = 0;
    int inside = 0;
    int insideBefore = 0;
    for (unsigned person = 0; person < 60; ++person) {
        std::mt19937 random(person);
        OwnClock clock;
        Predictive narrow{std::span<const Evidence>{}};
        for (int i = 0; i < 80; ++i) {
            const double days = scattered(clock, random);
            if (clock.fitting().misfit()) {
                const double u = 1 - clock.inForce().survivor(days);
                const double before = 1 - narrow.survivor(days);
                ++widened;
                inside += std::abs(u - 0.5) <= 0.4;
                insideBefore += std::abs(before - 0.5) <= 0.4;
            }
            const Evidence e = seen(days);
            clock.learn({&e, 1});
            narrow.learn({&e, 1});
        }
    }
    REQUIRE(widened > 500);
    CAPTURE(widened, 100.0 * inside / widened, 100.0 * insideBefore / widened);
    CHECK(insideBefore < 0.75 * widened);
    CHECK(std::abs(1.0 * inside / widened - 0.8) <= 0.04);
}

TEST_CASE("a widened forecast leaves more room on both sides of what was said, and is a distribution")
{
    std::mt19937 random(7);
    OwnClock clock;
    Predictive narrow{std::span<const Evidence>{}};
    while (!clock.fitting().misfit()) {
        const Evidence e = seen(twoKinds(clock, random));
        clock.learn({&e, 1});
        narrow.learn({&e, 1});
    }
    const Predictive& wide = clock.inForce();
    CHECK(wide.survivor(0) == 1);
    double before = 1;
    for (double t = 0.25; t < 400; t += 0.25) {
        CHECK(wide.survivor(t) <= before);
        before = wide.survivor(t);
    }
    CHECK(wide.quantile(0.1) < narrow.quantile(0.1));
    CHECK(wide.quantile(0.9) > narrow.quantile(0.9));
}

TEST_CASE("somebody whom the forecasts fit again is told so")
{
    std::mt19937 random(11);
    OwnClock clock;
    int spells = 0;
    while (!clock.fitting().misfit()) {
        const Evidence e = seen(scattered(clock, random));
        clock.learn({&e, 1});
        REQUIRE(++spells < 200);
    }
    int more = 0;
    while (clock.fitting().misfit() && more < 120) {
        const Evidence e = seen(12 + 3 * (uniform(random) - 0.5));
        clock.learn({&e, 1});
        ++more;
    }
    CAPTURE(spells, more);
    CHECK_FALSE(clock.fitting().misfit());
    CHECK(clock.fitting().eValue() < 1);
}

TEST_CASE("spells learned one by one and together give the same forecast and the same e-value")
{
    std::mt19937 random(3);
    std::vector<Evidence> all;
    OwnClock single;
    for (int i = 0; i < 40; ++i) {
        all.push_back(seen(scattered(single, random), i % 3 == 0 ? 5 : 1e9));
        single.learn({&all.back(), 1});
    }
    OwnClock together;
    together.learn(all);
    CHECK(together.fitting().eValue() == single.fitting().eValue());
    for (const double t : {1.0, 4.5, 10.0, 30.0})
        CHECK(together.inForce().survivor(t) == single.inForce().survivor(t));
}

TEST_CASE("the chance of a day asked without the curve is that of the curve")
{
    std::vector<Evidence> spells{seen(9), seen(14), seen(30, 8), seen(11)};
    const Predictive p(spells);
    const std::vector<double> days{0, 1, 7, 20, 64, std::numeric_limits<double>::infinity()};
    const auto chances = p.survivorsOn(days);
    for (std::size_t i = 0; i + 1 < days.size(); ++i)
        CHECK(chances[i] == Approx(p.survivor(days[i])).epsilon(1e-9));
    CHECK(chances.back() == 0);
}
