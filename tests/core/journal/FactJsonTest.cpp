#include "journal/FactJson.h"

#include "RandomFacts.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <rapidcheck.h>
#include <set>

using namespace firstdew;
using namespace firstdew::facts;
using namespace firstdew::journal;
using nlohmann::json;

TEST_CASE("every kind of fact is one of a kind, and comes back from JSON as it was")
{
    std::set<std::string_view> seen;
    CHECK(rc::check([&](unsigned long long seed) {
        for (const Fact& fact : testing::RandomFacts(seed).many(100)) {
            seen.insert(kindOf(fact.payload));
            const auto back = factFromJson(json::parse(factToJson(fact).dump()));
            RC_ASSERT(back.ok());
            RC_ASSERT(*back == fact);
        }
    }));
    CHECK(seen.size() == std::variant_size_v<Payload>);
}

TEST_CASE("a fact is written with the names of its fields, and what is not there is left out")
{
    Session session;
    session.site = Site::HandFoot;
    session.waveform = Waveform::Pulsed;
    session.peak = Milliamps{12.5};
    session.skin = {SkinFinding::Itch};
    const Fact fact{"a1", "p1", *LocalTime::parse("2026-03-05T07:30"), 1772692200000, "", session};
    CHECK(factToJson(fact) ==
          json::parse(R"({"id":"a1","person":"p1","happened":"2026-03-05T07:30","recorded_ms":1772692200000,
        "kind":"session","is":{"site":"hand-foot","waveform":"pulsed","peak_ma":12.5,"completed":true,"skin":["itch"],
        "machine":"","bath":"","note":""}})"));
}

TEST_CASE("what cannot be is refused with the field's name")
{
    const json good = json::parse(R"({"person":"p1","happened":"2026-03-05T07:30","recorded_ms":1,"kind":"session",
        "is":{"site":"feet","waveform":"direct","completed":true,"skin":[],"machine":"","bath":"","note":""}})");
    REQUIRE(factFromJson(good).ok());

    struct Case {
        const char* change; // a JSON merge patch (RFC 7396)
        const char* code;
        const char* input;
    };
    const auto c = GENERATE(values<Case>({
        {R"({"is":{"site":"hand"}})", "field-invalid", "is.site"},
        {R"({"is":{"site":1}})", "field-invalid", "is.site"},
        {R"({"is":{"site":null}})", "field-missing", "is.site"},
        {R"({"is":{"peak_ma":-0.5}})", "field-invalid", "is.peak_ma"},
        {R"({"is":{"peak_ma":1e9}})", "field-invalid", "is.peak_ma"},
        {R"({"is":{"peak_ma":"12"}})", "field-invalid", "is.peak_ma"},
        {R"({"is":{"peak_ma":true}})", "field-invalid", "is.peak_ma"},
        {R"({"is":{"peak":12}})", "field-unknown", "is.peak"},
        {R"({"is":{"completed":"yes"}})", "field-invalid", "is.completed"},
        {R"({"is":{"skin":["itch","itch"]}})", "field-invalid", "is.skin"},
        {R"({"is":{"skin":"itch"}})", "field-invalid", "is.skin"},
        {R"({"is":{"note":5}})", "field-invalid", "is.note"},
        {R"({"is":[]})", "not-an-object", "is"},
        {R"({"is":null})", "field-missing", "is"},
        {R"({"kind":"sessions"})", "kind-unknown", "kind"},
        {R"({"happened":"2026-02-29T07:30"})", "field-invalid", "happened"},
        {R"({"happened":"2026-03-05 07:30"})", "field-invalid", "happened"},
        {R"({"recorded_ms":1.5})", "field-invalid", "recorded_ms"},
        {R"({"recorded_ms":18446744073709551615})", "field-invalid", "recorded_ms"},
        {R"({"person":""})", "field-invalid", "person"},
        {R"({"person":"../p1"})", "field-invalid", "person"},
        {R"({"id":"a b"})", "field-invalid", "id"},
        {R"({"id":"a","corrects":"a"})", "field-invalid", "corrects"},
        {R"({"colour":"red"})", "field-unknown", "colour"},
    }));
    json bad = good;
    bad.merge_patch(json::parse(c.change));
    INFO(c.change);
    const auto read = factFromJson(bad);
    REQUIRE_FALSE(read.ok());
    CHECK(read.error().code == c.code);
    CHECK(read.error().input == c.input);
    CHECK_FALSE(read.error().message.empty());
}

TEST_CASE("a payload's own bounds hold beside those of its type")
{
    const auto score = [](json s) { return payloadFromJson("hdss", {{"site", "feet"}, {"score", std::move(s)}}); };
    CHECK(score(1).ok());
    CHECK(score(4).ok());
    CHECK_FALSE(score(0).ok());
    CHECK_FALSE(score(5).ok());
    CHECK_FALSE(score(2.5).ok());
    CHECK(score(5).error().message == "must be a whole number from 1 to 4");
    CHECK_FALSE(payloadFromJson("hdss", json::array()).ok());
}
