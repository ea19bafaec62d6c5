#include "protocol/Response.h"

#include "core/Build.h"
#include "protocol/Kit.h"

#include <catch2/catch.hpp>

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
