#include "outlook/Dose.h"

#include "core/Build.h"
#include "outlook/Fitting.h"
#include "outlook/Forecast.h"
#include "outlook/Intervals.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

using namespace firstdew::outlook;
using build::day;
using build::Facts;

namespace {

const LocalDate kStart = day("2026-01-05");

Facts& charged(Facts& d, LocalDate date, double charge, bool completed = true, Site site = Site::Hands,
               int minute = 18 * 60)
{
    Session s;
    s.site = site;
    s.charge = MilliampMinutes{charge};
    s.completed = completed;
    return d.add(s, date, minute);
}

/// Sessions of 300 mA min, twelve days apart.
Facts usual(int sessions, Site site = Site::Hands)
{
    Facts d;
    for (int i = 0; i < sessions; ++i)
        charged(d, kStart + 12 * i, 300, true, site);
    return d;
}

std::optional<TreatedDay> treatedOn(const Facts& d, LocalDate date, DiarySite site = DiarySite::Hands)
{
    for (const TreatedDay& t : treatedDays(d.on(date), site))
        if (t.day == date)
            return t;
    return std::nullopt;
}

const LocalDate kNext = kStart + 60;

} // namespace

TEST_CASE("a session that was stopped counts from half of the usual charge on, and below it is nothing")
{
    for (const auto& [charge, counts] : {std::pair(270.0, true), {150.0, true}, {149.0, false}, {20.0, false}}) {
        auto d = usual(5);
        charged(d, kNext, charge, false);
        CAPTURE(charge);
        REQUIRE(treatedOn(d, kNext).has_value() == counts);
        if (counts)
            CHECK_FALSE(treatedOn(d, kNext)->completed);
    }
    // Without a charge, or without a usual one to compare it with, it is nothing.
    auto unmeasured = usual(5);
    Session stopped;
    stopped.completed = false;
    unmeasured.add(stopped, kNext);
    CHECK_FALSE(treatedOn(unmeasured, kNext));
    auto unknown = usual(2);
    charged(unknown, kNext, 290, false);
    CHECK_FALSE(treatedOn(unknown, kNext));
    // What was stopped twice on a day is one dose.
    auto twice = usual(5);
    charged(twice, kNext, 90, false);
    charged(twice, kNext, 90, false, Site::Hands, 19 * 60);
    CHECK(treatedOn(twice, kNext)->dose == Approx(0.6));
}

TEST_CASE("with hand and foot, half of the charge may be one side alone, and does not count")
{
    auto half = usual(5, Site::HandFoot);
    charged(half, kNext, 180, false, Site::HandFoot);
    CHECK_FALSE(treatedOn(half, kNext));
    CHECK_FALSE(treatedOn(half, kNext, DiarySite::Feet));
    auto most = usual(5, Site::HandFoot);
    charged(most, kNext, 240, false, Site::HandFoot);
    CHECK(treatedOn(most, kNext));
    CHECK(treatedOn(most, kNext, DiarySite::Feet));
    CHECK_FALSE(treatedOn(most, kNext, DiarySite::Armpits));
}

TEST_CASE("the dose is the charge beside the usual one of that kind and waveform")
{
    const auto doseOf = [](double charge) {
        auto d = usual(5);
        charged(d, kNext, charge);
        return treatedOn(d, kNext)->dose;
    };
    CHECK(doseOf(300) == 1);
    CHECK(doseOf(250) == 1); // within what is usual
    CHECK(doseOf(370) == 1);
    CHECK(doseOf(80) == Approx(80.0 / 300)); // 4 mA in place of 15
    CHECK(doseOf(10) == kLeastDose);
    CHECK(doseOf(420) == Approx(1.4));
    CHECK(doseOf(3000) == kMostDose);
    // another waveform has a usual charge of its own, and the first sessions have none
    auto pulsed = usual(5);
    Session other;
    other.waveform = Waveform::Pulsed;
    other.charge = MilliampMinutes{80};
    pulsed.add(other, kNext);
    CHECK(treatedOn(pulsed, kNext)->dose == 1);
    auto first = usual(2);
    charged(first, kNext, 80);
    CHECK(treatedOn(first, kNext)->dose == 1);
    // what comes later does not change what was usual then
    auto later = usual(5);
    charged(later, kNext, 80);
    for (int i = 1; i < 9; ++i)
        charged(later, kNext + 12 * i, 80);
    const auto all = treatedDays(later.on(kNext + 200), DiarySite::Hands);
    CHECK(all[5].dose == Approx(80.0 / 300));
    CHECK(all.back().dose == 1);
}

