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
