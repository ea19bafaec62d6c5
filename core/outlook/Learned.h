#pragma once

#include "outlook/Predictive.h"

#include <array>
#include <optional>

namespace firstdew::outlook {

/// What was learned from past spells, kept with a diary from one call to the next. It only saves work: each call checks
/// that the spells and reports it stands on are still the same.
class Learned {
public:
    /// The person's own distribution after all spells but the last one.
    const Predictive& clockFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                               const FilterRules& rules);

private:
    struct Kept {
        FilterRules rules;
        std::vector<Spell> spells;
        std::vector<DayReport> reports; ///< up to the end of the last of them
        Predictive clock{std::span<const Evidence>{}};
    };
    std::array<std::optional<Kept>, facts::allOf<DiarySite>().size()> m_kept;
};

/// What was learned so far from that diary.
[[nodiscard]] Learned& learnedFrom(const Diary& diary);

} // namespace firstdew::outlook