TEST_CASE("without measured charges the treated days are the days with a completed session")
{
    Facts d;
    Session stopped;
    stopped.completed = false;
    for (int i = 0; i < 40; ++i) {
        if (i % 5 == 0)
            d.session(i % 2 == 0 ? Site::Hands : Site::HandFoot, kStart + i);
        if (i % 7 == 3)
            d.add(stopped, kStart + i);
    }
    const auto diary = d.on(kStart + 50);
    for (const DiarySite site : allOf<DiarySite>()) {
        std::vector<LocalDate> days;
        for (const TreatedDay& t : treatedDays(diary, site)) {
            CHECK(t.dose == 1);
            days.push_back(t.day);
        }
        CHECK(days == diary.at(site).sessionDays);
    }
}

TEST_CASE("a weaker session is expected to hold less long than a usual one, and the usual days stay as they are")
{
    const auto after = [](double charge) {
        auto d = usual(5);
        charged(d, kNext, charge);
        return forecastFor(d.on(kNext), DiarySite::Hands);
    };
    const Forecast full = after(300);
    const Forecast weak = after(80);
    const Forecast strong = after(420);
    CHECK(weak.spells.back().dose == Approx(80.0 / 300));
    CHECK((*weak.quantiles)[2] < (*full.quantiles)[2]);
    CHECK(*weak.due < *full.due);
    CHECK((*strong.quantiles)[2] > (*full.quantiles)[2]);
    CHECK(weak.usualMedian == full.usualMedian);
    CHECK(weak.days[5].begun > full.days[5].begun);
}

TEST_CASE("a distribution that is stretched has all its times as much longer")
{
    const std::vector<Evidence> spells{evidenceOf(Interval{9, 10}), evidenceOf(Interval{12, 13})};
    const Predictive p(spells);
    for (const double by : {0.5, 0.8, 1.3}) {
        const Predictive s = p.stretched(by);
        CAPTURE(by);
        for (const double t : {0.5, 2.0, 5.5, 9.0, 14.0, 30.0})
            CHECK(s.survivor(t * by) == Approx(p.survivor(t)).epsilon(0.01).margin(1e-4));
        CHECK(s.quantile(0.5) == Approx(by * p.quantile(0.5)).epsilon(0.01));
    }
}

TEST_CASE("spells after unusual doses decide how much a dose matters")
{
    // Invented people whose spells follow dose^power, with doses between a quarter and one and a half.
    const auto learned = [](double power, unsigned seed) {
        std::mt19937 random(seed);
        const auto uniform = [&] { return std::uniform_real_distribution<double>(1e-6, 1 - 1e-6)(random); };
        OwnClock clock;
        for (int i = 0; i < 60; ++i) {
            const double dose = i % 2 == 0 ? 1 : 0.25 + 1.25 * uniform();
            const double days = 14 * std::pow(-std::log(uniform()) / std::log(2), 1.0 / 4) * std::pow(dose, power);
            const Evidence e = evidenceOf(Interval{std::floor(days), std::floor(days) + 1});
            clock.learn({&e, 1}, {&dose, 1});
        }
        return clock.power().power();
    };
    CHECK(OwnClock().power().power() == Approx(0.5));
    for (unsigned seed = 0; seed < 5; ++seed) {
        CAPTURE(seed);
        CHECK(learned(0, seed) < 0.2);
        CHECK(learned(1, seed) > 0.8);
        CHECK(std::abs(learned(0.5, seed) - 0.5) < 0.25);
    }
}

TEST_CASE("spells after doses learned together and one by one give the same forecast")
{
    std::vector<Evidence> all;
    std::vector<double> doses;
    OwnClock single;
    for (int i = 0; i < 30; ++i) {
        all.push_back(evidenceOf(Interval{6.0 + i % 7, 7.0 + i % 7}));
        doses.push_back(i % 4 == 1 ? 0.4 : 1);
        single.learn({&all.back(), 1}, {&doses.back(), 1});
    }
    OwnClock together;
    together.learn(all, doses);
    CHECK(together.power().power() == single.power().power());
    CHECK(together.fitting().eValue() == single.fitting().eValue());
    CHECK(together.inForce().quantile(0.5) == single.inForce().quantile(0.5));
    const double none = 1;
    CHECK_FALSE(together.afterUnusual(none));
    CHECK(together.afterUnusual(0.4)->quantile(0.5) < together.inForce().quantile(0.5));
}
