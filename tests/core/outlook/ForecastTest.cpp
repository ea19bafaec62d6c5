#include "outlook/Forecast.h"

#include "core/Build.h"
#include "outlook/Filter.h"
#include "outlook/Intervals.h"
#include "outlook/Predictive.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

using namespace firstdew::outlook;
using build::day;
using build::Facts;

namespace {

const LocalDate kStart = day("2026-01-05");

/// Top-ups every `cycle` days, dry until `dry` days after each, clammy the day after, then treated.
Facts regular(int rounds, int dry, int cycle)
{
    Facts d;
    for (int r = 0; r < rounds; ++r) {
        const LocalDate session = kStart + r * cycle;
        d.session(Site::Hands, session);
        for (int i = 1; i < cycle; ++i)
            d.checkIn(DiarySite::Hands, session + i, i <= dry ? Level::Dry : Level::Clammy);
    }
    return d;
}

} // namespace

TEST_CASE("the prior alone has its median at ten days and 90 % between 3 and 35")
{
    // our own choice, from the range of common practice
    const Predictive prior(std::span<const Evidence>{});
    CHECK(prior.quantile(0.5) == Approx(10).epsilon(0.05));
    CHECK(prior.survivor(3) - prior.survivor(35) == Approx(0.9).margin(0.01));
}

TEST_CASE("reports make spells interval-, right- or left-censored")
{
    Facts d;
    d.session(Site::Hands, kStart).session(Site::Hands, kStart + 1); // neighbouring days: one treated spell
    d.checkIn(DiarySite::Hands, kStart + 6, Level::Dry).checkIn(DiarySite::Hands, kStart + 9, Level::Clammy);
    d.session(Site::HandFoot, kStart + 10);
    d.checkIn(DiarySite::Hands, kStart + 14, Level::Dry);
    d.session(Site::Hands, kStart + 20);                     // while dry
    d.checkIn(DiarySite::Hands, kStart + 30, Level::Clammy); // the first check-in for ten days
    d.session(Site::Hands, kStart + 31);
    d.checkIn(DiarySite::Hands, kStart + 32, Level::Clammy); // never took hold
    d.session(Site::Hands, kStart + 40);
    const auto spells = spellsFor(d.on(kStart + 41), DiarySite::Hands);
    REQUIRE(spells.size() == 5);
    CHECK(spells[0].lastSession == kStart + 1);
    CHECK(spells[0].left == 5);
    CHECK(spells[0].right == 8);
    CHECK(spells[1].left == 4);
    CHECK_FALSE(spells[1].right);
    CHECK(spells[2].left == 0);
    CHECK(spells[2].right == 10);
    CHECK_FALSE(spells[3].gotDry);
    CHECK(spells[4].left == 0);
    const auto feet = spellsFor(d.on(kStart + 41), DiarySite::Feet);
    REQUIRE(feet.size() == 1);
    CHECK(feet[0].lastSession == kStart + 10);
}

TEST_CASE("clammy on a stirred day and dry on the next day is not a return")
{
    Facts d;
    d.session(Site::Hands, kStart);
    d.checkIn(DiarySite::Hands, kStart + 5, Level::Clammy, {Circumstance::Heat})
        .checkIn(DiarySite::Hands, kStart + 6, Level::Dry);
    const auto spells = spellsFor(d.on(kStart + 7), DiarySite::Hands);
    REQUIRE(spells.size() == 1);
    CHECK_FALSE(spells[0].right);
    CHECK(spells[0].left == 6);
}

TEST_CASE("the forecast of a regular person approaches their own rhythm")
{
    const Facts d = regular(8, 13, 15);
    const auto f = forecastFor(d.on(kStart + 7 * 15 + 3), DiarySite::Hands);
    CHECK(f.usualFrom > 7.5);
    CHECK(f.usualTo < 20);
    const int due = *f.due - *f.lastSession;
    CHECK(due >= 9);
    CHECK(due <= 13);
    CHECK(f.today.dry > 0.95);
    CHECK_FALSE(f.firstDew);
}

TEST_CASE("a dry check-in after the session of its day does not make the spell before it longer")
{
    // Eight spells, clammy on day 10, treated on day 11. Sessions at 18:00 and check-ins at 20:00, as reminders put
    // them.
    Facts before;
    Facts after;
    for (int r = 0; r < 9; ++r) {
        const LocalDate session = kStart + r * 11;
        for (Facts* d : {&before, &after})
            d->session(Site::Hands, session, Waveform::Direct, 18 * 60);
        after.checkIn(DiarySite::Hands, session, Level::Dry);
        for (int i = 1; i <= 10; ++i)
            for (Facts* d : {&before, &after})
                d->checkIn(DiarySite::Hands, session + i, i < 10 ? Level::Dry : Level::Clammy);
    }
    for (const int day : {0, 5, 10, 20}) {
        const auto one = forecastFor(before.on(kStart + 88 + day), DiarySite::Hands);
        const auto other = forecastFor(after.on(kStart + 88 + day), DiarySite::Hands);
        // What it says of the new spell, whose skin was damp, is little.
        CHECK(one.usualFrom == Approx(other.usualFrom).epsilon(1e-6));
        CHECK(one.usualTo == Approx(other.usualTo).epsilon(1e-6));
        CHECK(one.due == other.due);
        CHECK(one.today.dry <= other.today.dry + 1e-6);
        REQUIRE(one.spells.size() == other.spells.size());
        for (std::size_t i = 0; i < one.spells.size(); ++i) {
            auto same = other.spells[i];
            CHECK(same.evening.has_value() == (i > 0));
            same.evening.reset();
            CHECK(one.spells[i] == same);
        }
        CHECK(one.usualTo < 13);
    }
}

