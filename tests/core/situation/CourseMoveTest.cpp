#include "situation/Assess.h"

#include "core/Build.h"

#include <algorithm>
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

TEST_CASE("a session of the course that was not done on its day is named with that day until it is done or moved")
{
    auto d = onCourse().session(Site::Hands, day("2026-03-02")).session(Site::Hands, day("2026-03-03"));
    const auto on = [](const Facts& f, const char* today) { return assess(f.on(day(today))).sites.at(0); };
    const auto missed = [&](const Facts& f, const char* today) {
        const auto m = on(f, today).missed;
        return m ? std::to_string(m->number) + " " + m->planned.iso() : std::string("none");
    };
    CHECK(missed(d, "2026-03-05") == "none");
    CHECK(missed(d, "2026-03-06") == "3 2026-03-05");
    CHECK(missed(d, "2026-03-09") == "3 2026-03-05"); // the day it was planned for, not the days it moved to
    const auto site = on(d, "2026-03-06");
    const auto reason = std::ranges::find(site.reasons, ReasonKind::CourseSessionMissed, &Reason::kind);
    REQUIRE(reason != site.reasons.end());
    CHECK(reason->number == 3);
    CHECK(reason->days == 1); // it is now today
    CHECK(site.nextSession == day("2026-03-06"));
    CHECK(site.advice == Advice::DoCourseSession);

    CHECK(missed(Facts(d).session(Site::Hands, day("2026-03-06")), "2026-03-07") == "none");
    CHECK(missed(Facts(d).add(Away{day("2026-03-05"), day("2026-03-05")}, day("2026-03-06")), "2026-03-06") == "none");
    const auto before = Facts(d).add(CourseMove{Site::Hands, 3, day("2026-03-07")}, day("2026-03-04"));
    CHECK(missed(before, "2026-03-06") == "none");
    CHECK(missed(before, "2026-03-08") == "3 2026-03-07");
    const auto after = Facts(d).add(CourseMove{Site::Hands, 3, day("2026-03-09")}, day("2026-03-06"));
    CHECK(missed(after, "2026-03-06") == "none"); // somebody who moved it knows
    CHECK(missed(after, "2026-03-10") == "3 2026-03-09");
    // Nobody misses a session of a time before the course was set up.
    Course late;
    late.site = Site::Feet;
    late.start = day("2026-03-02");
    CHECK(missed(Facts().adult().add(late, day("2026-03-08")), "2026-03-08") == "none");
    CHECK(missed(Facts().adult().add(late, day("2026-03-08")), "2026-03-09") == "1 2026-03-08");
}

TEST_CASE("where sessions crowd both plans are offered, and the pace chosen is kept to")
{
    auto d = onCourse().session(Site::Hands, day("2026-03-02")).session(Site::Hands, day("2026-03-03"));
    const auto on = [](const Facts& f, const char* today) { return assess(f.on(day(today))).sites.at(0); };
    const auto asks = [](const SiteSituation& s) {
        return std::ranges::find(s.reasons, ReasonKind::CourseCrowded, &Reason::kind) != s.reasons.end();
    };
    CHECK_FALSE(asks(on(d, "2026-03-06")));
    const auto open = on(d, "2026-03-24");
    CHECK(asks(open));
    REQUIRE(open.crowding);
    CHECK(open.crowding->inARow == 5);
    CHECK(open.crowding->dayBetween.overrunDays == 3);

    auto between = Facts(d).add(CoursePace{Site::Hands, Pace::DayBetween}, day("2026-03-24"));
    CHECK_FALSE(asks(on(between, "2026-03-24")));
    CHECK(on(between, "2026-03-24").pace == Pace::DayBetween);
    CHECK(dateOf(between, 4, "2026-03-24") == "2026-03-26");
    CHECK(dateOf(between, 7, "2026-03-24") == "2026-04-01");
    between.session(Site::Hands, day("2026-03-24"));
    CHECK(on(between, "2026-03-25").advice == Advice::None);
    CHECK(on(between, "2026-03-26").advice == Advice::DoCourseSession);
    // A later word counts, and another course begins without one.
    CHECK(dateOf(Facts(between).add(CoursePace{Site::Hands, Pace::KeepWindow}, day("2026-03-25")), 4, "2026-03-25") ==
          "2026-03-25");
    Course again;
    again.site = Site::Hands;
    again.start = day("2026-04-13");
    CHECK(dateOf(Facts(between).add(again, day("2026-04-13")), 2, "2026-04-13") == "2026-04-14");

    auto kept = Facts(d).add(CoursePace{Site::Hands, Pace::KeepWindow}, day("2026-03-24"));
    CHECK_FALSE(asks(on(kept, "2026-03-24")));
    kept.session(Site::Hands, day("2026-03-24"));
    CHECK_FALSE(asks(on(kept, "2026-03-25")));
    CHECK(asks(on(kept, "2026-03-26"))); // one more was missed, on the 25th: four are left for four days
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
