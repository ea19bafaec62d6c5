#pragma once

#include "outlook/Forecast.h"

#include <array>
#include <span>

namespace firstdew::outlook {

/// The same rules with these shares. Among the wrong reports on dry skin, and among those of dampness on clammy skin,
/// the levels keep their proportions.
[[nodiscard]] FilterRules erring(const FilterRules& rules, const ErrorRates& rates);

/// Errors are looked for in so many first days of a spell (our own choice).
inline constexpr int kErrorsWithin = 60;

/// How often this person's reports are wrong: a few sets of shares, each with a chance. After each spell a set's chance
/// is multiplied by the chance of the spell's reports if they err as that set says, each given those before it. What is
/// used is the mean over the sets, so it moves from what is usual to what this person's own reports say.
class Reporting {
public:
    /// Takes in the reports of a spell. `survivors`: the chances, by the spells before it, that it lasts longer than 0,
    /// 1, 2 ... days; reports after the last of these days are left out.
    void see(std::span<const DayReport> reports, const Spell& spell, std::span<const double> survivors,
             const FilterRules& rules);
    /// The rules with the mean shares.
    [[nodiscard]] FilterRules rulesFor(const FilterRules& rules) const;
    [[nodiscard]] ErrorRates rates() const;
    /// The chances of the sets; they sum to 1.
    [[nodiscard]] std::span<const double> chances() const { return m_chances; }

    static constexpr std::size_t kSets = 4;

private:
    std::array<double, kSets> m_chances = startingChances();
    static std::array<double, kSets> startingChances();
};

} // namespace firstdew::outlook
