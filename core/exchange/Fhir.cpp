#include "exchange/Fhir.h"

#include "codec/CleanText.h"
#include "diary/Diary.h"
#include "exchange/FhirCodes.h"
#include "exchange/FhirId.h"
#include "exchange/Utc.h"

#include <algorithm>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace firstdew::exchange {

using nlohmann::ordered_json;

namespace {

/// FHIR's strings hold no control characters but tab and line breaks, and something beside white space; else nothing.
std::string plainText(std::string text)
{
    text = codec::cleanText(text);
    return text.find_first_not_of(" \t\r\n") == std::string::npos ? std::string() : text;
}

void addNote(ordered_json& body, const std::string& note)
{
    if (const std::string text = plainText(note); !text.empty())
        body["note"] = {{{"text", text}}};
}

ordered_json quantity(double value, std::string_view unit, std::string_view ucum)
{
    return {{"value", value}, {"unit", unit}, {"system", kUcum}, {"code", ucum}};
}

ordered_json quantityExtension(std::string_view name, double value, std::string_view unit, std::string_view ucum)
{
    return {{"url", fhirUrl("StructureDefinition/") + std::string(name)},
            {"valueQuantity", quantity(value, unit, ucum)}};
}

ordered_json localTime(MinuteOfDay at)
{
    return {{"url", fhirUrl("StructureDefinition/local-time")}, {"valueTime", at.text() + ":00"}};
}

class BundleWriter {
public:
    BundleWriter(std::span<const Fact> facts, const FhirOptions& options) : m_options(options)
    {
        m_text =
            fmt::format(R"({{"resourceType":"Bundle","type":"collection","timestamp":"{}")", utcText(options.stampMs));
        for (const std::string& person : personsIn(facts)) {
            m_subject = m_ids.of(person);
            const auto diary = diary::readDiary(facts, person, diary::kEndOfTime);
            patient(diary);
            each(diary.checkIns), each(diary.scores), each(diary.weighings), each(diary.skin);
            for (const auto& entry : diary.scores)
                answers(entry);
            for (const auto& entry : diary.sessions)
                session(diary, entry);
            for (const auto& entry : diary.otherTreatments)
                otherTreatment(entry);
        }
    }

    std::string text() &&
    {
        m_text += m_empty ? "}\n" : "\n]}\n";
        return std::move(m_text);
    }

private:
    FhirOptions m_options;
    FhirIds m_ids;
    std::string m_subject;
    std::string m_text; ///< of the bundle so far, an entry to a line
    bool m_empty = true;

    void add(const std::string& type, const std::string& id, const ordered_json& body)
    {
        ordered_json resource{{"resourceType", type}, {"id", id}};
        resource.update(body);
        const ordered_json entry{{"fullUrl", fhirUrl(type + "/" + id)}, {"resource", std::move(resource)}};
        m_text += (m_empty ? ",\"entry\":[\n" : ",\n") + entry.dump();
        m_empty = false;
    }

    void patient(const diary::Diary& diary)
    {
        ordered_json body = ordered_json::object();
        if (diary.person && m_options.names) {
            if (const auto name = plainText(diary.person->name); !name.empty())
                body["name"] = {{{"text", name}}};
            if (diary.person->birth)
                body["birthDate"] = diary.person->birth->iso();
        }
        add("Patient", m_subject, body);
    }

    template <class P>
    void each(const std::vector<Entry<P>>& entries)
    {
        for (const auto& entry : entries) {
            ordered_json body{{"extension", {localTime(entry.happened.at)}},
                              {"status", entry.corrected ? "corrected" : "final"}};
            body["category"] = {
                {{"coding",
                  {{{"system", "http://terminology.hl7.org/CodeSystem/observation-category"}, {"code", "survey"}}}}}};
            body["code"] = codeOf(entry.payload);
            body["subject"] = {{"reference", "Patient/" + m_subject}};
            body["effectiveDateTime"] = entry.happened.date.iso();
            fill(body, entry.payload);
            if constexpr (std::same_as<P, Hdss>)
                body["derivedFrom"] = {{{"reference", "QuestionnaireResponse/" + answersId(entry)}}};
            body["bodySite"] = fhirConcept("site", entry.payload.site);
            add("Observation", m_ids.of(entry.id), body);
        }
    }

    std::string answersId(const Entry<Hdss>& entry) { return m_ids.of("answers:" + entry.id); }

    /// The score as it was asked: the person's own answer, in the app's words.
    void answers(const Entry<Hdss>& entry)
    {
        const auto item = [](std::string_view id, std::string_view text, ordered_json answer) {
            return ordered_json{{"linkId", id}, {"text", text}, {"answer", {{{"valueCoding", answer["coding"][0]}}}}};
        };
        const auto score = std::to_string(entry.payload.score);
        add("QuestionnaireResponse", answersId(entry),
            {{"questionnaire", fhirUrl("Questionnaire/severity")},
             {"status", entry.corrected ? "amended" : "completed"},
             {"subject", {{"reference", "Patient/" + m_subject}}},
             {"authored", entry.happened.date.iso()},
             {"item",
              {item("site", "Where?", fhirConcept("site", entry.payload.site)),
               item("severity", kSeverityQuestion, fhirConcept("severity", kSeverityCodes, score))}}});
    }

    static ordered_json observed(std::string_view code) { return fhirConcept("observation", kObservationCodes, code); }
    static ordered_json codeOf(const CheckIn&) { return observed("dampness"); }
    static ordered_json codeOf(const Hdss&) { return observed("hdss"); }
    static ordered_json codeOf(const Weighing&) { return observed("sweat-rate"); }
    static ordered_json codeOf(const SideEffect&) { return observed("skin"); }

