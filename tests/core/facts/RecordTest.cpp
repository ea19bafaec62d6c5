#include "facts/Record.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace firstdew::facts;

namespace {

Fact checkIn(std::string id, const char* day, Level level, long long recorded, std::string corrects = {})
{
    return {std::move(id),
            "p1",
            {*LocalDate::parse(day), {480}},
            recorded,
            std::move(corrects),
            CheckIn{DiarySite::Hands, level, {}}};
}

} // namespace

TEST_CASE("entries are sorted by the time they happened, not by the time they were recorded")
{
    const std::vector<Fact> facts{checkIn("b", "2026-03-02", Level::Clammy, 1),
                                  checkIn("a", "2026-03-01", Level::Dry, 2)};
    const auto record = recordOf(facts, "p1");
    REQUIRE(record.all<CheckIn>().size() == 2);
    CHECK(record.all<CheckIn>()[0].id == "a");
    CHECK(record.latest<CheckIn>()->payload.level == Level::Clammy);
    CHECK(recordOf(facts, "p2").all<CheckIn>().empty());
}

TEST_CASE("a correction replaces its original, and the correction recorded last counts")
{
    const std::vector<Fact> facts{checkIn("c2", "2026-03-01", Level::Wet, 9, "a"),
                                  checkIn("a", "2026-03-01", Level::Dry, 1),
                                  checkIn("c1", "2026-03-01", Level::Clammy, 5, "a")};
    const auto record = recordOf(facts, "p1");
    REQUIRE(record.all<CheckIn>().size() == 1);
    CHECK(record.all<CheckIn>()[0].payload.level == Level::Wet);
    CHECK(record.all<CheckIn>()[0].corrected);
}

TEST_CASE("a correction of a correction replaces both, even if the clock was set back in between")
{
    const std::vector<Fact> facts{checkIn("a", "2026-03-01", Level::Dry, 100),
                                  checkIn("b", "2026-03-01", Level::Wet, 50, "a"),
                                  checkIn("c", "2026-03-01", Level::Clammy, 60, "b")};
    const auto record = recordOf(facts, "p1");
    REQUIRE(record.all<CheckIn>().size() == 1);
    CHECK(record.all<CheckIn>()[0].payload.level == Level::Clammy);
}

TEST_CASE("a retraction removes its fact, and a missing original does no harm")
{
    std::vector<Fact> facts{checkIn("a", "2026-03-01", Level::Dry, 1),
                            checkIn("z", "2026-03-02", Level::Wet, 2, "gone")};
    facts.push_back({"r", "p1", facts[0].happened, 3, "a", Retraction{"typed by mistake"}});
    const auto record = recordOf(facts, "p1");
    REQUIRE(record.all<CheckIn>().size() == 1);
    CHECK(record.all<CheckIn>()[0].id == "z");
    CHECK(record.all<Retraction>().size() == 1);
}

TEST_CASE("of a chain of a hundred thousand corrections the last one counts")
{
    std::vector<Fact> facts;
    for (int i = 0; i < 100'000; ++i)
        facts.push_back(checkIn(std::to_string(i), "2026-03-01", i == 99'999 ? Level::Wet : Level::Dry, i,
                                i > 0 ? std::to_string(i - 1) : ""));
    std::reverse(facts.begin(), facts.end());
    const auto record = recordOf(facts, "p1");
    REQUIRE(record.all<CheckIn>().size() == 1);
    CHECK(record.all<CheckIn>()[0].payload.level == Level::Wet);
}

TEST_CASE("a circle of corrections gives one entry, whichever fact comes first")
{
    std::vector<Fact> facts{
        checkIn("a", "2026-03-01", Level::Dry, 1, "c"), checkIn("b", "2026-03-01", Level::Clammy, 3, "a"),
        checkIn("c", "2026-03-01", Level::Wet, 2, "b"), checkIn("tail", "2026-03-01", Level::Dripping, 0, "b")};
    for (int turn = 0; turn < 4; ++turn) {
        std::rotate(facts.begin(), facts.begin() + 1, facts.end());
        const auto record = recordOf(facts, "p1");
        REQUIRE(record.all<CheckIn>().size() == 1);
        CHECK(record.all<CheckIn>()[0].id == "b");
    }
}

TEST_CASE("tokens and values of every enumeration match one to one")
{
    for (const auto level : allOf<Level>())
        CHECK(fromToken<Level>(token(level)) == level);
    for (const auto row : allOf<ScreeningRow>())
        CHECK(fromToken<ScreeningRow>(token(row)) == row);
    CHECK_FALSE(fromToken<Site>("hand"));
    CHECK(treats(Site::HandFoot) == SetOf<DiarySite>{DiarySite::Hands, DiarySite::Feet});
}

TEST_CASE("a correction of another kind replaces nothing, and counts by itself")
{
    const Fact yes{"a", "p1", {*LocalDate::parse("2026-03-01"), {480}},
                   1,   "",   Screening{true, {}, {ScreeningRow::Pregnancy}}};
    const Fact stray = checkIn("b", "2026-03-02", Level::Dry, 2, "a");
    const std::vector<Fact> facts{yes, stray};
    const auto record = recordOf(facts, "p1");
    CHECK(record.all<Screening>().size() == 1);
    CHECK(record.all<CheckIn>().size() == 1);
    // A correction of the stray one is about a check-in.
    const std::vector<Fact> more{yes, stray, checkIn("c", "2026-03-02", Level::Wet, 3, "b")};
    CHECK(recordOf(more, "p1").all<Screening>().size() == 1);
    // A retraction still withdraws whatever it names.
    const std::vector<Fact> gone{yes, {"d", "p1", yes.happened, 4, "a", Retraction{"mistaken"}}};
    CHECK(recordOf(gone, "p1").all<Screening>().empty());
}
