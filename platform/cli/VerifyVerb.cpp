#include "Verb.h"

#include "journal/Repair.h"

#include <algorithm>
#include <fmt/format.h>
#include <memory>
#include <set>

namespace firstdew::cli {

namespace {

using namespace facts;

Answer answerOf(const journal::Health& health)
{
    Answer answer;
    answer.refused = !health.ok;
    answer.json = {{"ok", health.ok}, {"facts", health.facts}, {"problems", health.problems}};
    answer.text = fmt::format("{}: {} facts\n", health.ok ? "whole" : "damaged", health.facts);
    for (const auto& line : health.problems)
        answer.text += "  " + line + "\n";
    if (!health.ok)
        answer.text += "keep a copy of the file; --repair saves what can be read of it, or restore a back-up\n";
    return answer;
}

Answer verify(const std::string& store)
{
    const auto opened = journal::Journal::openToRead(store);
    if (!opened && opened.error().code == "store-damaged")
        return answerOf({false, 0, {opened.error().message}});
    if (!opened)
        throw Refused{opened.error().input + ": " + opened.error().message};
    Answer answer = answerOf(opened->check());
    if (answer.refused)
        return answer;
    std::set<std::string> persons;
    nlohmann::json kinds = nlohmann::json::object();
    for (const auto& fact : orRefuse(opened->readAll())) {
        persons.insert(fact.person);
        auto& count = kinds[std::string(kindOf(fact.payload))];
        count = count.is_null() ? 1 : count.get<int>() + 1;
    }
    answer.json["persons"] = persons.size();
    answer.json["kinds"] = kinds;
    return answer;
}

/// The store as it is after mending what can be mended.
Answer mend(const std::string& store)
{
    const auto repaired = orRefuse(journal::repair(store));
    Answer answer = verify(store);
    if (repaired.aside.empty())
        return answer;
    answer.json["repaired"] = {{"from_copy", repaired.fromCopy}, {"aside", repaired.aside.string()}};
    answer.text =
        fmt::format(
            "{} facts saved, {} of them out of a copy; the damaged file is kept as {}. A back-up may hold more\n",
            repaired.facts, repaired.fromCopy, repaired.aside.string()) +
        answer.text;
    return answer;
}

const Verb verb("verify", "check that a store is whole", [](CLI::App& sub) {
    struct Options {
        std::string store;
        bool repair = false;
    };
    auto o = std::make_shared<Options>();
    sub.add_option("--store", o->store, "the person's store")->required();
    sub.add_flag("--repair", o->repair, "save what can be read of a damaged store into a new one; the old one is kept");
    return [o] { return o->repair ? mend(o->store) : verify(o->store); };
});

} // namespace

} // namespace firstdew::cli
