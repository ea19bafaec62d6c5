#include "Verb.h"

#include "protocol/Area.h"
#include "protocol/Sweat.h"

#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;

struct Options {
    std::string site;
    double before = 0, after = 0, minutes = 0, height = 0, weight = 0;
};

std::vector<std::string> warningsOf(const Options& o, const protocol::SweatRate& rate)
{
    std::vector<std::string> out;
    if (o.minutes < 1)
        out.push_back(
            "less than a minute: a small slip of the scale or the clock changes the result much; use five minutes");
    if (rate.aboveFiveMinuteCut && rate.above != *rate.aboveFiveMinuteCut)
        out.push_back("the two published cut-offs disagree here: weigh again on another day, at rest");
    return out;
}

Answer weigh(const Options& o)
{
    const auto site = tokenOption<DiarySite>("--site", o.site);
    const auto body = orRefuse(protocol::bodySurface({o.height}, {o.weight}));
    const auto rate = orRefuse(protocol::sweatRate({site, {o.before}, {o.after}, o.minutes}, body.mosteller));
    const auto warnings = warningsOf(o, rate);
    Answer answer;
    answer.json = {{"mg_min", rate.mgPerMin},
                   {"mg_min_m2", rate.mgPerMinPerM2},
                   {"upper_normal", rate.upperNormal},
                   {"above", rate.above},
                   {"above_100_mg_in_5_min",
                    rate.aboveFiveMinuteCut ? nlohmann::json(*rate.aboveFiveMinuteCut) : nlohmann::json()},
                   {"body_surface_m2", body.mosteller.m2},
                   {"warnings", warnings}};
    answer.text = fmt::format("{}: {:.1f} mg/min, {:.1f} mg/min per m² of body surface ({:.3f} m², Mosteller)\n"
                              "{} the upper limit of healthy people, {:g} mg/min per m²{}\n",
                              o.site, rate.mgPerMin, rate.mgPerMinPerM2, body.mosteller.m2,
                              rate.above ? "above" : "not above", rate.upperNormal,
                              !rate.aboveFiveMinuteCut   ? ""
                              : *rate.aboveFiveMinuteCut ? "; above 100 mg in 5 min"
                                                         : "; not above 100 mg in 5 min");
    for (const auto& w : warnings)
        answer.text += "warning: " + w + "\n";
    answer.text += "A measurement, not a diagnosis: what it means is for your clinician to say.\n";
    return answer;
}

const Verb verb("weigh", "sweat rate by weighing paper", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("--site", o->site, anyOf<DiarySite>())->required();
    sub.add_option("--before-mg", o->before, "paper before, mg")->required();
    sub.add_option("--after-mg", o->after, "paper after, mg")->required();
    sub.add_option("--minutes", o->minutes, "how long it lay")->required();
    sub.add_option("--height", o->height, "cm")->required();
    sub.add_option("--weight", o->weight, "kg")->required();
    return [o] { return weigh(*o); };
});

} // namespace

} // namespace firstdew::cli
