#pragma once

#include "outlook/Forecast.h"

#include <array>
#include <vector>

namespace firstdew::outlook {

/// How long this person's dry spells last: the evidence behind a forecast, for display.
struct DrySpells {
    static constexpr std::array<double, 5> kLevels{0.1, 0.25, 0.5, 0.75, 0.9};

    std::vector<Spell> spells;     ///< oldest first; the last one is the present spell
    int day = 0;                   ///< age of the present spell: days since its last session
    std::array<double, 5> usual{}; ///< days after which a spell has ended with the chances in kLevels
    std::vector<double> lasting;   ///< element i: chance that a spell lasts longer than i days
    StateProbability beforeReport; ///< belief for today without today's report
    StateProbability now;          ///< belief for today with it
    bool reportedToday = false;
};

/// The dry spells of `site` up to the diary's day, or nullopt before the first treated spell. `lasting` ends where
/// fewer than one spell in twenty is left and the present day is past, after a year at the latest.
[[nodiscard]] std::optional<DrySpells> drySpellsOf(const Diary& diary, DiarySite site, const Settings& settings = {});

/// The belief for each day between sessions, by the reports up to that day and by the lengths of all spells. The days
/// are ascending. The days of a course are left out.
[[nodiscard]] std::vector<DayChance> beliefsOf(const Diary& diary, DiarySite site, const Settings& settings = {});

} // namespace firstdew::outlook
