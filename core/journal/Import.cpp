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

Error recordedMeanwhile(const std::string& id)
{
    return {"store-busy", id, "was recorded by another program meanwhile; nothing was added, try again"};
}

Result<Imported> added(Journal& journal, ImportPlan plan, std::filesystem::path copy)
{
    Imported out{plan.fresh.size(), plan.known, std::move(copy)};
    if (plan.fresh.empty())
        return out;
    auto ids = journal.appendAll(std::move(plan.fresh));
    if (!ids && ids.error().code == "id-known")
        return recordedMeanwhile(ids.error().input);
    if (!ids)
        return ids.error();
    return out;
}

} // namespace

Result<ImportPlan> planImport(const std::vector<Fact>& recorded, std::vector<codec::Incoming> incoming,
                              Doubtful doubtful)
{
    for (auto& item : incoming)
        codec::cleanTexts(item.fact);
    auto assigned = assignPersons(recorded, std::move(incoming), doubtful);
    if (!assigned)
        return assigned.error();
    return planFor(recorded, assigned.value());
}

Result<Imported> importInto(Journal& journal, std::vector<codec::Incoming> incoming, Doubtful doubtful)
{
    ImportPlan plan;
    bool holdsFacts = false;
    {
        const auto recorded = journal.readAll();
        if (!recorded)
            return recorded.error();
        auto planned = planImport(*recorded, std::move(incoming), doubtful);
        if (!planned)
            return planned.error();
        plan = std::move(planned.value());
        holdsFacts = !recorded->empty();
    }
    std::filesystem::path copy;
    if (holdsFacts && !plan.fresh.empty()) {
        auto kept = journal.keepCopy("before-import");
        if (!kept)
            return kept.error();
        copy = std::move(kept.value());
    }
    return added(journal, std::move(plan), std::move(copy));
}

Result<Imported> importPlanned(Journal& journal, ImportPlan plan)
{
    const auto recorded = journal.readAll();
    if (!recorded)
        return recorded.error();
    if (!recorded->empty())
        return recordedMeanwhile(recorded->front().id);
    return added(journal, std::move(plan), {});
}

} // namespace firstdew::journal
