#pragma once

#include "outlook/FilterRules.h"
#include "outlook/Intervals.h"
#include "outlook/Predictive.h"

namespace firstdew::outlook {

/// The hidden state after each day from the day of the last session on, given reports up to each day.
/// Element i is the belief on lastSession + i; days after `until` are predicted only, up to `horizon` days more.
[[nodiscard]] std::vector<StateProbability> filterStates(const Predictive& clock, std::span<const DayReport> reports,
                                                         LocalDate lastSession, LocalDate until, int horizon,
                                                         const FilterRules& rules = {});

} // namespace firstdew::outlook
