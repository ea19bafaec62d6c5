#pragma once

#include "situation/Assess.h"

namespace firstdew::situation {

/// Days that Today looks ahead, today included.
inline constexpr int kDaysAhead = 14;

/// One of the days ahead, as Today draws it.
struct DayAhead {
    LocalDate date;
    std::optional<double> begun; ///< chance that dampness has begun by that day; nullopt before the first session
    bool session = false;        ///< a session is planned for that day
    bool after = false;          ///< a planned session comes before that day, and the chance counts from it
};

/// The days from today on. A session that should have been done counts for today. After a planned session the chance
/// starts again, as this person's dry spells do: what is drawn is the plan, not its neglect.
[[nodiscard]] std::vector<DayAhead> daysAhead(const Diary& diary, const SiteSituation& site, int days = kDaysAhead);

} // namespace firstdew::situation
