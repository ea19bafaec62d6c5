#include "Recording.h"

#include "diary/Diary.h"

#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;
using nlohmann::json;

struct Options {
    std::string store, what, name, from, until, person;
    std::vector<std::string> sites;
    bool newPerson = false;
};

Answer add(const Options& o)
{
    if (o.from.empty())
        throw Usage{"--from: say on which day it began"};
    OtherTreatment other{tokenOption<OtherKind>("--what", o.what), o.name, {}, dateOption("--from", o.from), {}};
    for (const auto& site : o.sites)
        other.sites.insert(tokenOption<DiarySite>("--site", site));
    if (!o.until.empty())
        other.until = dateOption("--until", o.until);
    if (other.until && *other.until < other.from)
        throw Usage{"--until: " + o.until + " is before --from " + o.from + "; turn them round"};
    const Who who = personToRecord(factsIn(o.store), o.person, o.newPerson);
    const std::string id = record(o.store, {"", who.id, localNow(), nowMs(), "", other}, who.newName);
    return {fmt::format("{} from {}: recorded as {}\n", o.what, other.from.iso(), id), {{"id", id}}};
}

Answer list(const Options& o)
{
    const auto facts = factsIn(o.store, false);
    const auto diary = diary::readDiary(facts, personOf(facts, o.person), localNow().date);
    Answer answer;
    answer.json = {{"treatments", json::array()}};
    for (const auto& e : diary.otherTreatments) {
        const OtherTreatment& t = e.payload;
        json sites = json::array();
        std::string where;
        for (const DiarySite site : allOf<DiarySite>())
            if (t.sites.contains(site)) {
                sites.push_back(token(site));
                where += fmt::format(" {}", token(site));
            }
        answer.json["treatments"].push_back({{"id", e.id},
                                             {"what", token(t.what)},
                                             {"name", t.name},
                                             {"sites", sites},
                                             {"from", t.from.iso()},
                                             {"until", t.until ? json(t.until->iso()) : json()}});
        answer.text +=
            fmt::format("{} to {:<10}  {} {}{}\n", t.from.iso(), t.until ? t.until->iso() : "now", token(t.what),
                        oneLine(t.name), where.empty() ? std::string() : " (" + where.substr(1) + ")");
    }
    if (diary.otherTreatments.empty())
        answer.text = "no other treatment is recorded\n";
    return answer;
}

const Verb verb("other", "record another treatment that dries the skin, or list them", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("--store", o->store, "the person's store")->required();
    sub.add_option("--what", o->what, anyOf<OtherKind>() + "; without it, those recorded are listed");
    sub.add_option("--name", o->name, "what it is called");
    sub.add_option("--site", o->sites, anyOf<DiarySite>() + " (everywhere)")->delimiter(',');
    sub.add_option("--from", o->from, "first day, YYYY-MM-DD");
    sub.add_option("--until", o->until, "last day on which it works (it goes on)");
    sub.add_option("--person", o->person, "whose record, where the store holds several");
    sub.add_flag("--new-person", o->newPerson, "the person named is new to this store");
    return [o] { return o->what.empty() ? list(*o) : add(*o); };
});

} // namespace

} // namespace firstdew::cli
