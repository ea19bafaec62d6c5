#pragma once

#include "diary/Diary.h"

namespace firstdew::situation {

using namespace facts;
using diary::Diary;

/// Days away into which a call for a top-up would fall, and the days before them on which one is offered instead.
struct Leave {
    LocalDate from;
    LocalDate to;
    LocalDate offered; ///< from this day on until the day before `from`
};

/// The days away around `due`, if a top-up before them makes sense: they have not begun, and the last session is not
/// too near to them.
[[nodiscard]] std::optional<Leave> leaveAround(const Diary& diary, LocalDate lastSession, LocalDate due);

/// The day of the next top-up if the forecast calls on `due`: before the days away around it, or else on the first day
/// back.
[[nodiscard]] LocalDate aroundDaysAway(const Diary& diary, LocalDate lastSession, LocalDate due);

} // namespace firstdew::situation
