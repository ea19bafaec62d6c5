#pragma once

#include "outlook/DrySpells.h"

namespace firstdew::outlook {

/// How long this person's dry spells usually last, in whole days: four in five end from `from` to `to`, half of them
/// by `median`.
struct UsualDays {
    int from = 1;
    int median = 1;
    int to = 1;
    bool operator==(const UsualDays&) const = default;
};

/// Dry spells seen to their end from which a usual length is told (our own choice). Before them the days are those of
/// other people.
inline constexpr int kSpellsThatTell = 2;
[[nodiscard]] bool usualIsKnown(const Forecast& forecast);

/// How much shorter this person's dry spells have become, in days of the median.
struct Shorter {
    LocalDate since; ///< about
    int before = 0;
    int now = 0;
    bool operator==(const Shorter&) const = default;
};

/// The shortening that every page, the paper, the caseload and the command line tell. Nullopt if there was none, if it
/// is long ago, or if the spells have become longer again.
[[nodiscard]] std::optional<Shorter> shorterToTell(const Forecast& forecast);

/// The days as every page, the paper and the command line tell them, so that no two of them differ. A spell counts at
/// least one day.
[[nodiscard]] UsualDays usualDays(const Forecast& forecast);
[[nodiscard]] UsualDays usualDays(const DrySpells& spells);

} // namespace firstdew::outlook
