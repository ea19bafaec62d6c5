#include "Recording.h"

#include "diary/Diary.h"
#include "protocol/CareSheets.h"
#include "protocol/Limits.h"

#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;

struct Options {
    std::string store, date, site, waveform, at, person, comfort, note;
    std::string completed = "yes";
    std::vector<std::string> skin;
    std::optional<double> peak, comfortable;
    bool again = false;
    bool newPerson = false;
};

Session sessionOf(const Options& o)
{
    Session s;
    s.site = tokenOption<Site>("--site", o.site);
    s.waveform = tokenOption<Waveform>("--waveform", o.waveform);
    if (o.peak)
        s.peak = currentOption("--peak", *o.peak);
    if (o.comfortable)
        s.comfortable = currentOption("--comfortable", *o.comfortable);
    if (s.peak && s.comfortable && *s.comfortable > *s.peak)
        throw Refused{
            fmt::format("--comfortable: {} mA is above the peak of {} mA; the peak is the highest reading of all",
                        s.comfortable->mA, s.peak->mA)};
    if (o.completed != "yes" && o.completed != "no")
        throw Usage{"--completed: '" + o.completed + "' is neither yes nor no"};
    s.completed = o.completed == "yes";
    if (!o.comfort.empty())
        s.comfort = tokenOption<Comfort>("--comfort", o.comfort);
    for (const auto& w : o.skin)
        s.skin.insert(tokenOption<SkinFinding>("--skin", w));
    s.note = o.note;
    return s;
}

/// A second session of a site on one day is mostly a slip of the finger.
void refuseTwice(const diary::Diary& diary, const Session& s)
{
    for (const auto& entry : diary.sessions)
        if (entry.happened.date == diary.today && shareSkin(entry.payload.site, s.site))
            throw Refused{fmt::format(
                "--date: a session at {} on {} is logged already ({}); if there really was a second one, say --again",
                token(entry.payload.site), diary.today.iso(), entry.id)};
}

/// What the trade says of a session that did happen: kept all the same, but not in silence.
std::vector<std::string> cautions(const diary::Diary& diary, const Session& s)
{
    protocol::LimitQuery query{
        s.site, s.waveform, protocol::ageGroupOn(diary.person ? diary.person->birth : std::nullopt, diary.today),
        {},     {},         {}};
    query.sheets = protocol::sheetsBinding(diary, s.site);
    const auto limit = protocol::limitFor(query);
    if (!limit.allowed)
        return {"this waveform is not for that site: use pulsed current at the armpits, or do not treat them"};
    if (s.peak && *s.peak > limit.limit)
        return {fmt::format(
            "{} mA was above the limit of {} mA here: stay below it next time, and look at the skin tomorrow",
            s.peak->mA, limit.limit.mA)};
    return {};
}

Answer session(const Options& o)
{
    const Session s = sessionOf(o);
    const LocalTime happened = happenedOption(o.date, o.at, {18 * 60});
    const auto facts = factsIn(o.store);
    const Who who = personToRecord(facts, o.person, o.newPerson);
    const auto known = diary::readDiary(facts, who.id, happened.date);
    if (!o.again)
        refuseTwice(known, s);
    Answer answer;
    answer.json["warnings"] = cautions(known, s);
    const std::string id = record(o.store, {"", who.id, happened, nowMs(), "", s}, who.newName);
    answer.json["id"] = id;
    answer.text = fmt::format("session at {} on {}: recorded as {}\n", o.site, happened.date.iso(), id);
    for (const std::string line : answer.json["warnings"])
        answer.text += line + "\n";
    return answer;
}

const Verb verb("session", "log a session that was done", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("--store", o->store, "the person's store")->required();
    sub.add_option("--date", o->date, "day, YYYY-MM-DD")->required();
    sub.add_option("--site", o->site, anyOf<Site>())->required();
    sub.add_option("--waveform", o->waveform, "direct or pulsed")->required();
    sub.add_option("--peak", o->peak, "highest meter reading, mA");
    sub.add_option("--comfortable", o->comfortable, "highest comfortable reading, mA");
    sub.add_option("--completed", o->completed, "yes or no (yes)");
    sub.add_option("--comfort", o->comfort, anyOf<Comfort>());
    sub.add_option("--skin", o->skin, anyOf<SkinFinding>())->delimiter(',');
    sub.add_option("--note", o->note, "a line of your own");
    sub.add_option("--at", o->at, "time of day HH:MM (18:00)");
    sub.add_option("--person", o->person, "whose record, where the store holds several");
    sub.add_flag("--new-person", o->newPerson, "the person named is new to this store");
    sub.add_flag("--again", o->again, "a second session of the day at this site");
    return [o] { return session(*o); };
});

} // namespace

} // namespace firstdew::cli
