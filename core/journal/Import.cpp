#include "journal/Import.h"

#include "codec/FactJson.h"

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
    return codec::factToJson(fact).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

} // namespace

Result<ImportPlan> planImport(const std::vector<Fact>& recorded, const std::vector<codec::Incoming>& incoming)
{
    const bool nameless = std::ranges::any_of(incoming, [](const codec::Incoming& i) { return i.fact.id.empty(); });
    std::map<std::string, Fact> byId;
    std::set<std::string> contents; // costly, and of use only where a fact has no id
    for (const Fact& fact : recorded) {
        byId.emplace(fact.id, fact);
        if (nameless)
            contents.insert(contentOf(fact));
    }
    ImportPlan plan;
    for (const auto& [fact, file, line] : incoming) {
        if (auto kept = codec::canBeKept(fact); !kept)
            return codec::errorAt(file, line, kept.error());
        const auto same = fact.id.empty() ? byId.end() : byId.find(fact.id);
        if (same != byId.end() && same->second != fact)
            return codec::errorAt(
                file, line,
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

Result<Imported> importInto(Journal& journal, const std::vector<codec::Incoming>& incoming)
{
    const auto recorded = journal.readAll();
    if (!recorded)
        return recorded.error();
    auto plan = planImport(*recorded, incoming);
    if (!plan)
        return plan.error();
    Imported out{plan->fresh.size(), plan->known, {}};
    if (plan->fresh.empty())
        return out;
    if (!recorded->empty()) {
        auto kept = journal.keepCopy("before-import");
        if (!kept)
            return kept.error();
        out.kept = std::move(kept.value());
    }
    if (auto added = journal.appendAll(std::move(plan.value().fresh)); !added)
        return added.error();
    return out;
}

} // namespace firstdew::journal
