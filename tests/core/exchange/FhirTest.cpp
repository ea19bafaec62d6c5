#include "exchange/Fhir.h"

#include "core/RandomFacts.h"
#include "exchange/FhirId.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <rapidcheck.h>
#include <set>

using namespace firstdew;
using namespace firstdew::exchange;
using nlohmann::json;

namespace {

/// HL7 FHIR R4, 2.1.28 and the primitives of 2.24.0.1: no empty element, no null, no control characters in a string.
bool clean(const json& node)
{
    if (node.is_null() || ((node.is_structured() || node.is_string()) && node.empty()))
        return false;
    if (node.is_string()) {
        const auto& text = node.get_ref<const std::string&>();
        return text.find_first_not_of(" \t\r\n") != std::string::npos &&
               std::none_of(text.begin(), text.end(), [](char c) {
                   return static_cast<unsigned char>(c) < 0x20 && c != '\t' && c != '\n' && c != '\r';
               });
    }
    return !node.is_structured() || std::all_of(node.begin(), node.end(), clean);
}

} // namespace

TEST_CASE("whatever was recorded, the bundle keeps FHIR's rules for every element", "[property]")
{
    CHECK(rc::check([](unsigned long long seed, bool names) {
        const auto facts = testing::RandomFacts(seed).many(200);
        const auto bundle = json::parse(fhirBundle(facts, {names, 1772712000000}));
        RC_ASSERT(bundle["timestamp"] == "2026-03-05T12:00:00Z");
        RC_ASSERT(clean(bundle));
        std::set<std::string> urls;
        for (const auto& entry : bundle["entry"])
            RC_ASSERT(urls.insert(entry["fullUrl"].get<std::string>()).second);
    }));
}

TEST_CASE("ids are written in FHIR's alphabet, other characters by their code")
{
    const std::vector<Fact> facts{{"a_b:c", "p:1", {LocalDate(20500), {0}}, 1, "", Hdss{DiarySite::Feet, 2}}};
    const auto bundle = json::parse(fhirBundle(facts, {}));
    CHECK(bundle["entry"][0]["resource"]["id"] == "x.p.3a1");
    CHECK(bundle["entry"][1]["resource"]["id"] == "x.a.5fb.3ac");
    CHECK(bundle["entry"][1]["resource"]["subject"]["reference"] == "Patient/x.p.3a1");
}

TEST_CASE("ids that differ only where FHIR has no such character stay apart")
{
    FhirIds ids;
    std::set<std::string> out;
    const std::string longest(64, '_');
    const std::string other = std::string(63, '_') + ":";
    const std::vector<std::string> all{"a_b",  "a-b", "a.b",   "a:b", "x.a.5fb",
                                       "x.n5", "ab",  longest, other, "00000000000000000000000000000001"};
    for (const auto& id : all) {
        const std::string& written = ids.of(id);
        CHECK(written.size() <= 64);
        CHECK(written.find_first_of("_:") == std::string::npos);
        CHECK(ids.of(id) == written);
        out.insert(written);
    }
    CHECK(out.size() == all.size());
    CHECK(ids.of("a-b") == "a-b");
}
