#include "TraceFile.h"
#include "Verb.h"

#include "bath/Dose.h"
#include "protocol/Area.h"
#include "protocol/MayBegin.h"

#include <cmath>
#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;
using bath::Dose;
using bath::TraceDoubt;
using nlohmann::json;

struct Options {
    std::string file, site, waveform, age, firstSide = "right";
    std::optional<double> height, weight, pad;
};

struct Question {
    Site site{};
    Waveform waveform{};
    AgeGroup age{};
    std::optional<protocol::BodySurface> body;
    std::optional<SquareCentimetres> contact;
    protocol::LimitAnswer limit;
};

Question questionOf(const Options& o)
{
    Question q;
    q.site = tokenOption<Site>("--site", o.site);
    q.waveform = tokenOption<Waveform>("--waveform", o.waveform);
    q.age = tokenOption<AgeGroup>("--age", o.age);
    if (o.height.has_value() != o.weight.has_value())
        throw Usage{"--height and --weight: the body surface needs both; give both or neither"};
    if (o.height)
        q.body = orRefuse(protocol::bodySurface({*o.height}, {*o.weight}));
    if (o.pad && !(*o.pad >= 1 && *o.pad <= 2000))
        throw Refused{fmt::format("--pad-area: {:g} cm² is not between 1 and 2000; give the area of one pad", *o.pad)};
    const auto body = q.body ? std::optional(q.body->cautious()) : std::nullopt;
    const auto pad = o.pad ? std::optional(SquareCentimetres{*o.pad}) : std::nullopt;
    q.contact = protocol::contactArea(q.site, q.age, body, pad);
    q.limit = protocol::limitFor(protocol::limitQueryOf(q.site, q.waveform, q.age, body, pad));
    if (!q.limit.allowed)
        throw Refused{"--waveform: direct current is not for armpits, so there is no limit to judge by; stop, look at "
                      "the skin, and treat them with pulsed current only"};
    return q;
}

std::string doubtText(TraceDoubt doubt, Site site)
{
    const auto plan = protocol::phasesFor(site);
    switch (doubt) {
    case TraceDoubt::BeginsAboveZero: return "the first reading is above zero: what flowed before it is not counted";
    case TraceDoubt::EndsAboveZero:
        return "the last reading is above zero: lower to zero and switch the machine off before lifting out; what "
               "flowed "
               "after it is not counted";
    case TraceDoubt::LongGap:
        return "readings lie more than two minutes apart: a straight line is supposed between them; read the meter "
               "every "
               "minute";
    case TraceDoubt::TooManyPhases:
        return fmt::format("the current was at zero more often than the {} phases of this site have it: which limb and "
                           "polarity got the charge is supposed, not known",
                           plan.phases);
    case TraceDoubt::TooFewPhases:
        return fmt::format(
            "fewer than the {} phases of this site: some skin got one polarity only; the session was not "
            "completed",
            plan.phases);
    case TraceDoubt::NoSwap:
        return fmt::format("current flowed on well beyond the {} min of a phase; lower to zero and reverse polarity "
                           "between phases",
                           plan.hold.s / 60);
    }
    return {};
}

std::vector<std::string> warningsOf(const Question& q, const Dose& dose, const std::vector<TraceDoubt>& doubts)
{
    std::vector<std::string> out;
    const double limit = q.limit.limit.mA;
    const std::string_view why = q.limit.binding == protocol::LimitRow::Density      ? " for this area"
                                 : q.limit.binding == protocol::LimitRow::PadUnknown ? " for pads of unknown size"
                                                                                     : "";
    if (!dose.overLimit.empty())
        out.push_back(fmt::format("{:g} mA was above the limit of {:g} mA{}: stay below it, lower at once when it is "
                                  "passed, and look at the skin tomorrow",
                                  dose.peak.mA, limit, why));
    if (dose.peakDensity && *dose.peakDensity > protocol::kDensityCeiling)
        out.push_back(fmt::format("{:.2f} mA/cm² was above {:g} mA/cm², the most that is ever used: aim lower, or use "
                                  "larger pads",
                                  *dose.peakDensity, protocol::kDensityCeiling));
    else if (dose.peakDensity && *dose.peakDensity > protocol::kDensityWarning)
        out.push_back(
            fmt::format("{:.2f} mA/cm² was above the {:g} mA/cm² that intact skin is known to bear: aim lower, "
                        "and look at the skin tomorrow",
                        *dose.peakDensity, protocol::kDensityWarning));
    for (const TraceDoubt d : doubts)
        out.push_back(doubtText(d, q.site));
    if (!q.contact)
        out.push_back(q.site == Site::Armpits ? "no density: the area of a pad is not known (--pad-area)"
                                              : "no density: height and weight are not known (--height, --weight)");
    return out;
}

