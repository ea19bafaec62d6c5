#pragma once

#include "diary/Diary.h"

namespace firstdew::protocol {

using namespace facts;
using diary::Diary;

/// Sessions a set of four alkaline cells lasts (common practice, no source).
inline constexpr int kSessionsPerCellSet = 3;

/// Sessions left at which new cells should be at hand (our own choice).
inline constexpr int kCellsLow = 1;

/// Sessions left in the cells now in `machine`: counted from the last change; never below zero.
/// Nothing for a machine on mains, or where no change was ever recorded.
[[nodiscard]] std::optional<int> cellSessionsLeft(const Diary& diary, const Machine& machine);

/// Whether so many sessions left are few; not where nothing is known of them.
[[nodiscard]] constexpr bool cellsLow(std::optional<int> sessionsLeft)
{
    return sessionsLeft && *sessionsLeft <= kCellsLow;
}

} // namespace firstdew::protocol
