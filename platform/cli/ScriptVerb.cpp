#include "Verb.h"

#include "protocol/Area.h"
#include "protocol/MayBegin.h"
#include "protocol/Script.h"

#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;
using nlohmann::json;

struct Options {
    std::string site, waveform, age, polarity = "leads", side = "right";
    bool handsUnder = false;
};

Answer describe(const Options& o)
{
    protocol::ScriptRequest q;
    q.site = tokenOption<Site>("--site", o.site);
    q.waveform = tokenOption<Waveform>("--waveform", o.waveform);
    q.age = tokenOption<AgeGroup>("--age", o.age);
    q.swap = tokenOption<PolaritySwap>("--polarity", o.polarity);
    q.firstSide = tokenOption<Side>("--first-side", o.side);
    if (o.handsUnder && q.site != Site::Hands)
        throw Refused{"--hands-under: only both hands in the water leave no hand free; leave the option out for " +
                      o.site};
    q.way = o.handsUnder            ? WayOfWorking::HandsUnder
            : q.site == Site::Hands ? WayOfWorking::Helper
                                    : WayOfWorking::FreeHand;
    const auto limit = protocol::limitFor(protocol::limitQueryOf(q.site, q.waveform, q.age, {}, {}));
    q.limit = limit.limit;
    const auto script = orRefuse(protocol::scriptFor(q));
    Answer answer;
    answer.json = {
        {"steps", json::array()}, {"hold_seconds", script.holdTotal().s}, {"total_seconds", script.total().s}};
    for (const auto& s : script.steps) {
        answer.json["steps"].push_back({{"kind", token(s.kind)},
                                        {"seconds", s.length.s},
                                        {"timed", s.timed},
                                        {"phase", s.phase},
                                        {"polarity", s.polarity},
                                        {"side", s.side ? json(token(*s.side)) : json()},
                                        {"limit_ma", s.limit.mA},
                                        {"prompt", token(s.prompt)}});
        answer.text += fmt::format("{:>5} s  {:<10}{}{}\n", s.length.s, token(s.kind),
                                   s.phase ? fmt::format("  phase {}", s.phase) : "",
                                   s.side ? fmt::format(", {} side", token(*s.side)) : "");
    }
    answer.text += fmt::format("{} min of current at no more than {} mA, about {} min in all\n",
                               script.holdTotal().s / 60, q.limit.mA, (script.total().s + 59) / 60);
    if (limit.binding == protocol::LimitRow::PadUnknown)
        answer.text += fmt::format("the limit is that of pads of {:g} cm², since their size is not known\n",
                                   protocol::kUnknownPad.cm2);
    if (limit.warnAbove)
        answer.text += fmt::format("look at the skin where it was above {:g} mA\n", limit.warnAbove->mA);
    return answer;
}

std::function<Answer()> declare(CLI::App& sub)
{
    auto o = std::make_shared<Options>();
    sub.add_option("--site", o->site, anyOf<Site>())->required();
    sub.add_option("--waveform", o->waveform, "direct or pulsed")->required();
    sub.add_option("--age", o->age, "adult or child")->required();
    sub.add_option("--polarity", o->polarity, "how it is reversed: leads or switch (leads)");
    sub.add_option("--first-side", o->side, "hand-foot: right or left (right)");
    sub.add_flag("--hands-under", o->handsUnder, "both hands in the water, nobody to help");
    return [o] { return describe(*o); };
}

const Verb verb("script", "the script of one session", declare);

// The verb's name in earlier versions, in no list.
const Verb earlier("bath", "the script of one session", [](CLI::App& sub) {
    sub.group("");
    return declare(sub);
});

} // namespace

} // namespace firstdew::cli
