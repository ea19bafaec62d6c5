#include "exchange/FhirDefinitions.h"

#include "exchange/FhirCodes.h"

#include <span>

namespace firstdew::exchange {

using nlohmann::ordered_json;

namespace {

class Definitions {
public:
    std::string text() &&
    {
        systems();
        extensions();
        questionnaire();
        const ordered_json bundle{{"resourceType", "Bundle"}, {"type", "collection"}, {"entry", std::move(m_entries)}};
        return bundle.dump(2) + "\n";
    }

private:
    ordered_json m_entries = ordered_json::array();

    /// What every definition says of itself. `name` is for programs.
    void add(std::string_view type, std::string_view id, std::string_view name, std::string_view title,
             const ordered_json& body)
    {
        const std::string url = fhirUrl(type) + "/" + std::string(id);
        ordered_json resource{{"resourceType", type},   {"id", id},       {"url", url},         {"version", "1"},
                              {"name", name},           {"title", title}, {"status", "active"}, {"experimental", false},
                              {"publisher", "Firstdew"}};
        resource.update(body);
        m_entries.push_back({{"fullUrl", url}, {"resource", std::move(resource)}});
    }

    void system(std::string_view id, std::string_view name, std::string_view title, std::span<const FhirCode> codes)
    {
        ordered_json concepts = ordered_json::array();
        for (const FhirCode& c : codes)
            concepts.push_back({{"code", c.code}, {"display", c.display}});
        add("CodeSystem", id, name, title,
            {{"description", title}, {"caseSensitive", true}, {"content", "complete"}, {"concept", concepts}});
    }

    template <HasTokens E>
    void system(std::string_view id, std::string_view name, std::string_view title)
    {
        std::vector<std::string> displays;
        std::vector<FhirCode> codes;
        displays.reserve(allOf<E>().size());
        for (const E value : allOf<E>()) {
            displays.push_back(fhirDisplay(value));
            codes.push_back({token(value), displays.back()});
        }
        system(id, name, title, codes);
    }

    void systems()
    {
        system("observation", "FirstdewObservation", "What is observed", kObservationCodes);
        system("procedure", "FirstdewProcedure", "What is done", kProcedureCodes);
        system("severity", "FirstdewSeverity", "How much the sweating bothers the person, 1 to 4", kSeverityCodes);
        system<Site>("session-site", "FirstdewSessionSite", "What a session treats");
        system<DiarySite>("site", "FirstdewSite", "The skin that sweats");
        system<Level>("level", "FirstdewLevel", "How damp the skin is, by the person's own word");
        system<Circumstance>("circumstance", "FirstdewCircumstance", "What stirs up sweating");
        system<SkinFinding>("skin", "FirstdewSkin", "The skin after a session");
        system<Waveform>("waveform", "FirstdewWaveform", "The waveform of the current");
        system<Comfort>("comfort", "FirstdewComfort", "How the current felt");
        system<OtherKind>("other-treatment", "FirstdewOtherTreatment", "Other treatments of sweating");
    }

    void extension(std::string_view id, std::string_view name, std::string_view title,
                   std::initializer_list<std::string_view> on, std::string_view type)
    {
        ordered_json context = ordered_json::array();
        for (const std::string_view element : on)
            context.push_back({{"type", "element"}, {"expression", element}});
        const std::string url = fhirUrl("StructureDefinition/") + std::string(id);
        ordered_json elements = {
            {{"id", "Extension"}, {"path", "Extension"}, {"short", title}, {"max", "1"}},
            {{"id", "Extension.extension"}, {"path", "Extension.extension"}, {"max", "0"}},
            {{"id", "Extension.url"}, {"path", "Extension.url"}, {"fixedUri", url}},
            {{"id", "Extension.value[x]"}, {"path", "Extension.value[x]"}, {"min", 1}, {"type", {{{"code", type}}}}}};
        add("StructureDefinition", id, name, title,
            {{"description", title},
             {"fhirVersion", "4.0.1"},
             {"kind", "complex-type"},
             {"abstract", false},
             {"context", context},
             {"type", "Extension"},
             {"baseDefinition", "http://hl7.org/fhir/StructureDefinition/Extension"},
             {"derivation", "constraint"},
             {"differential", {{"element", elements}}}});
    }

    void extensions()
    {
        extension("local-time", "FirstdewLocalTime", "The time of day where the person was",
                  {"Observation", "Procedure"}, "time");
        extension("session-site", "FirstdewSessionSiteOf", "What the session treats", {"Procedure"}, "code");
        extension("waveform", "FirstdewWaveformOf", "The waveform of the current", {"Procedure"}, "code");
        extension("comfort", "FirstdewComfortOf", "How the current felt", {"Procedure"}, "code");
        extension("peak-current", "FirstdewPeakCurrent", "The highest current read from the meter", {"Procedure"},
                  "Quantity");
        extension("highest-comfortable-current", "FirstdewHighestComfortableCurrent",
                  "The highest current that was comfortable", {"Procedure"}, "Quantity");
        extension("charge", "FirstdewCharge", "Current multiplied by time, summed over the session", {"Procedure"},
                  "Quantity");
    }

    void questionnaire()
    {
        ordered_json options = ordered_json::array();
        for (const FhirCode& c : kSeverityCodes)
            options.push_back(
                {{"valueCoding",
                  {{"system", fhirUrl("CodeSystem/severity")}, {"code", c.code}, {"display", c.display}}}});
        ordered_json sites = ordered_json::array();
        for (const DiarySite site : allOf<DiarySite>())
            sites.push_back(
                {{"valueCoding",
                  {{"system", fhirUrl("CodeSystem/site")}, {"code", token(site)}, {"display", fhirDisplay(site)}}}});
        const ordered_json items = {
            {{"linkId", "site"}, {"text", "Where?"}, {"type", "choice"}, {"required", true}, {"answerOption", sites}},
            {{"linkId", "severity"},
             {"text", kSeverityQuestion},
             {"type", "choice"},
             {"required", true},
             {"answerOption", options}}};
        add("Questionnaire", "severity", "FirstdewSeverityQuestion", "How much the sweating bothers the person",
            {{"description", "Four answers after the Hyperhidrosis Disease Severity Scale, in words of our own"},
             {"subjectType", {"Patient"}},
             {"item", items}});
    }
};

} // namespace

std::string fhirDefinitions() { return Definitions().text(); }

} // namespace firstdew::exchange
