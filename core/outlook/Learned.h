#pragma once

#include "outlook/Fitting.h"
#include "outlook/Renewal.h"

#include <array>
#include <optional>

namespace firstdew::outlook {

/// A cache of what past spells teach, kept with the diary. Each call checks that the spells and reports behind it have
/// not changed, so it affects speed and never a result.
class Learned {
public:
    /// The person's distribution after all spells except the last one. If the forecasts have not fitted this person, it
    /// is the widened one.
    const Predictive& clockFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                               const FilterRules& rules);
    /// The same for the last spell, by the dose before it.
    const Predictive& presentFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                                 const FilterRules& rules, Clock which = Clock::InForce);
    /// How the forecasts have fitted this person, by all spells except the last one.
    const Fitting& fittingOf(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                             const FilterRules& rules);
    /// When to treat while still dry, by the distribution of the last spell and the cost of a return in sessions.
    const Renewal& renewalFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                              const FilterRules& rules, double returnCost, Clock which = Clock::InForce);

private:
    struct Kept {
        FilterRules rules;
        std::vector<Spell> spells;
        std::vector<DayReport> reports; ///< up to the end of the last of these spells
        OwnClock clock;
        double dose = 1; ///< of the last spell
        struct Present {
            std::optional<Predictive> clock; ///< where that dose was unusual
            std::optional<Renewal> renewal;
        };
        std::array<Present, 2> present; ///< by Clock
        double returnCost = 0;
    };
    Kept& keptFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                  const FilterRules& rules);
    std::array<std::optional<Kept>, facts::allOf<DiarySite>().size()> m_kept;
};

/// What the reports after the session of `spell` say of it.
[[nodiscard]] Evidence evidenceOf(const Spell& spell, std::span<const DayReport> reports, const FilterRules& rules);

/// The cache of that diary.
[[nodiscard]] Learned& learnedFrom(const Diary& diary);

} // namespace firstdew::outlook
