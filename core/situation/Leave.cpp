#include "situation/Leave.h"

#include <algorithm>

namespace firstdew::situation {

namespace {

// Both are our own choice: as late as it can be with a day to spare, and not while the last session has hardly worked.
constexpr int kOfferedBefore = 2; // days before the first day away
constexpr int kLeastSpell = 3;    // days after the last session

} // namespace

std::optional<Leave> leaveAround(const Diary& diary, LocalDate lastSession, LocalDate due)
{
    const auto away = diary.awayAround(due);
    if (!away || away->first <= diary.today)
        return std::nullopt;
    const LocalDate offered = std::max(away->first - kOfferedBefore, lastSession + kLeastSpell);
    return offered < away->first ? std::optional(Leave{away->first, away->second, offered}) : std::nullopt;
}

LocalDate aroundDaysAway(const Diary& diary, LocalDate lastSession, LocalDate due)
{
    if (const auto leave = leaveAround(diary, lastSession, due))
        return std::max(leave->offered, diary.today);
    const auto away = diary.awayAround(due);
    return away ? away->second + 1 : due;
}

} // namespace firstdew::situation
