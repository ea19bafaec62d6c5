#pragma once

#include "outlook/Forecast.h"

#include <array>
#include <vector>

namespace firstdew::outlook {

/// How long this person's dry spells last, to be looked at: the evidence behind a forecast.
struct DrySpells {
    static constexpr std::array<double, 5> kLevels{0.1, 0.25, 0.5, 0.75, 0.9};

    std::vector<Spell> spells;     ///< oldest first, the present one last
    int day = 0;                   ///< of the present one: days since its last session
    std::array<double, 5> usual{}; ///< days by which a spell is over with the chance of kLevels
    std::vector<double> lasting;   ///< chance that a spell lasts longer than i days; 1 at day 0, then falling
    StateProbability beforeReport; ///< today, by everything but today's own report
    StateProbability now;          ///< today, with it
    bool reportedToday = false;
};

/// The dry spells of `site` up to `today`, or nothing before the first treated one. `lasting` goes on until fewer than
/// one spell in twenty is left and the present day is past, a year at most.
[[nodiscard]] std::optional<DrySpells> drySpellsOf(const Diary& diary, DiarySite site, const Settings& settings = {});

/// What was to be believed of each day from the last session of a treated spell to the next one or to `today`, by the
/// reports up to that day and by how long spells have turned out to last. Ascending; days of a course are left out.
[[nodiscard]] std::vector<DayChance> beliefsOf(const Diary& diary, DiarySite site, const Settings& settings = {});

} // namespace firstdew::outlook
