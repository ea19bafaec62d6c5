#include "Verb.h"

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
        answer.text += "keep the file as it is, and restore a back-up or a copy kept beside it\n";
    return answer;
}

Answer verify(const std::string& store)
{
    const auto opened = journal::Journal::openExisting(store);
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

const Verb verb("verify", "check that a store is whole", [](CLI::App& sub) {
    auto store = std::make_shared<std::string>();
    sub.add_option("--store", *store, "the person's store")->required();
    return [store] { return verify(*store); };
});

} // namespace

} // namespace firstdew::cli
