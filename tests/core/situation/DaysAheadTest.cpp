#include "situation/DaysAhead.h"

#include "core/Build.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace firstdew::situation;
using build::day;
using build::Facts;

namespace {

const LocalDate kStart = day("2026-01-05");

std::vector<DayAhead> aheadOf(const Facts& d, LocalDate today)
{
    const auto diary = d.on(today);
    return daysAhead(diary, assess(diary).sites.front());
}

int sessionsIn(const std::vector<DayAhead>& days)
{
    return static_cast<int>(std::ranges::count_if(days, [](const DayAhead& a) { return a.session; }));
}

} // namespace

TEST_CASE("The chance of a day rises to the planned session and starts again after it")
{
    Facts d;
    d.adult().screened(kStart).session(Site::Hands, kStart);
    const auto diary = d.on(kStart + 1);
    const auto site = assess(diary).sites.front();
    const auto days = daysAhead(diary, site);
    REQUIRE(days.size() == 14);
    REQUIRE(site.nextSession);
    const auto planned = static_cast<std::size_t>(*site.nextSession - diary.today);
    REQUIRE(planned > 1);
    REQUIRE(planned + 1 < days.size());
    CHECK(days[0].begun.value() == Approx(1 - site.forecast.today.dry));
    for (std::size_t i = 0; i < days.size(); ++i) {
        INFO(i);
        CHECK(days[i].session == (i == planned));
        CHECK(days[i].after == (i > planned));
        REQUIRE(days[i].begun);
        if (i > 0 && i != planned + 1)
            CHECK(*days[i].begun >= *days[i - 1].begun);
    }
    CHECK(*days[planned + 1].begun < *days[planned].begun);
}

TEST_CASE("A top-up that is overdue is drawn today; every session of a course on its day")
{
    Facts d;
    d.adult().screened(kStart).session(Site::Hands, kStart);
    const auto late = aheadOf(d, kStart + 20);
    CHECK(late.front().session);
    CHECK(sessionsIn(late) == 1);

    Facts c;
    c.adult().screened(kStart).add(Course{}, kStart - 1);
    Course course;
    course.start = kStart;
    c.add(course, kStart - 1);
    const auto ahead = aheadOf(c, kStart);
    CHECK(sessionsIn(ahead) == 5); // days 1, 2, 4, 7 and 10 of seven in four weeks
    CHECK(std::ranges::none_of(ahead, [](const DayAhead& a) { return a.begun.has_value(); }));
}

TEST_CASE("Where no session may be, none is drawn")
{
    Facts d;
    d.adult().screened(kStart).session(Site::Hands, kStart);
    d.add(SideEffect{DiarySite::Hands, {SkinFinding::Blister}, ""}, kStart + 1);
    CHECK(sessionsIn(aheadOf(d, kStart + 20)) == 0);
}

TEST_CASE("Sessions of a course that are done are not drawn again, and beyond the forecast no chance is made up")
{
    Facts c;
    Course course;
    course.start = kStart;
    c.adult().screened(kStart).add(course, kStart - 1).session(Site::Hands, kStart).session(Site::Hands, kStart + 1);
    CHECK(sessionsIn(aheadOf(c, kStart + 1)) == 4); // days 4, 7, 10 and 15
    // After the course is reviewed its plan is history.
    c.add(ReviewDone{Site::Hands, true}, kStart + 1);
    CHECK(sessionsIn(aheadOf(c, kStart + 1)) <= 1);

    Facts d;
    d.adult().screened(kStart).session(Site::Hands, kStart);
    d.add(SideEffect{DiarySite::Hands, {SkinFinding::Blister}, ""}, kStart + 1);
    const auto diary = d.on(kStart + 1);
    const auto days = daysAhead(diary, assess(diary).sites.front(), 60);
    REQUIRE(days.size() == 60);
    CHECK(days.front().begun.has_value());
    CHECK_FALSE(days.back().begun.has_value());
}
