#include "codec/RecordJson.h"

#include "core/RandomFacts.h"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

using namespace firstdew;
using namespace firstdew::codec;

namespace {

std::vector<Fact> factsOf(const std::vector<Incoming>& incoming)
{
    std::vector<Fact> out;
    for (const auto& i : incoming)
        out.push_back(i.fact);
    return out;
}

constexpr const char* kTwo = R"({"format":"firstdew-record","version":1,
"facts":[
{"id":"a","person":"p1","happened":"2026-03-05T07:30","recorded_ms":1,
 "kind":"check-in",
 "is":{"site":"feet",
       "level":"dry","with":[]}},
{"id":"b","person":"p1","happened":"2026-03-06T07:30","recorded_ms":2,"kind":"question","is":{"text":"why?"}}
]}
)";

std::string changed(std::string text, const std::string& from, const std::string& to)
{
    const auto at = text.find(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

} // namespace

TEST_CASE("ten thousand random facts pass through the JSON document unchanged, and give the same bytes again",
          "[property]")
{
    CHECK(rc::check([](unsigned long long seed) {
        const auto facts = testing::RandomFacts(seed).many(100);
        const auto text = recordJson(facts);
        const auto back = readRecordJson("x.json", text);
        RC_ASSERT(back.ok());
        RC_ASSERT(factsOf(*back) == facts);
        RC_ASSERT(recordJson(factsOf(*back)) == text);
    }));
}

TEST_CASE("an empty record is a document too")
{
    const auto back = readRecordJson("x.json", recordJson({}));
    REQUIRE(back.ok());
    CHECK(back->empty());
}

TEST_CASE("a fact knows the line it came from")
{
    const auto read = readRecordJson("x.json", kTwo);
    REQUIRE(read.ok());
    REQUIRE(read->size() == 2);
    CHECK((*read)[0].line == 3);
    CHECK((*read)[1].line == 7);
}

TEST_CASE("what is wrong is told with its line and field")
{
    struct Case {
        const char* from;
        const char* to;
        const char* where;
    };
    const auto c = GENERATE(values<Case>({
        {"\"dry\"", "\"damp\"", "x.json, line 6, is.level"},
        {"\"dry\"", "\"dry\",\"level\":\"wet\"", "x.json, line 6, level"},
        {"\"kind\":\"check-in\"", "\"kind\":\"checkin\"", "x.json, line 4, kind"},
        {",\"with\":[]", "", "x.json, line 3, is.with"},
        {"\"why?\"", "5", "x.json, line 7, is.text"},
        {"\"why?\"", "\"why?", "x.json, line 7"},
        {"2026-03-06", "2026-13-06", "x.json, line 7, happened"},
        {"\"id\":\"b\"", "\"idd\":\"b\"", "x.json, line 7, idd"},
        {"firstdew-record", "something", "x.json, line 1, format"},
        {"\"version\":1", "\"version\":2", "x.json, line 1, version"},
        {"\"version\":1", "\"version\":\"1\"", "x.json, line 1, version"},
        {"\"version\":1,", "\"version\":1,\"extra\":{\"a\":{\"b\":{}}},", "x.json, line 1, extra"},
        {"\"facts\":[", "\"facts\":[7,", "x.json, line 1, facts"},
    }));
    INFO(c.from << " -> " << c.to);
    const auto read = readRecordJson("x.json", changed(kTwo, c.from, c.to));
    REQUIRE_FALSE(read.ok());
    CHECK(read.error().input == c.where);
}

TEST_CASE("what is no JSON, or very deep, is refused")
{
    CHECK_FALSE(readRecordJson("x.json", "").ok());
    CHECK_FALSE(readRecordJson("x.json", "[]").ok());
    CHECK_FALSE(readRecordJson("x.json", "id,person\r\n").ok());
    CHECK_FALSE(readRecordJson("x.json", std::string(200'000, '[')).ok());
    CHECK_FALSE(readRecordJson("x.json", std::string(kTwo) + "}").ok());
    CHECK_FALSE(readRecordJson("x.json", changed(kTwo, "why?", "\xff")).ok());
    CHECK(readRecordJson("x.json", changed(kTwo, "\"recorded_ms\":1", "\"recorded_ms\":1e999")).error().code ==
          "not-json");
    CHECK(readRecordJson("x.json", R"({"format":"firstdew-record","version":1})").error().input ==
          "x.json, line 1, facts");
    CHECK(readRecordJson("x.json", R"({"format":"firstdew-record","version":1,"facts":{}})").error().input ==
          "x.json, line 1, facts");
}
