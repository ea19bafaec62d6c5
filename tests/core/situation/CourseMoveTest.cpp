#include "situation/Assess.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

using namespace firstdew::situation;
using build::day;
using build::Facts;

namespace {

Facts onCourse()
{
    Course c;
    c.site = Site::Hands;
    c.start = day("2026-03-02");
    return Facts()
        .adult()
        .screened(day("2026-03-02"))
        .add(SiteUse{Site::Hands, true}, day("2026-03-02"), 1)
        .add(c, day("2026-03-02"), 2);
}

std::string dateOf(const Facts& d, int number, const char* today)
{
    const auto s = assess(d.on(day(today)));
    return s.sites.at(0).course.value().sessions.at(static_cast<std::size_t>(number - 1)).date.iso();
}

} // namespace

TEST_CASE("a session moved by hand stays on its day")
{
    auto d = onCourse();
    d.add(CourseMove{Site::Hands, 3, day("2026-03-06")}, day("2026-03-02"));
    CHECK(dateOf(d, 3, "2026-03-02") == "2026-03-06");
    d.add(CourseMove{Site::Hands, 3, day("2026-03-05")}, day("2026-03-02"));
    CHECK(dateOf(d, 3, "2026-03-02") == "2026-03-05"); // the later word counts
}

TEST_CASE("a moved session that is done does not undo the other moves")
{
    auto d = onCourse();
    d.add(CourseMove{Site::Hands, 1, day("2026-03-03")}, day("2026-03-02"));
    d.add(CourseMove{Site::Hands, 4, day("2026-03-12")}, day("2026-03-02"));
    d.session(Site::Hands, day("2026-03-03"));
    CHECK(dateOf(d, 4, "2026-03-03") == "2026-03-12");
}

TEST_CASE("a move of an earlier course does not affect the next course")
{
    auto d = onCourse();
    d.add(CourseMove{Site::Hands, 2, day("2026-04-20")}, day("2026-03-02"));
    Course again;
    again.site = Site::Hands;
    again.start = day("2026-04-13");
    d.add(again, day("2026-04-13"));
    CHECK(dateOf(d, 2, "2026-04-13") == "2026-04-14");
}
