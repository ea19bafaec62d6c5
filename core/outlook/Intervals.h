#pragma once

#include "outlook/Forecast.h"

namespace firstdew::outlook {

/// Treated spells of a site as evidence, oldest first; the present one last.
///
/// Sessions on neighbouring days are one treated spell, and its last session starts the clock. A first clammy
/// level with a dry day before it is interval-censored, without one left-censored; a top-up while still dry, or
/// today, right-censors. Sessions of a course before its end start no spell: there the rhythm is the course's.
[[nodiscard]] std::vector<Spell> spellsFor(const SiteDiary& site, LocalDate today);

} // namespace firstdew::outlook
