#include "journal/Incoming.h"

#include "journal/FactJson.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <nlohmann/json.hpp>
#include <set>

namespace firstdew::journal {

namespace {

/// All of a fact but its id and the moment of recording, as one text.
std::string contentOf(Fact fact)
{
    fact.id.clear();
    fact.recordedMs = 0;
    return factToJson(fact).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

} // namespace

Error errorAt(const std::string& file, int line, const Error& cause)
{
    std::string where = fmt::format("{}, line {}", file, line);
    if (!cause.input.empty())
        where += ", " + cause.input;
    return {cause.code, where, cause.message};
}

Result<ImportPlan> planImport(const std::vector<Fact>& recorded, const std::vector<Incoming>& incoming)
{
    const bool nameless = std::ranges::any_of(incoming, [](const Incoming& i) { return i.fact.id.empty(); });
    std::map<std::string, Fact> byId;
    std::set<std::string> contents; // costly, and of use only where a fact has no id
    for (const Fact& fact : recorded) {
        byId.emplace(fact.id, fact);
        if (nameless)
            contents.insert(contentOf(fact));
    }
    ImportPlan plan;
    for (const auto& [fact, file, line] : incoming) {
        if (auto kept = canBeKept(fact); !kept)
            return errorAt(file, line, kept.error());
        const auto same = fact.id.empty() ? byId.end() : byId.find(fact.id);
        if (same != byId.end() && same->second != fact)
            return errorAt(file, line,
                           {"id-known", "id",
                            fmt::format("{} is recorded already with another content; a correction is a new fact that "
                                        "names it under corrects",
                                        fact.id)});
        const bool seen = fact.id.empty() ? contents.contains(contentOf(fact)) : same != byId.end();
        if (seen) {
            ++plan.known;
            continue;
        }
        if (!fact.id.empty())
            byId.emplace(fact.id, fact);
        if (nameless)
            contents.insert(contentOf(fact));
        plan.fresh.push_back(fact);
    }
    return plan;
}

} // namespace firstdew::journal
