#include "situation/Next.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

using namespace firstdew::situation;
using build::day;
using build::Facts;

namespace {

const LocalDate kToday = day("2026-03-20");

/// Somebody in the middle of a first course of hands and feet, both due today.
Facts course()
{
    Facts d;
    d.adult()
        .screened(kToday - 5)
        .add(Machine{"Invented", true, true, PolaritySwap::Leads, false, PowerSource::Mains, {}}, kToday - 5);
    for (const Site site : {Site::Hands, Site::Feet}) {
        d.add(SiteUse{site, true}, kToday - 5);
        d.add(Course{site, CourseTemplate::Daily, {}, kToday - 1, {}}, kToday - 5);
        d.session(site, kToday - 1);
    }
    return d;
}

std::optional<Site> after(const Facts& d, Site done)
{
    const auto diary = d.on(kToday);
    return sessionAfter(diary, assess(diary), done);
}

} // namespace

TEST_CASE("after the hands the feet are offered where they are due, once, and only after a completed session")
{
    Facts d = course();
    CHECK_FALSE(after(d, Site::Hands).has_value());
    d.session(Site::Hands, kToday);
    CHECK(after(d, Site::Hands) == Site::Feet);
    d.session(Site::Feet, kToday);
    CHECK_FALSE(after(d, Site::Feet).has_value());
}

TEST_CASE("a paused site does not follow")
{
    Facts d = course();
    d.session(Site::Hands, kToday).add(Pause{Site::Feet, true}, kToday);
    CHECK_FALSE(after(d, Site::Hands).has_value());
}

namespace {

/// Hands and feet kept dry, treated on one day two days ago; hands done today.
Facts habit()
{
    Facts d;
    d.adult().screened(kToday);
    d.add(Machine{"Invented", true, true, PolaritySwap::Leads, false, PowerSource::Mains, {}}, kToday - 9);
    for (const int ago : {4, 2})
        d.session(Site::Hands, kToday - ago).session(Site::Feet, kToday - ago);
    return d.session(Site::Hands, kToday);
}

} // namespace

TEST_CASE("where nothing is due the site that usually follows is offered, unless it is paused or barred")
{
    CHECK(after(habit(), Site::Hands) == Site::Feet);
    Facts alone = habit();
    alone.session(Site::Feet, kToday - 1); // treated by itself since
    CHECK_FALSE(after(alone, Site::Hands).has_value());
    CHECK_FALSE(after(habit().add(Pause{Site::Feet, true}, kToday), Site::Hands).has_value());
    CHECK_FALSE(
        after(habit().add(SideEffect{DiarySite::Feet, {SkinFinding::Burn}, ""}, kToday), Site::Hands).has_value());
    CHECK_FALSE(after(habit().add(SiteUse{Site::Feet, false}, kToday), Site::Hands).has_value());
}

TEST_CASE("a site whose call was put off to the evening, or that shares the skin just treated, does not follow")
{
    auto calls = Facts().adult().screened(kToday).session(Site::Feet, kToday - 40);
    calls.session(Site::Hands, kToday);
    CHECK(after(calls, Site::Hands) == Site::Feet);
    calls.add(CallAnswered{DiarySite::Feet, CallAnswer::ThisEvening, ""}, kToday);
    CHECK_FALSE(after(calls, Site::Hands).has_value());
    Session early;
    early.site = Site::Hands;
    early.completed = false;
    CHECK_FALSE(after(course().add(early, kToday), Site::Hands).has_value()); // not completed
}

TEST_CASE("a call for hand + foot does not follow the hands, whose skin it would treat again")
{
    Facts d;
    d.adult()
        .screened(kToday)
        .add(SiteUse{Site::Hands, true}, kToday - 50)
        .add(SiteUse{Site::HandFoot, true}, kToday - 50);
    d.session(Site::HandFoot, kToday - 40).session(Site::Hands, kToday);
    const auto sites = assess(d.on(kToday)).sites;
    REQUIRE(sites.size() == 2);
    REQUIRE(sites[1].treatedAs == Site::HandFoot);
    REQUIRE(callsForSession(sites[1].advice));
    CHECK_FALSE(after(d, Site::Hands).has_value());
}
