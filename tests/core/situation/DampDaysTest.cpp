#include "situation/DampDays.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

using namespace firstdew::situation;
using build::day;
using build::Facts;

namespace {

const LocalDate kMonday = day("2026-03-02");

firstdew::diary::SiteDiary handsOf(const Facts& d) { return d.on(kMonday + 100).at(DiarySite::Hands); }

} // namespace

TEST_CASE("Damp days count from clammy on, wet ones beside them, on the days from the first to the last")
{
    Facts d;
    d.checkIn(DiarySite::Hands, kMonday - 1, Level::Dripping)
        .checkIn(DiarySite::Hands, kMonday, Level::Clammy)
        .checkIn(DiarySite::Hands, kMonday + 1, Level::Dry)
        .checkIn(DiarySite::Hands, kMonday + 2, Level::Wet)
        .checkIn(DiarySite::Hands, kMonday + 4, Level::Dripping)
        .checkIn(DiarySite::Hands, kMonday + 5, Level::Dripping)
        .checkIn(DiarySite::Feet, kMonday + 3, Level::Wet);
    const DampDays days = dampDaysIn(handsOf(d), kMonday, kMonday + 4);
    CHECK(days == DampDays{4, 3, 2});
    CHECK(days.aWeek(4).value() == Approx(7 * 3 / 4.0));
    CHECK(days.wetAWeek(4).value() == Approx(7 * 2 / 4.0));
    CHECK_FALSE(days.aWeek(5));
    CHECK_FALSE(DampDays{}.aWeek(0));
}

TEST_CASE("Weeks begin on Monday and hold the days asked for alone")
{
    Facts d;
    for (int i = 0; i < 21; ++i)
        d.checkIn(DiarySite::Hands, kMonday + i, i % 7 == 0 ? Level::Wet : Level::Dry);
    const auto weeks = dampWeeks(handsOf(d), kMonday + 2, kMonday + 15);
    REQUIRE(weeks.size() == 3);
    CHECK(weeks[0] == DampWeek{kMonday, {5, 0, 0}}); // from Wednesday: the wet Monday is not asked for
    CHECK(weeks[1] == DampWeek{kMonday + 7, {7, 1, 1}});
    CHECK(weeks[2] == DampWeek{kMonday + 14, {2, 1, 1}});
    CHECK_FALSE(weeks[2].days.aWeek(kLeastInWeek));
    CHECK(dampWeeks(handsOf(d), kMonday + 1, kMonday).empty() == false); // the week of a day is there
}

TEST_CASE("Weeks after the last report are there and say nothing")
{
    Facts d;
    d.checkIn(DiarySite::Hands, kMonday, Level::Wet);
    const auto weeks = dampWeeks(handsOf(d), kMonday, kMonday + 13);
    REQUIRE(weeks.size() == 2);
    CHECK(weeks[0].days == DampDays{1, 1, 1});
    CHECK(weeks[1].days == DampDays{});
    CHECK(dampDaysIn(handsOf(d), kMonday + 1, kMonday + 9) == DampDays{});
}
