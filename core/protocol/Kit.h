#pragma once

#include "diary/Diary.h"

namespace firstdew::protocol {

using namespace facts;
using diary::Diary;

/// Sessions a set of four alkaline cells lasts (common practice, no source).
inline constexpr int kSessionsPerCellSet = 3;

/// Sessions left in the cells now in `machine`: counted from the last change; never below zero.
/// Nothing for a machine on mains, or where no change was ever recorded.
[[nodiscard]] std::optional<int> cellSessionsLeft(const Diary& diary, const Machine& machine);

} // namespace firstdew::protocol
