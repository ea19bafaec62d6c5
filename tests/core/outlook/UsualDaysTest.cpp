#include "outlook/UsualDays.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

using namespace firstdew::outlook;
using build::day;
using build::Facts;

TEST_CASE("Usual days are whole, at least one, and in their order")
{
    Forecast f;
    f.usualFrom = 3.5;
    f.usualMedian = 9.49;
    f.usualTo = 34.6;
    CHECK(usualDays(f) == UsualDays{4, 9, 35});
    f.usualFrom = 0.2;
    f.usualMedian = 0.3;
    f.usualTo = 0.4;
    CHECK(usualDays(f) == UsualDays{1, 1, 1});
}

TEST_CASE("A usual length is told from the second spell that was seen to its end")
{
    Facts d;
    d.adult().screened(day("2026-01-01"));
    const auto known = [&](LocalDate today) { return usualIsKnown(forecastFor(d.on(today), DiarySite::Hands)); };
    const LocalDate first = day("2026-01-05");
    for (int i = 0; i < 3; ++i) {
        d.session(Site::Hands, first + 12 * i);
        for (int j = 1; j < 12; ++j)
            d.checkIn(DiarySite::Hands, first + 12 * i + j, j > 8 ? Level::Clammy : Level::Dry);
    }
    CHECK_FALSE(known(first + 6));
    CHECK_FALSE(known(first + 14)); // one ended, one runs
    CHECK(known(first + 26));
}

TEST_CASE("The curve and the forecast tell the same usual days")
{
    Facts d;
    d.adult().screened(day("2026-01-01"));
    for (int i = 0; i < 5; ++i) {
        d.session(Site::Hands, day("2026-01-05") + 12 * i);
        for (int j = 1; j < 12; ++j)
            d.checkIn(DiarySite::Hands, day("2026-01-05") + 12 * i + j, j > 8 + i % 3 ? Level::Clammy : Level::Dry);
    }
    const auto diary = d.on(day("2026-03-05"));
    const auto spells = drySpellsOf(diary, DiarySite::Hands);
    REQUIRE(spells);
    CHECK(usualDays(*spells) == usualDays(forecastFor(diary, DiarySite::Hands)));
    CHECK(1 - spells->now.dry == Approx(forecastFor(diary, DiarySite::Hands).days.front().begun));
}
