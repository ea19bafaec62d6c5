#pragma once

#include "outlook/Predictive.h"

#include <array>
#include <optional>

namespace firstdew::outlook {

/// What was learned from past spells, kept from one call to the next by whoever asks often. Only ever saves work: each
/// call checks that the spells and reports it stands on are still the same.
class Learned {
public:
    /// The person's own distribution after all spells but the last one.
    const Predictive& clockFor(DiarySite site, std::span<const Spell> spells, std::span<const Report> reports,
                               const FilterRules& rules);

private:
    struct Kept {
        FilterRules rules;
        std::vector<Spell> spells;
        std::vector<Report> reports; ///< up to the end of the last of them
        Predictive clock{std::span<const Evidence>{}};
    };
    std::array<std::optional<Kept>, facts::allOf<DiarySite>().size()> m_kept;
};

} // namespace firstdew::outlook
