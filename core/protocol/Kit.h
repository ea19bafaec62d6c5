#pragma once

#include "facts/Record.h"

namespace firstdew::protocol {

using namespace facts;

/// Sessions a set of four alkaline cells lasts (common practice, no source).
inline constexpr int kSessionsPerCellSet = 3;

/// Sessions left in the cells now in `machine`: counted from the last change; never below zero.
/// Nothing for a machine on mains, or where no change was ever recorded.
[[nodiscard]] std::optional<int> cellSessionsLeft(const Record& record, const Machine& machine);

} // namespace firstdew::protocol