TEST_CASE("early top-ups while dry do not shorten the forecast")
{
    Facts early;
    for (int r = 0; r < 8; ++r) {
        early.session(Site::Hands, kStart + r * 9);
        for (int i = 1; i < 9; ++i)
            early.checkIn(DiarySite::Hands, kStart + r * 9 + i, Level::Dry);
    }
    const auto f = forecastFor(early.on(kStart + 7 * 9 + 1), DiarySite::Hands);
    const auto fresh = forecastFor(Facts().session(Site::Hands, kStart).on(kStart + 1), DiarySite::Hands);
    CHECK(f.usualTo > 9);
    CHECK(f.usualMedian > fresh.usualMedian);
    CHECK(*f.dueIfSilent - *f.lastSession > *fresh.dueIfSilent - *fresh.lastSession);
}

TEST_CASE("the day named is the day of the call, whether or not that day's dry check-in comes first")
{
    for (const int dry : {4, 9, 13, 25}) {
        Facts d = regular(8, dry, dry + 2);
        const LocalDate last = kStart + 8 * (dry + 2);
        d.checkIn(DiarySite::Hands, last, Level::Clammy).session(Site::Hands, last);
        const LocalDate named = *forecastFor(d.on(last), DiarySite::Hands).due;
        CAPTURE(dry, named - last);
        CHECK(named - last >= 2);
        CHECK(named - last <= dry + 1);
        for (LocalDate day = last; day <= named; day = day + 1) {
            if (day > last) {
                CHECK(forecastFor(d.on(day), DiarySite::Hands).due == named);
                d.checkIn(DiarySite::Hands, day, Level::Dry);
            }
            CHECK(forecastFor(d.on(day), DiarySite::Hands).due == named);
        }
    }
}

TEST_CASE("without check-ins the call comes no later than named")
{
    Facts d = regular(8, 13, 15);
    const LocalDate last = kStart + 8 * 15;
    d.checkIn(DiarySite::Hands, last, Level::Clammy).session(Site::Hands, last);
    LocalDate named = *forecastFor(d.on(last), DiarySite::Hands).due;
    for (LocalDate day = last + 1; day <= last + 20; day = day + 1) {
        const auto f = forecastFor(d.on(day), DiarySite::Hands);
        CHECK(*f.due <= named);
        CHECK(*f.dueIfSilent <= *f.due);
        named = *f.due;
    }
    CHECK(named <= last + 13);
}

TEST_CASE("nobody new is called while each check-in says dry, but silence calls")
{
    Facts d;
    d.session(Site::Hands, kStart).checkIn(DiarySite::Hands, kStart + 1, Level::Dry);
    const auto f = forecastFor(d.on(kStart + 1), DiarySite::Hands);
    CHECK_FALSE(f.due);
    REQUIRE(f.dueIfSilent);
    CHECK(*f.dueIfSilent <= kStart + 10);
    const auto later = forecastFor(d.on(*f.dueIfSilent), DiarySite::Hands);
    CHECK(later.due == f.dueIfSilent);
    CHECK(forecastFor(d.on(*f.dueIfSilent - 1), DiarySite::Hands).dueIfSilent == f.dueIfSilent);
}

TEST_CASE("what a return costs follows from the risk")
{
    CHECK(returnCostOf(0.2) == Approx(2)); // our own choice
    CHECK(returnCostOf(1.0 / 3) == Approx(1));
    CHECK(returnCostOf(0.5) == Approx(0.5));
    CHECK(returnCostOf(std::nan("")) == returnCostOf(0.2));
    CHECK(returnCostOf(-1) == returnCostOf(0.01));
}

TEST_CASE("for any diary the forecast is finite, ordered and sums to one, and a later dry day never brings the due day "
          "forward")
{
    std::mt19937 random(7);
    const auto below = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
    for (int round = 0; round < 60; ++round) {
        Facts d;
        LocalDate at = kStart;
        const int days = 1 + below(400);
        for (int i = 0; i < days; ++i, at = at + 1 + below(3)) {
            if (below(9) == 0)
                d.session(allOf<Site>()[static_cast<std::size_t>(below(4))], at);
            if (below(4) != 0)
                d.checkIn(DiarySite::Hands, at, static_cast<Level>(below(6) == 0 ? 1 + below(3) : 0),
                          below(5) == 0 ? SetOf<Circumstance>{Circumstance::Heat} : SetOf<Circumstance>{});
        }
        for (const double risk : {0.05, 0.2, 0.7, std::nan("")}) {
            const auto f = forecastFor(d.on(at), DiarySite::Hands, {risk, {}, {}});
            CHECK(std::isfinite(f.usualFrom));
            CHECK(f.usualFrom <= f.usualTo);
            for (const auto& c : f.days) {
                CHECK(c.state.dry + c.state.clammy + c.state.sweating == Approx(1));
                CHECK(c.begun >= 0);
                CHECK(c.begun <= 1);
            }
            if (f.quantiles)
                for (std::size_t i = 1; i < f.quantiles->size(); ++i)
                    CHECK((*f.quantiles)[i - 1] <= (*f.quantiles)[i]);
        }
        const auto before = forecastFor(d.on(at + 1), DiarySite::Hands);
        if (before.due && !before.spells.back().right) {
            d.checkIn(DiarySite::Hands, at + 1, Level::Dry);
            const auto after = forecastFor(d.on(at + 1), DiarySite::Hands);
            CHECK((!after.due || *after.due >= *before.due));
        }
    }
}
