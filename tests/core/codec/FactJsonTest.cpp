#include "codec/FactJson.h"
#include "codec/FieldText.h"

#include "core/RandomFacts.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <rapidcheck.h>
#include <set>

using namespace firstdew;
using namespace firstdew::facts;
using namespace firstdew::codec;
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
        {R"({"corrects":"a b"})", "field-invalid", "corrects"},
        {R"({"person":null})", "field-missing", "person"},
        {R"({"happened":null})", "field-missing", "happened"},
        {R"({"recorded_ms":null})", "field-missing", "recorded_ms"},
        {R"({"kind":null})", "field-missing", "kind"},
        {R"({"kind":7})", "field-invalid", "kind"},
        {R"({"id":7})", "field-invalid", "id"},
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

namespace {

/// A payload with all of its optional fields, and which those are.
template <class P>
struct Whole {
    P payload{};
    std::set<std::string, std::less<>> optional;
    std::vector<std::string> names;
    Whole() { P::fields(payload, *this); }
    template <class T>
    void operator()(std::string_view name, T& field, Range = {})
    {
        names.emplace_back(name);
        if constexpr (isOptional<T>) {
            optional.emplace(name);
            field.emplace();
            possibleFor(*field);
        } else {
            possibleFor(field);
        }
    }
    template <class T>
    static void possibleFor(T& field)
    {
        if constexpr (std::same_as<T, Centimetres>)
            field = {170};
        else if constexpr (std::same_as<T, Kilograms>)
            field = {70};
        else if constexpr (std::same_as<T, SquareCentimetres>)
            field = {24};
    }
};

} // namespace

TEST_CASE("of every kind every field that is missing, unknown or of another type is refused by its name")
{
    forEachPayload([&](auto each) {
        using P = typename decltype(each)::type;
        const Whole<P> whole;
        const json good = payloadToJson(whole.payload);
        REQUIRE(payloadFromJson(P::kind, good).ok());
        for (const auto& name : whole.names) {
            INFO(P::kind << ", " << name);
            json missing = good;
            missing.erase(name);
            const auto without = payloadFromJson(P::kind, missing);
            if (whole.optional.contains(name)) {
                CHECK(without.ok());
            } else {
                REQUIRE_FALSE(without.ok());
                CHECK(without.error().code == "field-missing");
                CHECK(without.error().input == name);
            }
            for (const json& wrong : {json::object(), json(nullptr), json::array({json::object()})}) {
                json bad = good;
                bad[name] = wrong;
                const auto read = payloadFromJson(P::kind, bad);
                REQUIRE_FALSE(read.ok());
                CHECK(read.error().code == "field-invalid");
                CHECK(read.error().input == name);
                CHECK(read.error().message.starts_with("must be "));
            }
        }
        json more = good;
        more["colour"] = "red";
        CHECK(payloadFromJson(P::kind, more).error().code == "field-unknown");
        CHECK(payloadFromJson(P::kind, json::array()).error().code == "not-an-object");
    });
}

TEST_CASE("what is no object is no fact")
{
    CHECK(factFromJson(json::array()).error().code == "not-an-object");
    CHECK(factFromJson(json("fact")).error().code == "not-an-object");
}

TEST_CASE("a list of days is bounded in number and in each of its days")
{
    const auto days = [](json list) {
        json course = payloadToJson(Course{});
        course["days"] = std::move(list);
        return payloadFromJson("course", course);
    };
    CHECK(days(std::vector<int>(10'000, 1)).ok());
    CHECK(days(std::vector<int>(10'001, 1)).error().input == "days");
    CHECK(days({1, 3660}).ok());
    CHECK(days({1, 3661}).error().message == "must be a list, each a whole number from 1 to 3660");
    CHECK(days({1, 2.5}).error().input == "days");
    CHECK_FALSE(days(7).ok());
}
