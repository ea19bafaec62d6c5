#include "protocol/Response.h"

#include "core/Build.h"
#include "protocol/Kit.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace firstdew::protocol;
using build::day;

TEST_CASE("response by HDSS: two steps strong, one good, else none")
{
    // Gülmez & Solak, J Clin Med 2026;15:640
    CHECK(responseBy(4, 1).value() == Response::Strong);
    CHECK(responseBy(4, 2).value() == Response::Strong);
    CHECK(responseBy(3, 2).value() == Response::Good);
    CHECK(responseBy(3, 3).value() == Response::None);
    CHECK(responseBy(2, 3).value() == Response::None);
    CHECK(responseBy(5, 3).error().code == "hdss-out-of-range");
    CHECK(responseBy(3, 0).error().code == "hdss-out-of-range");
}

TEST_CASE("a set of cells lasts about three sessions, counted per machine")
{
    // common practice, no source
    Machine m;
    m.name = "A";
    m.power = PowerSource::Cells;
    build::Facts d;
    CHECK_FALSE(cellSessionsLeft(d.on(firstdew::diary::kEndOfTime), m));
    d.add(CellsChanged{"A"}, day("2026-03-01"));
    CHECK(cellSessionsLeft(d.on(firstdew::diary::kEndOfTime), m) == 3);
    d.session(Site::Hands, day("2026-03-02")).session(Site::Feet, day("2026-03-02"));
    Session other;
    other.machine = "B";
    d.add(other, day("2026-03-03"));
    CHECK(cellSessionsLeft(d.on(firstdew::diary::kEndOfTime), m) == 1);
    d.session(Site::Hands, day("2026-03-04")).session(Site::Hands, day("2026-03-05"));
    CHECK(cellSessionsLeft(d.on(firstdew::diary::kEndOfTime), m) == 0);
    d.add(CellsChanged{"A"}, day("2026-03-06"));
    CHECK(cellSessionsLeft(d.on(firstdew::diary::kEndOfTime), m) == 3);
    m.power = PowerSource::Mains;
    CHECK_FALSE(cellSessionsLeft(d.on(firstdew::diary::kEndOfTime), m));
}

// Our own choice of list; batteries only where there are some.
TEST_CASE("the checks of how it is done fit the site and the machine")
{
    Machine cells;
    Machine mains;
    mains.power = PowerSource::Mains;
    const auto has = [](const std::vector<TechniqueCheck>& all, TechniqueCheck one) {
        return std::ranges::find(all, one) != all.end();
    };
    CHECK(has(techniqueChecks(Site::Hands, cells), TechniqueCheck::FreshCells));
    CHECK_FALSE(has(techniqueChecks(Site::Hands, mains), TechniqueCheck::FreshCells));
    CHECK(has(techniqueChecks(Site::Feet, mains), TechniqueCheck::UnderWater));
    CHECK_FALSE(has(techniqueChecks(Site::Armpits, mains), TechniqueCheck::UnderWater));
    CHECK(techniqueChecks(Site::Hands, cells).size() == allOf<TechniqueCheck>().size());
}

// Ten to twelve sessions: Hölzle & Alberti, Dermatologica 1987;175:126-35.
TEST_CASE("a course that goes on has the sessions that are left to twelve, every other day, and at least one")
{
    Course c;
    c.site = Site::Feet;
    c.free = {Weekday::Mon};
    const LocalDate today = build::day("2026-03-02");
    const Course on = furtherCourse(c, 7, today);
    CHECK(on.site == Site::Feet);
    CHECK(on.free == c.free);
    CHECK(on.start == today);
    CHECK(on.days == std::vector{1, 3, 5, 7, 9});
    CHECK(furtherCourse(c, 30, today).days.size() == 1);
}

TEST_CASE("with cells and trays everything is checked, each once")
{
    Machine cells;
    cells.power = PowerSource::Cells;
    const auto checks = techniqueChecks(Site::Hands, cells);
    for (const auto check : allOf<TechniqueCheck>())
        CHECK(std::ranges::count(checks, check) == 1);
}
