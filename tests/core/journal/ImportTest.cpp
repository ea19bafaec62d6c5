#include "journal/Import.h"

#include "RandomFacts.h"
#include "Scratch.h"
#include "journal/Copies.h"

#include <catch2/catch.hpp>

using namespace firstdew;
using namespace firstdew::journal;
using testing::Scratch;

TEST_CASE("an import adds what is new after keeping a copy, and a refused one changes nothing")
{
    const Scratch scratch;
    auto journal = Journal::open(scratch / "store.db");
    REQUIRE(journal.ok());
    const auto facts = testing::RandomFacts(31).many(30);
    std::vector<Incoming> incoming;
    for (std::size_t i = 0; i < 20; ++i)
        incoming.push_back({facts[i], "x.json", static_cast<int>(i)});
    const auto first = importInto(journal.value(), incoming);
    REQUIRE(first.ok());
    CHECK(first->added == 20);
    CHECK(first->kept.empty());

    CHECK(importInto(journal.value(), incoming)->known == 20);
    CHECK(copiesOf(scratch / "store.db")->empty());

    incoming.push_back({facts[25], "x.json", 21});
    const auto second = importInto(journal.value(), incoming);
    REQUIRE(second.ok());
    CHECK(second->added == 1);
    CHECK(Journal::openExisting(second->kept)->readAll()->size() == 20);

    auto clash = facts[0];
    clash.happened.date = clash.happened.date + 1;
    CHECK(importInto(journal.value(), {{facts[26], "x.json", 1}, {clash, "x.json", 2}}).error().code == "id-known");
    CHECK(journal->readAll()->size() == 21);
}
