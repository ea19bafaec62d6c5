#include "exchange/Fhir.h"

#include "core/RandomFacts.h"
#include "exchange/FhirCodes.h"
#include "exchange/FhirDefinitions.h"
#include "exchange/FhirId.h"

#include <catch2/catch.hpp>
#include <fstream>
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

namespace {

/// Every object below `node` that has the key.
void gather(const json& node, const std::string& key, std::vector<json>& into)
{
    if (node.is_object() && node.contains(key))
        into.push_back(node);
    if (node.is_structured())
        for (const auto& child : node)
            gather(child, key, into);
}

std::vector<json> holding(const json& node, const std::string& key)
{
    std::vector<json> out;
    gather(node, key, out);
    return out;
}

std::string baseOf(const char* kind) { return std::string(kFhirBase) + kind + "/"; }

} // namespace

TEST_CASE("the definitions in the tree are those that the program makes")
{
    const std::string path = SOURCE_DIR "/core/exchange/fhir-definitions.json";
    if (std::getenv("FIRSTDEW_WRITE_TOLD") != nullptr) {
        std::ofstream(path) << fhirDefinitions();
        FAIL("written anew, to be read: " << path);
    }
    std::ifstream file(path);
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    CHECK(text == fhirDefinitions());
}

TEST_CASE("every code and extension of our own in a bundle is published", "[property]")
{
    std::set<std::pair<std::string, std::string>> codes;
    std::set<std::string> urls;
    const auto definitions = json::parse(fhirDefinitions());
    for (const auto& entry : definitions["entry"]) {
        const auto& resource = entry["resource"];
        CHECK(clean(resource));
        CHECK(urls.insert(resource["url"].get<std::string>()).second);
        if (resource["resourceType"] == "CodeSystem")
            for (const auto& code : resource["concept"])
                CHECK(codes.emplace(resource["url"].get<std::string>(), code["code"].get<std::string>()).second);
    }
    CHECK(rc::check([&](unsigned long long seed) {
        auto facts = testing::RandomFacts(seed).many(200);
        std::erase_if(facts, [](const Fact& f) {
            const auto* score = std::get_if<Hdss>(&f.payload);
            return score != nullptr && (score->score < 1 || score->score > 4); // refused wherever a score comes in
        });
        const auto bundle = json::parse(fhirBundle(facts, {}));
        for (const auto& one : holding(bundle, "system"))
            if (const std::string system = one["system"]; system.starts_with(kFhirBase))
                RC_ASSERT(codes.contains(std::pair(system, one["code"].get<std::string>())));
        for (const auto& one : holding(bundle, "url"))
            RC_ASSERT(urls.contains(one["url"].get<std::string>()));
        for (const auto& one : holding(bundle, "questionnaire"))
            RC_ASSERT(urls.contains(one["questionnaire"].get<std::string>()));
    }));
}

TEST_CASE("a score carries the answer it came from")
{
    const LocalTime at{LocalDate(20500), {600}};
    const std::vector<Fact> facts{{"a1", "p1", at, 1, "", Hdss{DiarySite::Feet, 3}}};
    const auto bundle = json::parse(fhirBundle(facts, {}));
    const auto& score = bundle["entry"][1]["resource"];
    const auto& answers = bundle["entry"][2]["resource"];
    CHECK(score["valueInteger"] == 3);
    CHECK(score["derivedFrom"][0]["reference"] == "QuestionnaireResponse/" + answers["id"].get<std::string>());
    CHECK(answers["questionnaire"] == baseOf("Questionnaire") + "severity");
    CHECK(answers["item"][0]["answer"][0]["valueCoding"]["code"] == "feet");
    CHECK(answers["item"][1]["answer"][0]["valueCoding"]["code"] == "3");
    // SNOMED CT: foot, as in DICOM PS3.16, annex L
    CHECK(score["bodySite"]["coding"][1] ==
          json{{"system", "http://snomed.info/sct"}, {"code", "56459004"}, {"display", "Foot structure"}});
}

TEST_CASE("another treatment with a drug is a statement without a dose, any other a procedure")
{
    const LocalTime at{LocalDate(20500), {600}};
    const OtherTreatment tablets{OtherKind::Tablets, "Invented", {}, LocalDate(20400), {}};
    const OtherTreatment cream{OtherKind::Cream, "", {DiarySite::Hands}, LocalDate(20400), LocalDate(20410)};
    const OtherTreatment other{OtherKind::Other, "", {DiarySite::Armpits}, LocalDate(20400), {}};
    const std::vector<Fact> facts{
        {"a1", "p1", at, 1, "", tablets}, {"a2", "p1", at, 1, "", cream}, {"a3", "p1", at, 1, "", other}};
    const auto bundle = json::parse(fhirBundle(facts, {}));
    const auto& first = bundle["entry"][1]["resource"];
    CHECK(first["resourceType"] == "MedicationStatement");
    CHECK(first["status"] == "active");
    CHECK(first["medicationCodeableConcept"]["text"] == "Invented");
    CHECK_FALSE(first.contains("dosage"));
    const auto& second = bundle["entry"][2]["resource"];
    CHECK(second["status"] == "completed");
    CHECK(second["effectivePeriod"]["end"] == LocalDate(20410).iso());
    CHECK(second["dosage"][0]["site"]["text"] == "hands");
    CHECK_FALSE(second["dosage"][0].contains("doseAndRate"));
    const auto& third = bundle["entry"][3]["resource"];
    CHECK(third["resourceType"] == "Procedure");
    CHECK(third["status"] == "in-progress");
}
