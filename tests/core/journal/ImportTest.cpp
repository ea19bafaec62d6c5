#include "journal/Import.h"

#include "Scratch.h"
#include "codec/RecordJson.h"
#include "core/RandomFacts.h"
#include "journal/Copies.h"

#include <catch2/catch.hpp>

using namespace firstdew;
using namespace firstdew::journal;
using codec::Incoming;
using codec::readRecordJson;
using testing::Scratch;

namespace {

constexpr const char* kTwo = R"({"format":"firstdew-record","version":1,
"facts":[
{"id":"a","person":"abababababababababababababababab","happened":"2026-03-05T07:30","recorded_ms":1,
 "kind":"check-in",
 "is":{"site":"feet",
       "level":"dry","with":[]}},
{"id":"b","person":"abababababababababababababababab","happened":"2026-03-06T07:30","recorded_ms":2,
 "kind":"question","is":{"text":"why?"}}
]}
)";

} // namespace

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

TEST_CASE("an import adds what is new, knows what is there, and refuses another content under a known id")
{
    const auto incoming = *readRecordJson("x.json", kTwo);
    const auto all = planImport({}, incoming);
    REQUIRE(all.ok());
    CHECK(all->fresh.size() == 2);

    const auto again = planImport(all->fresh, incoming);
    REQUIRE(again.ok());
    CHECK(again->fresh.empty());
    CHECK(again->known == 2);

    auto nameless = incoming;
    for (auto& i : nameless)
        i.fact.id.clear(), i.fact.recordedMs += 5;
    const auto bySubstance = planImport(all->fresh, nameless);
    REQUIRE(bySubstance.ok());
    CHECK(bySubstance->known == 2);
    nameless.push_back(nameless.back());
    nameless.back().fact.happened.at.minute += 1;
    nameless.push_back(nameless.back());
    CHECK(planImport(all->fresh, nameless)->fresh.size() == 1);
    CHECK(planImport(all->fresh, nameless)->known == 3);

    auto other = incoming;
    std::get<CheckIn>(other[0].fact.payload).level = Level::Wet;
    const auto clash = planImport(all->fresh, other);
    REQUIRE_FALSE(clash.ok());
    CHECK(clash.error().code == "id-known");
    CHECK(clash.error().input == "x.json, line 3, id");
}

TEST_CASE("an import is refused where a fact corrects one of another kind, or cannot be")
{
    const auto fact = [](const char* id, Payload payload, std::string corrects = {}) {
        return Incoming{{id, "abababababababababababababababab", *LocalTime::parse("2026-03-05T07:30"), 1,
                         std::move(corrects), std::move(payload)},
                        "x.json",
                        7};
    };
    const auto plan = [](const Incoming& one, const Incoming& other) { return planImport({}, {one, other}); };
    const auto yes = fact("a", Screening{true, {}, {ScreeningRow::Pregnancy}});
    const auto stray = plan(yes, fact("b", CheckIn{}, "a"));
    REQUIRE_FALSE(stray);
    CHECK(stray.error().code == "corrects-other");
    CHECK(stray.error().input == "x.json, line 7, corrects");
    CHECK(plan(yes, fact("b", Screening{true, {}, {}}, "a")));
    CHECK(plan(yes, fact("b", Retraction{"mistaken"}, "a")));
    const LocalDate day = *LocalDate::parse("2026-03-05");
    CHECK_FALSE(plan(yes, fact("b", Away{day, day - 1})));
    CHECK(plan(yes, fact("b", Away{day, day})));
    CHECK_FALSE(plan(yes, fact("b", OtherTreatment{OtherKind::Cream, "", {}, day, day - 1})));
    CHECK(plan(yes, fact("b", OtherTreatment{OtherKind::Cream, "", {}, day, day})));
    Course course;
    course.plan = CourseTemplate::Prescribed;
    course.days = {1, 3, 3};
    CHECK_FALSE(plan(yes, fact("b", course)));
}
