#include "journal/Import.h"

#include "codec/CleanText.h"
#include "codec/FactJson.h"
#include "facts/Record.h"

#include <algorithm>
#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <unordered_map>

namespace firstdew::journal {

namespace {

/// All of a fact but its id and the moment of recording, as one text.
std::string contentOf(Fact fact)
{
    fact.id.clear();
    fact.recordedMs = 0;
    return codec::factToJson(fact).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

/// What is recorded or read already, by id.
using ById = std::unordered_map<std::string_view, const Fact*>;

/// The line of a fact whose corrections lead back to itself, if there is one. Each fact is passed once.
std::optional<Error> circleIn(const std::vector<codec::Incoming>& incoming, const ById& byId)
{
    std::unordered_map<std::string_view, std::size_t> passed; // by the number of the walk that came by
    std::size_t walk = 0;
    for (const auto& [fact, file, line] : incoming) {
        ++walk;
        const Fact* at = &fact;
        while (!at->id.empty() && !at->corrects.empty()) {
            const auto [known, fresh] = passed.emplace(at->id, walk);
            if (!fresh && known->second == walk)
                return codec::errorAt(
                    file, line,
                    {"corrects-circle", "corrects",
                     fmt::format("leads from {} round to itself; a correction names an earlier fact", fact.id)});
            const auto next = byId.find(at->corrects);
            if (!fresh || next == byId.end())
                break;
            at = next->second;
        }
    }
    return std::nullopt;
}

/// A correction of another kind would make the fact it names disappear.
std::optional<Error> strayIn(const std::vector<codec::Incoming>& incoming, const ById& byId)
{
    for (const auto& [fact, file, line] : incoming) {
        const auto original = byId.find(fact.corrects);
        if (fact.corrects.empty() || original == byId.end() || mayCorrect(fact, *original->second))
            continue;
        return codec::errorAt(file, line,
                              {"corrects-other", "corrects",
                               fmt::format("names a {}, which a {} cannot correct; withdraw it and add a new fact",
                                           kindOf(original->second->payload), kindOf(fact.payload))});
    }
    return std::nullopt;
}

Error otherContent(const codec::Incoming& item)
{
    return codec::errorAt(item.file, item.line,
                          {"id-known", "id",
                           fmt::format("{} is recorded already with another content; a correction is a new fact that "
                                       "names it under corrects",
                                       item.fact.id)});
}

Result<ImportPlan> planFor(const std::vector<Fact>& recorded, std::vector<codec::Incoming>& incoming)
{
    const bool nameless = std::ranges::any_of(incoming, [](const codec::Incoming& i) { return i.fact.id.empty(); });
    ById byId;
    byId.reserve(recorded.size() + incoming.size());
    std::set<std::string> contents; // costly, and of use only where a fact has no id
    for (const Fact& fact : recorded) {
        byId.emplace(fact.id, &fact);
        if (nameless)
            contents.insert(contentOf(fact));
    }
    ImportPlan plan;
    std::vector<codec::Incoming*> fresh;
    for (auto& item : incoming) {
        const Fact& fact = item.fact;
        if (auto kept = codec::canBeKept(fact); !kept)
            return codec::errorAt(item.file, item.line, kept.error());
        if (const auto contradiction = codec::contradictionIn(fact.payload))
            return codec::errorAt(item.file, item.line, *contradiction);
        const auto same = fact.id.empty() ? byId.end() : byId.find(fact.id);
        if (same != byId.end() && *same->second != fact)
            return otherContent(item);
        if (fact.id.empty() ? contents.contains(contentOf(fact)) : same != byId.end()) {
            ++plan.known;
            continue;
        }
        if (!fact.id.empty())
            byId.emplace(fact.id, &fact);
        if (nameless)
            contents.insert(contentOf(fact));
        fresh.push_back(&item);
    }
    if (auto circle = circleIn(incoming, byId))
        return *circle;
    if (auto stray = strayIn(incoming, byId))
        return *stray;
    plan.fresh.reserve(fresh.size());
    for (codec::Incoming* item : fresh)
        plan.fresh.push_back(std::move(item->fact));
    return plan;
}

} // namespace

Result<ImportPlan> planImport(const std::vector<Fact>& recorded, const std::vector<codec::Incoming>& incoming,
                              Doubtful doubtful)
{
    auto cleaned = incoming;
    for (auto& item : cleaned)
        codec::cleanTexts(item.fact);
    auto assigned = assignPersons(recorded, std::move(cleaned), doubtful);
    if (!assigned)
        return assigned.error();
    return planFor(recorded, assigned.value());
}

Result<Imported> importInto(Journal& journal, const std::vector<codec::Incoming>& incoming, Doubtful doubtful)
{
    const auto recorded = journal.readAll();
    if (!recorded)
        return recorded.error();
    auto plan = planImport(*recorded, incoming, doubtful);
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
    auto added = journal.appendAll(std::move(plan.value().fresh));
    if (!added && added.error().code == "id-known")
        return Error{"store-busy", added.error().input,
                     "was recorded by another program meanwhile; nothing was added, try again"};
    if (!added)
        return added.error();
    return out;
}

} // namespace firstdew::journal
