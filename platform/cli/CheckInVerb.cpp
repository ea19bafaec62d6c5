#include "Recording.h"

#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;

struct Options {
    std::string store, date, site, level, at, person;
    std::vector<std::string> with;
    bool newPerson = false;
};

Answer checkIn(const Options& o)
{
    CheckIn line{tokenOption<DiarySite>("--site", o.site), tokenOption<Level>("--level", o.level), {}};
    for (const auto& w : o.with)
        line.with.insert(tokenOption<Circumstance>("--with", w));
    const LocalTime happened = happenedOption(o.date, o.at, {12 * 60});
    const Who who = personToRecord(factsIn(o.store), o.person, o.newPerson);
    const std::string id = record(o.store, {"", who.id, happened, nowMs(), "", line}, who.newName);
    return {fmt::format("{} {} on {}: recorded as {}\n", o.site, o.level, happened.date.iso(), id), {{"id", id}}};
}

const Verb verb("checkin", "record one diary line: how damp a site is today", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("--store", o->store, "the person's store")->required();
    sub.add_option("--date", o->date, "day, YYYY-MM-DD")->required();
    sub.add_option("--site", o->site, anyOf<DiarySite>())->required();
    sub.add_option("--level", o->level, anyOf<Level>())->required();
    sub.add_option("--with", o->with, "circumstances: " + anyOf<Circumstance>())->delimiter(',');
    sub.add_option("--at", o->at, "time of day HH:MM (12:00)");
    sub.add_option("--person", o->person, "whose record, where the store holds several");
    sub.add_flag("--new-person", o->newPerson, "the person named is new to this store");
    return [o] { return checkIn(*o); };
});

} // namespace

} // namespace firstdew::cli
