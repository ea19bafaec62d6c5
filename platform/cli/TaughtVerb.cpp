#include "Recording.h"

#include "diary/Diary.h"
#include "protocol/TeachBack.h"

#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;
using nlohmann::json;

struct Options {
    std::string store, site, date, who, waveform, person;
    std::vector<std::string> ticks;
    std::optional<double> level;
    bool newPerson = false;
};

Taught taughtOf(const Options& o)
{
    if (o.waveform.empty())
        throw Usage{"--waveform: say with which current, direct or pulsed"};
    Taught taught{tokenOption<Site>("--site", o.site), o.who, {}, tokenOption<Waveform>("--waveform", o.waveform), {}};
    for (const auto& tick : o.ticks)
        taught.ticks.insert(tokenOption<TaughtTick>("--ticks", tick));
    if (o.level)
        taught.level = currentOption("--level", *o.level);
    return taught;
}

Answer add(const Options& o)
{
    if (o.date.empty())
        throw Usage{"--date: say on which day the session was"};
    const Taught taught = taughtOf(o);
    const LocalTime happened = happenedOption(o.date, "", {18 * 60});
    const auto facts = factsIn(o.store);
    const Who who = personToRecord(facts, o.person, o.newPerson);
    // A level is agreed for the sessions that follow, so the limits of today count.
    if (const auto may = protocol::checkTaught(diary::readDiary(facts, who.id, localNow().date), taught); !may) {
        const Error& error = may.error();
        throw Refused{error.code == "taught-invalid" ? error.input + " " + error.message : error.message};
    }
    const std::string id = record(o.store, {"", who.id, happened, nowMs(), "", taught}, who.newName);
    return {fmt::format("taught session at {} on {}: recorded as {}\n", o.site, happened.date.iso(), id), {{"id", id}}};
}

Answer list(const Options& o)
{
    const auto facts = factsIn(o.store, false);
    const auto diary = diary::readDiary(facts, personOf(facts, o.person), localNow().date);
    Answer answer;
    answer.json = {{"taught", json::array()}};
    for (const auto& e : diary.taught) {
        const Taught& t = e.payload;
        std::vector<std::string> ticks;
        for (const TaughtTick tick : allOf<TaughtTick>())
            if (t.ticks.contains(tick))
                ticks.emplace_back(token(tick));
        answer.json["taught"].push_back({{"id", e.id},
                                         {"date", e.happened.date.iso()},
                                         {"site", token(t.site)},
                                         {"who", t.who},
                                         {"ticks", ticks},
                                         {"waveform", token(t.waveform)},
                                         {"level_ma", t.level ? json(t.level->mA) : json()}});
        answer.text +=
            fmt::format("{}  {} by {}, {}{}: {}\n", e.happened.date.iso(), token(t.site), oneLine(t.who),
                        token(t.waveform), t.level ? fmt::format(", {:g} mA agreed", t.level->mA) : std::string(),
                        ticks.empty() ? std::string("nothing ticked") : fmt::format("{}", fmt::join(ticks, ", ")));
    }
    if (diary.taught.empty())
        answer.text = "no taught session is recorded\n";
    return answer;
}

const Verb verb("taught", "record that somebody watched and taught a session, or list them", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("--store", o->store, "the person's store")->required();
    sub.add_option("--site", o->site, anyOf<Site>() + "; without it, those recorded are listed");
    sub.add_option("--date", o->date, "day of the session, YYYY-MM-DD");
    sub.add_option("--who", o->who, "who watched, by name or role");
    sub.add_option("--ticks", o->ticks, anyOf<TaughtTick>())->delimiter(',');
    sub.add_option("--waveform", o->waveform, "direct or pulsed");
    sub.add_option("--level", o->level, "level agreed to begin with at home, mA; at most the limit");
    sub.add_option("--person", o->person, "whose record, where the store holds several");
    sub.add_flag("--new-person", o->newPerson, "the person named is new to this store");
    return [o] { return o->site.empty() ? list(*o) : add(*o); };
});

} // namespace

} // namespace firstdew::cli
