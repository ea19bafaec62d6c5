#pragma once

#include "outlook/Forecast.h"

namespace firstdew::outlook {

/// Treated spells of `site` up to `today` as evidence, oldest first; the present one last.
///
/// Sessions on neighbouring days are one treated spell, and its last session starts the clock. A first clammy
/// level with a dry day before it is interval-censored, without one left-censored; a top-up while still dry, or
/// today, right-censors. Sessions of a course before its end start no spell: there the rhythm is the course's.
[[nodiscard]] std::vector<Spell> spellsFor(const Record& record, DiarySite site, LocalDate today);

/// What was reported of one day: its highest level, and what went with it.
struct Report {
    LocalDate date;
    Level level{};
    bool stirred = false; ///< some circumstance went with it
    bool operator==(const Report&) const = default;
};

/// One report a day, ascending, none after `today`.
[[nodiscard]] std::vector<Report> reportsOf(const Record& record, DiarySite site, LocalDate today);

} // namespace firstdew::outlook
