#include "facts/Record.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>

namespace firstdew::facts {

namespace {

using ById = std::unordered_map<std::string_view, const Fact*>;

/// Finds the first fact of each chain of corrections. It follows every fact once, so that long chains stay cheap. A
/// circle, which only a damaged file can contain, counts as one chain, and its smallest id is the root.
class Roots {
public:
    explicit Roots(const ById& byId) : m_byId(byId) {}

    /// The first fact of the chain, where it is there.
    [[nodiscard]] const Fact* first(const Fact& fact)
    {
        const auto found = m_byId.find(of(fact));
        return found == m_byId.end() ? nullptr : found->second;
    }

    std::string_view of(const Fact& fact)
    {
        m_path.clear();
        const Fact* at = &fact;
        std::string_view root;
        while (root.empty()) {
            const auto [known, fresh] = m_root.try_emplace(at->id);
            if (!fresh) {
                root = known->second.empty() ? circleFrom(*at) : known->second;
                break;
            }
            m_path.push_back(at);
            const auto next = m_byId.find(at->corrects);
            if (at->corrects.empty())
                root = at->id;
            else if (next == m_byId.end())
                root = at->corrects;
            else
                at = next->second;
        }
        for (const Fact* passed : m_path)
            m_root[passed->id] = root;
        return root;
    }

private:
    const ById& m_byId;
    std::unordered_map<std::string_view, std::string_view> m_root; ///< empty while its chain is followed
    std::vector<const Fact*> m_path;

    [[nodiscard]] std::string_view circleFrom(const Fact& entry) const
    {
        std::string_view least = entry.id;
        for (const Fact* at = m_byId.at(entry.corrects); at->id != entry.id; at = m_byId.at(at->corrects))
            least = std::min(least, std::string_view(at->id));
        return least;
    }
};

} // namespace

bool mayCorrect(const Fact& correction, const Fact& original)
{
    return correction.payload.index() == original.payload.index() ||
           std::holds_alternative<Retraction>(correction.payload) ||
           std::holds_alternative<Retraction>(original.payload);
}

Record recordOf(std::span<const Fact> facts, std::string_view person)
{
    ById byId;
    bool anyCorrection = false;
    for (const Fact& f : facts) {
        if (f.person != person)
            continue;
        byId.emplace(f.id, &f);
        anyCorrection = anyCorrection || !f.corrects.empty();
    }

    Roots roots(byId);
    const auto stray = [&](const Fact& f) {
        const Fact* first = f.corrects.empty() ? nullptr : roots.first(f);
        return first != nullptr && !mayCorrect(f, *first);
    };
    ById standing; // by root id: the fact that counts
    if (anyCorrection) {
        for (const Fact& f : facts) {
            if (f.person != person || stray(f))
                continue;
            const Fact*& current = standing[roots.of(f)];
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
        if (anyCorrection && !stray(f) && standing[roots.of(f)] != &f)
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
