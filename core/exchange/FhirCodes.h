#pragma once

#include "facts/Enumerations.h"

#include <array>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

// The codes of the FHIR bundle: our own systems, and beside them the codes of SNOMED CT where one means the same.
namespace firstdew::exchange {

using namespace facts;

inline constexpr const char* kFhirBase = "https://firstdew.example/fhir/";
inline constexpr const char* kSnomed = "http://snomed.info/sct";
inline constexpr const char* kUcum = "http://unitsofmeasure.org";

struct FhirCode {
    std::string_view code;
    std::string_view display;
};

/// Hand, foot and axilla as in DICOM PS3.16, annex L; the findings as in the value sets of HL7 FHIR R4.
[[nodiscard]] constexpr std::optional<FhirCode> snomed(DiarySite site)
{
    switch (site) {
    case DiarySite::Hands: return FhirCode{"85562004", "Hand structure"};
    case DiarySite::Feet: return FhirCode{"56459004", "Foot structure"};
    case DiarySite::Armpits: return FhirCode{"91470000", "Axillary region structure"};
    }
    return std::nullopt;
}

[[nodiscard]] constexpr std::optional<FhirCode> snomed(SkinFinding finding)
{
    switch (finding) {
    case SkinFinding::Redness: return FhirCode{"247441003", "Erythema"};
    case SkinFinding::Itch: return FhirCode{"418290006", "Itching"};
    case SkinFinding::Blister: return FhirCode{"339008", "Blister"};
    case SkinFinding::Burn: return FhirCode{"125666000", "Burn"};
    case SkinFinding::Pain: return FhirCode{"22253000", "Pain"};
    case SkinFinding::Fine:
    case SkinFinding::Dryness: return std::nullopt;
    }
    return std::nullopt;
}

/// What an observation or one of its components is about.
inline constexpr auto kObservationCodes = std::to_array<FhirCode>({
    {"dampness", "Dampness of the skin, by the person's own word"},
    {"hdss", "Hyperhidrosis Disease Severity Scale, 1 to 4"},
    {"sweat-rate", "Sweat rate by weighing paper"},
    {"skin", "Skin after treatment"},
    {"paper-before", "Paper before"},
    {"paper-after", "Paper after"},
    {"duration", "Time on the skin"},
});

inline constexpr auto kProcedureCodes = std::to_array<FhirCode>({
    {"tap-water-iontophoresis", "Tap-water iontophoresis"},
});

/// The answers on the page that asks how much the sweating bothers the person, from 1, and the question there; a test
/// compares them with that page.
inline constexpr auto kSeverityCodes = std::to_array<FhirCode>({
    {"1", "I hardly notice it, and it never gets in my way"},
    {"2", "I can live with it, and now and then it gets in my way"},
    {"3", "I can barely live with it, and it often gets in my way"},
    {"4", "I cannot live with it; it is always in my way"},
});

inline constexpr std::string_view kSeverityQuestion = "Over the last week, which comes nearest?";

[[nodiscard]] std::string fhirUrl(std::string_view tail);

/// The English words of a token.
template <HasTokens E>
[[nodiscard]] std::string fhirDisplay(E value)
{
    std::string text(token(value));
    for (char& c : text)
        if (c == '-')
            c = ' ';
    return text;
}

/// A concept of an own system, with its text.
[[nodiscard]] nlohmann::ordered_json fhirConcept(std::string_view system, std::string_view code, std::string_view text);

/// The concept of the list that has the code.
template <std::size_t N>
[[nodiscard]] nlohmann::ordered_json fhirConcept(std::string_view system, const std::array<FhirCode, N>& list,
                                                 std::string_view code)
{
    for (const FhirCode& one : list)
        if (one.code == code)
            return fhirConcept(system, one.code, one.display);
    return fhirConcept(system, code, code);
}

/// The concept of a value, with the code of SNOMED CT that means the same, if one is known to us.
template <HasTokens E>
[[nodiscard]] nlohmann::ordered_json fhirConcept(std::string_view system, E value)
{
    auto out = fhirConcept(system, token(value), fhirDisplay(value));
    if constexpr (requires { snomed(value); })
        if (const auto same = snomed(value))
            out["coding"].push_back({{"system", kSnomed}, {"code", same->code}, {"display", same->display}});
    return out;
}

} // namespace firstdew::exchange
