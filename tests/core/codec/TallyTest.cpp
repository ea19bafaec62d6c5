#include "codec/Tally.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

using namespace firstdew::codec;
using build::day;
using build::Facts;

TEST_CASE("A tally counts a corrected entry once and a withdrawn one not at all")
{
    Facts d;
    d.adult()
        .checkIn(DiarySite::Hands, day("2026-03-01"), Level::Dry)
        .checkIn(DiarySite::Hands, day("2026-03-02"), Level::Clammy)
        .checkIn(DiarySite::Feet, day("2026-03-09"), Level::Wet)
        .session(Site::Hands, day("2026-03-03"));
    auto facts = d.facts();
    CHECK(tallyOf(facts) == Tally{1, 3, 1, 5, day("2026-03-09")});

    Fact better = facts[2];
    better.id = "better";
    better.corrects = facts[2].id;
    Fact gone = facts[3];
    gone.id = "gone";
    gone.corrects = facts[3].id;
    gone.payload = Retraction{"withdrawn"};
    Fact other = facts[1];
    other.id = "other";
    other.person = "p2";
    facts.insert(facts.end(), {better, gone, other});
    CHECK(tallyOf(facts) == Tally{2, 3, 1, 8, day("2026-03-03")});
    CHECK(tallyOf({}) == Tally{});
}
