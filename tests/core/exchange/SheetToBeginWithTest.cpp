#include "exchange/Caseload.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

using namespace firstdew::exchange;
using build::day;
using build::Facts;

namespace {

const LocalDate kDay = day("2026-03-05");

} // namespace

TEST_CASE("a sheet for somebody who has not begun starts with the usual course, and the pads of the machine")
{
    Machine machine{"Invented", false, true, PolaritySwap::Leads, false, PowerSource::Cells, SquareCentimetres{30}};
    Facts facts;
    facts.add(SiteUse{Site::Armpits, true}, day("2026-03-01")).add(machine, day("2026-03-01"));
    const CareSheet sheet = sheetToBeginWith(facts.on(kDay));
    CHECK(sheet.sites == SetOf<Site>{Site::Armpits});
    CHECK(sheet.plan == CourseTemplate::Seven);
    CHECK(sheet.pad == SquareCentimetres{30});
}

TEST_CASE("a sheet for somebody who has begun starts no course anew, and goes on from the one in force")
{
    Facts facts;
    facts.add(SiteUse{Site::Hands, true}, day("2026-01-01"));
    facts.add(Course{Site::Hands, CourseTemplate::Seven, {}, day("2026-01-02"), {}}, day("2026-01-02"));
    facts.session(Site::Hands, day("2026-01-02"));
    CHECK_FALSE(sheetToBeginWith(facts.on(kDay)).plan);
    CareSheet given;
    given.who = "Dr Vance";
    given.given = day("2026-03-01");
    given.sites = {Site::Hands};
    given.directLimit = Milliamps{12};
    facts.add(given, day("2026-03-01"));
    CHECK(sheetToBeginWith(facts.on(kDay)) == given);
}
