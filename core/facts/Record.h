#pragma once

#include "facts/Entry.h"
#include "facts/Fact.h"

#include <span>
#include <tuple>
#include <vector>

namespace firstdew::facts {

namespace detail {
template <class V>
struct Columns;
template <class... P>
struct Columns<std::variant<P...>> {
    using type = std::tuple<std::vector<Entry<P>>...>;
};
} // namespace detail

/// One person's facts with corrections applied. Each kind is sorted by the time it happened, then by the
/// time it was recorded. Only core/diary reads a Record; everyone else asks the Diary.
class Record {
public:
    template <class P>
    [[nodiscard]] const std::vector<Entry<P>>& all() const
    {
        return std::get<std::vector<Entry<P>>>(m_columns);
    }
    /// The latest entry of a kind, or nullptr.
    template <class P>
    [[nodiscard]] const Entry<P>* latest() const
    {
        const auto& v = all<P>();
        return v.empty() ? nullptr : &v.back();
    }
    template <class P>
    [[nodiscard]] std::vector<Entry<P>>& mutableAll()
    {
        return std::get<std::vector<Entry<P>>>(m_columns);
    }

private:
    detail::Columns<Payload>::type m_columns;
};

/// Whether a fact may correct that one: only one of the same kind does, or a retraction.
[[nodiscard]] bool mayCorrect(const Fact& correction, const Fact& original);

/// Picks the record of `person` out of all facts, which must be in the order recorded. A correction of a
/// correction replaces both. Of two corrections of one fact, the one recorded later counts. A correction whose
/// original is missing counts by itself. A correction counts at its own `happened`. A correction that may not be
/// one (mayCorrect) replaces nothing, and counts by itself.
[[nodiscard]] Record recordOf(std::span<const Fact> facts, std::string_view person);

} // namespace firstdew::facts
