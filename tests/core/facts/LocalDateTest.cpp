#include "facts/LocalDate.h"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

using namespace firstdew::facts;

TEST_CASE("dates read and print as ISO 8601")
{
    CHECK(LocalDate::parse("2026-03-02")->iso() == "2026-03-02");
    for (const char* bad : {"", "2026-3-2", "2026-02-29", "2026-13-01", "2026-00-10", "2026-01-32", "2026-01-01 ",
                            "02.03.2026", "2026-0a-01", "-026-01-01", "0000-01-01"})
        CHECK_FALSE(LocalDate::parse(bad));
    CHECK(LocalDate::parse("2024-02-29"));
}

TEST_CASE("weekdays agree with the calendar")
{
    // ISO 8601:2004 names 2000-01-01 a Saturday; 1970-01-01 was a Thursday (POSIX epoch).
    CHECK(LocalDate::parse("2000-01-01")->weekday() == Weekday::Sat);
    CHECK(LocalDate(0).weekday() == Weekday::Thu);
    CHECK(LocalDate::parse("2026-03-02")->weekday() == Weekday::Mon);
}

TEST_CASE("every day round-trips through its text")
{
    CHECK(rc::check("parse . iso = identity", [] {
        const LocalDate d(*rc::gen::inRange(-700000, 2900000));
        RC_ASSERT(LocalDate::parse(d.iso()) == d);
        RC_ASSERT((d + 1) - d == 1);
        RC_ASSERT((static_cast<int>((d + 1).weekday()) - static_cast<int>(d.weekday()) + 7) % 7 == 1);
    }));
}

TEST_CASE("age counts completed years")
{
    const auto date = [](const char* t) { return *LocalDate::parse(t); };
    CHECK(ageInYears(date("2008-03-02"), date("2026-03-01")) == 17);
    CHECK(ageInYears(date("2008-03-02"), date("2026-03-02")) == 18);
    CHECK(ageInYears(date("2008-02-29"), date("2026-02-28")) == 17);
    CHECK(ageInYears(date("2008-02-29"), date("2026-03-01")) == 18);
}

TEST_CASE("local times carry over midnight and read only HH:MM")
{
    const auto t = *LocalTime::parse("2026-03-01T23:50");
    CHECK(t.plusMinutes(20).iso() == "2026-03-02T00:10");
    CHECK(t.plusMinutes(-24 * 60).iso() == "2026-02-28T23:50");
    CHECK(LocalTime{t.date, {5}}.plusMinutes(-10).iso() == "2026-02-28T23:55");
    for (const char* bad : {"24:00", "7:30", "12:60", "aa:bb", "12-30", ""})
        CHECK_FALSE(MinuteOfDay::parse(bad));
}