    static void fill(ordered_json& body, const CheckIn& line)
    {
        body["valueCodeableConcept"] = fhirConcept("level", line.level);
        for (const Circumstance c : allOf<Circumstance>())
            if (line.with.contains(c))
                body["component"].push_back({{"code", fhirConcept("circumstance", c)}, {"valueBoolean", true}});
    }
    static void fill(ordered_json& body, const Hdss& hdss) { body["valueInteger"] = hdss.score; }
    static void fill(ordered_json& body, const Weighing& w)
    {
        body["valueQuantity"] = quantity((w.after.mg - w.before.mg) / w.minutes, "mg/min", "mg/min");
        const auto part = [&](std::string_view code, ordered_json value) {
            body["component"].push_back({{"code", observed(code)}, {"valueQuantity", std::move(value)}});
        };
        part("paper-before", quantity(w.before.mg, "mg", "mg"));
        part("paper-after", quantity(w.after.mg, "mg", "mg"));
        part("duration", quantity(w.minutes, "min", "min"));
    }
    static void fill(ordered_json& body, const SideEffect& effect)
    {
        for (const SkinFinding finding : allOf<SkinFinding>())
            if (effect.skin.contains(finding))
                body["component"].push_back({{"code", fhirConcept("skin", finding)}, {"valueBoolean", true}});
        addNote(body, effect.note);
        if (effect.skin.empty() && !body.contains("note"))
            body["dataAbsentReason"] = {
                {"coding",
                 {{{"system", "http://terminology.hl7.org/CodeSystem/data-absent-reason"}, {"code", "unknown"}}}}};
    }

    /// From the first to the last event of the running session it came from; its day where it was logged afterwards.
    static ordered_json periodOf(const diary::Diary& diary, const Entry<Session>& entry)
    {
        std::optional<long long> first, last;
        if (const auto led = diary.ledSessions.find(entry.payload.bath); led != diary.ledSessions.end())
            for (const BathEvent& event : led->second.events)
                if (event.wallMs > 0) {
                    first = std::min(first.value_or(event.wallMs), event.wallMs);
                    last = std::max(last.value_or(event.wallMs), event.wallMs);
                }
        if (first)
            return {{"start", utcText(*first)}, {"end", utcText(*last)}};
        return {{"start", entry.happened.date.iso()}, {"end", entry.happened.date.iso()}};
    }

    static ordered_json extensionsOf(const Entry<Session>& entry)
    {
        const Session& s = entry.payload;
        ordered_json out{localTime(entry.happened.at)};
        out.push_back({{"url", fhirUrl("StructureDefinition/session-site")}, {"valueCode", token(s.site)}});
        out.push_back({{"url", fhirUrl("StructureDefinition/waveform")}, {"valueCode", token(s.waveform)}});
        if (s.peak)
            out.push_back(quantityExtension("peak-current", s.peak->mA, "mA", "mA"));
        if (s.comfortable)
            out.push_back(quantityExtension("highest-comfortable-current", s.comfortable->mA, "mA", "mA"));
        if (s.charge)
            out.push_back(quantityExtension("charge", s.charge->mAmin, "mA.min", "mA.min"));
        if (s.comfort)
            out.push_back({{"url", fhirUrl("StructureDefinition/comfort")}, {"valueCode", token(*s.comfort)}});
        return out;
    }

    static ordered_json sitesOf(SetOf<DiarySite> sites)
    {
        ordered_json out = ordered_json::array();
        for (const DiarySite site : allOf<DiarySite>())
            if (sites.contains(site))
                out.push_back(fhirConcept("site", site));
        return out;
    }

    /// A drug the person says they use is a MedicationStatement, without a dose; anything else a Procedure.
    void otherTreatment(const Entry<OtherTreatment>& entry)
    {
        const OtherTreatment& t = entry.payload;
        const bool drug = t.what != OtherKind::Other;
        ordered_json what = fhirConcept("other-treatment", t.what);
        if (const std::string name = plainText(t.name); !name.empty())
            what["text"] = name;
        ordered_json period{{"start", t.from.iso()}};
        if (t.until)
            period["end"] = t.until->iso();
        const auto sites = sitesOf(t.sites);
        ordered_json body{{"status", t.until ? "completed" : drug ? "active" : "in-progress"}};
        body[drug ? "medicationCodeableConcept" : "code"] = std::move(what);
        body["subject"] = {{"reference", "Patient/" + m_subject}};
        body[drug ? "effectivePeriod" : "performedPeriod"] = std::move(period);
        if (!sites.empty() && !drug)
            body["bodySite"] = sites;
        if (drug)
            for (const auto& site : sites)
                body["dosage"].push_back({{"site", site}});
        add(drug ? "MedicationStatement" : "Procedure", m_ids.of(entry.id), body);
    }

    void session(const diary::Diary& diary, const Entry<Session>& entry)
    {
        const Session& s = entry.payload;
        ordered_json body{{"extension", extensionsOf(entry)}, {"status", s.completed ? "completed" : "stopped"}};
        body["code"] = fhirConcept("procedure", kProcedureCodes, "tap-water-iontophoresis");
        body["subject"] = {{"reference", "Patient/" + m_subject}};
        body["performedPeriod"] = periodOf(diary, entry);
        body["bodySite"] = sitesOf(treats(s.site));
        for (const SkinFinding finding : allOf<SkinFinding>())
            if (s.skin.contains(finding) && finding != SkinFinding::Fine)
                body["complication"].push_back(fhirConcept("skin", finding));
        addNote(body, s.note);
        add("Procedure", m_ids.of(entry.id), body);
    }
};

} // namespace

std::string fhirBundle(std::span<const Fact> facts, const FhirOptions& options)
{
    return BundleWriter(facts, options).text();
}

} // namespace firstdew::exchange
