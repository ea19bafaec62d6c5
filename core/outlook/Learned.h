#pragma once

#include "outlook/Fitting.h"
#include "outlook/Renewal.h"
#include "outlook/Reporting.h"

#include <array>
#include <optional>

namespace firstdew::outlook {

/// What a person's spells teach: how long they last, and how often the reports are wrong.
struct Lessons {
    OwnClock clock;
    Reporting reporting;

    /// Adds further spells, oldest first, none of them treated otherwise. Returns the indexes of those that say
    /// anything of the clock. `reports` are ascending and may be those of other spells, too.
    std::vector<std::size_t> learn(std::span<const Spell> spells, std::span<const DayReport> reports,
                                   const FilterRules& rules);

private:
    void learnErrors(const Spell& spell, std::span<const DayReport> reports, const FilterRules& rules);
};

/// A cache of what past spells teach, kept with the diary. Each call checks that the spells and reports behind it have
/// not changed, so it affects speed and never a result.
class Learned {
public:
    /// The person's distribution after all spells except the last one. If the forecasts have not fitted this person, it
    /// is the widened one.
    const Predictive& clockFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                               const FilterRules& rules);
    /// The rules with this person's own errors of reporting, by all spells except the last one.
    FilterRules rulesFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                         const FilterRules& rules);
    /// How often this person's reports are wrong, by the same spells.
    ErrorRates errorsOf(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                        const FilterRules& rules);
    /// The distribution of clockFor() for the last spell, by the dose before it.
    const Predictive& presentFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                                 const FilterRules& rules, Clock which = Clock::InForce);
    /// How the forecasts have fitted this person, by all spells except the last one.
    const Fitting& fittingOf(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                             const FilterRules& rules);
    /// The latest change that the test of this person's spells found.
    std::optional<Changed> changeOf(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                                    const FilterRules& rules);
    /// The median before that change, in days, by at most kChangeWithin spells. Needs a change.
    double medianBeforeChange(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                              const FilterRules& rules);
    /// The e-value against spells having stayed as long as they were, see Shift.
    double shorteningOf(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                        const FilterRules& rules);
    /// When to treat while still dry, by the distribution of the last spell and the cost of a return in sessions.
    const Renewal& renewalFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                              const FilterRules& rules, double returnCost, Clock which = Clock::InForce);

private:
    struct Kept {
        FilterRules rules;
        std::vector<Spell> spells;
        std::vector<DayReport> reports; ///< up to the end of the last of these spells
        Lessons lessons;
        std::vector<std::size_t> taught;    ///< indexes of the spells that the clock learned
        std::optional<double> medianBefore; ///< the change
        double dose = 1;                    ///< of the last spell
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
