#pragma once

#include "outlook/Forecast.h"

namespace firstdew::outlook {

/// Treated spells of a site as evidence, oldest first; the present one last.
///
/// Sessions on neighbouring days belong to one treated spell; the clock starts at the last of them. A first clammy
/// report after a dry day is interval-censored, without a dry day left-censored. A top-up while dry, or the diary's
/// day, right-censors. A session followed by another one of the same course starts no spell, because the course and
/// not the skin decides when the next one comes.
/// A spell in which another treatment worked is marked.
/// A session that was stopped with most of its charge done counts as one, see treatedDays().
[[nodiscard]] std::vector<Spell> spellsFor(const Diary& diary, DiarySite site);

/// What the reports say of the time after one session, up to and including the day `until`, on which the next session
/// was or looking ends. Sessions on neighbouring days are not taken together here. Reports count as they stand.
[[nodiscard]] Spell spellAfter(const Diary& diary, DiarySite site, LocalDate session, LocalDate until);

} // namespace firstdew::outlook