json doseJson(const Question& q, const Dose& dose)
{
    json j{{"charge_mC", bath::inMillicoulombs(dose.charge).mC},
           {"charge_mA_min", dose.charge.mAmin},
           {"by_phase", json::array()},
           {"net_by_limb_mA_min", json::object()},
           {"peak_ma", dose.peak.mA},
           {"limit_ma", q.limit.limit.mA},
           {"over_limit", json::array()},
           {"area_cm2", q.contact ? json(q.contact->cm2) : json()},
           {"peak_density_ma_cm2", dose.peakDensity ? json(*dose.peakDensity) : json()},
           {"body_surface_m2", json()}};
    for (const auto& p : dose.byPhase)
        j["by_phase"].push_back({{"phase", p.phase},
                                 {"polarity", p.polarity},
                                 {"side", p.side ? json(token(*p.side)) : json()},
                                 {"seconds", p.length.s},
                                 {"charge_mA_min", p.charge.mAmin},
                                 {"charge_mC", bath::inMillicoulombs(p.charge).mC},
                                 {"peak_ma", p.peak.mA}});
    for (const auto& l : dose.byLimb)
        j["net_by_limb_mA_min"][std::string(token(l.limb))] = l.net().mAmin;
    for (const auto& o : dose.overLimit)
        j["over_limit"].push_back({{"from", o.fromSecond}, {"to", o.toSecond}, {"peak", o.peak.mA}});
    if (q.body)
        j["body_surface_m2"] = {{"mosteller", q.body->mosteller.m2}, {"du_bois", q.body->duBois.m2}};
    return j;
}

std::string areaText(const Question& q, const Dose& dose)
{
    std::string out;
    if (q.body)
        out += fmt::format("body surface {:.3f} m² (Mosteller), {:.3f} m² (Du Bois); one hand {:.0f} or {:.0f} cm²\n",
                           q.body->mosteller.m2, q.body->duBois.m2, protocol::handArea(q.body->mosteller, q.age).cm2,
                           protocol::handArea(q.body->duBois, q.age).cm2);
    if (q.contact && dose.peakDensity)
        out += fmt::format("peak density {:.3f} mA/cm² over {:.0f} cm²\n", *dose.peakDensity, q.contact->cm2);
    return out;
}

std::string doseText(const Question& q, const Dose& dose)
{
    std::string out = fmt::format("charge {:.1f} mA·min ({:.0f} mC), peak {:g} mA, limit {:g} mA\n", dose.charge.mAmin,
                                  bath::inMillicoulombs(dose.charge).mC, dose.peak.mA, q.limit.limit.mA);
    for (const auto& p : dose.byPhase)
        out += fmt::format("  phase {}{}: {:.1f} mA·min in {} min {:02} s, peak {:g} mA, polarity {:+d}\n", p.phase,
                           p.side ? fmt::format(" ({} side)", token(*p.side)) : "", p.charge.mAmin, p.length.s / 60,
                           p.length.s % 60, p.peak.mA, p.polarity);
    for (const auto& l : dose.byLimb)
        out += fmt::format("  {}: {:.1f} mA·min in, {:.1f} out, net {:+.1f}\n", token(l.limb), l.in.mAmin, l.out.mAmin,
                           l.net().mAmin);
    for (const auto& o : dose.overLimit)
        out += fmt::format("  above the limit from {:.0f} s to {:.0f} s, peak {:g} mA\n", o.fromSecond, o.toSecond,
                           o.peak.mA);
    return out + areaText(q, dose);
}

Answer dose(const Options& o)
{
    const Question q = questionOf(o);
    const auto trace = readTrace(o.file);
    const auto readings = bath::readingsOf(trace, q.site, tokenOption<Side>("--first-side", o.firstSide));
    const Dose dose = bath::doseOf(readings, q.site, q.limit.limit, q.contact);
    const auto warnings = warningsOf(q, dose, bath::doubtsOf(readings, q.site));
    Answer answer{doseText(q, dose), doseJson(q, dose)};
    answer.json["warnings"] = warnings;
    for (const auto& w : warnings)
        answer.text += "warning: " + w + "\n";
    return answer;
}

const Verb verb("dose", "what a session's meter readings come to", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("TRACE", o->file, "CSV with the columns second,milliamp")->required();
    sub.add_option("--site", o->site, anyOf<Site>())->required();
    sub.add_option("--waveform", o->waveform, "direct or pulsed")->required();
    sub.add_option("--age", o->age, "adult or child")->required();
    sub.add_option("--height", o->height, "cm");
    sub.add_option("--weight", o->weight, "kg");
    sub.add_option("--pad-area", o->pad, "area of one pad, cm²");
    sub.add_option("--first-side", o->firstSide, "of hand + foot: right or left (right)");
    return [o] { return dose(*o); };
});

} // namespace

} // namespace firstdew::cli
