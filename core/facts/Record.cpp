#include "facts/Record.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>

namespace firstdew::facts {

namespace {

/// Follows `corrects` to the first fact of a chain. The count of hops ends a loop, which a damaged file may contain.
std::string_view rootOf(const Fact& fact, const std::unordered_map<std::string_view, const Fact*>& byId)
{
    const Fact* at = &fact;
    for (std::size_t hops = 0; hops <= byId.size() && !at->corrects.empty(); ++hops) {
        const auto next = byId.find(at->corrects);
        if (next == byId.end())
            return at->corrects;
        at = next->second;
    }
    return at->id;
}

} // namespace

Record recordOf(std::span<const Fact> facts, std::string_view person)
{
    std::unordered_map<std::string_view, const Fact*> byId;
    bool anyCorrection = false;
    for (const Fact& f : facts) {
        if (f.person != person)
            continue;
        byId.emplace(f.id, &f);
        anyCorrection = anyCorrection || !f.corrects.empty();
    }

    std::unordered_map<std::string_view, const Fact*> standing; // by root id: the fact that counts
    if (anyCorrection) {
        for (const Fact& f : facts) {
            if (f.person != person)
                continue;
            const Fact*& current = standing[rootOf(f, byId)];
            const auto rank = [](const Fact* p) {
                return std::tuple(!p->corrects.empty(), p->recordedMs, std::string_view(p->id));
            };
            if (current == nullptr || rank(&f) > rank(current))
                current = &f;
        }
    }

    Record record;
    for (const Fact& f : facts) {
        if (f.person != person)
            continue;
        if (anyCorrection && standing[rootOf(f, byId)] != &f)
            continue;
        std::visit(
            [&](const auto& payload) {
                auto& column = record.mutableAll<std::decay_t<decltype(payload)>>();
                column.push_back({f.id, f.happened, f.recordedMs, static_cast<std::size_t>(&f - facts.data()),
                                  !f.corrects.empty(), payload});
            },
            f.payload);
    }
    const auto sortColumn = [](auto& column) {
        std::stable_sort(column.begin(), column.end(), [](const auto& a, const auto& b) {
            return std::tie(a.happened, a.recordedMs) < std::tie(b.happened, b.recordedMs);
        });
    };
    forEachPayload([&](auto kind) { sortColumn(record.mutableAll<typename decltype(kind)::type>()); });
    return record;
}

} // namespace firstdew::facts
