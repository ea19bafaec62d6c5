#pragma once

#include "outlook/FilterRules.h"
#include "outlook/Intervals.h"
#include "outlook/Predictive.h"

namespace firstdew::outlook {

/// The belief about the hidden state on each day, given the reports up to that day. Element i is the belief on
/// lastSession + i. The `horizon` days after `until` are predicted without reports.
[[nodiscard]] std::vector<StateProbability> filterStates(const Predictive& clock, std::span<const DayReport> reports,
                                                         LocalDate lastSession, LocalDate until, int horizon,
                                                         const FilterRules& rules = {});

} // namespace firstdew::outlook
