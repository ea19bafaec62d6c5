#pragma once

#include "outlook/FilterRules.h"
#include "outlook/Intervals.h"
#include "outlook/Predictive.h"

namespace firstdew::outlook {

/// The belief about the hidden state of a site, day by day after its last session.
class Filter {
public:
    Filter(const Predictive& clock, const FilterRules& rules);

    /// Goes to the next day.
    void pass();
    /// Takes in that day's report.
    void hear(Level level, bool stirred);
    [[nodiscard]] const StateProbability& belief() const { return m_belief; }

private:
    const Predictive& m_clock;
    const FilterRules& m_rules;
    int m_day = 0;
    double m_survived = 1;
    StateProbability m_belief;
};

/// The belief about the hidden state on each day, given the reports up to that day. Element i is the belief on
/// lastSession + i. The `horizon` days after `until` are predicted without reports.
[[nodiscard]] std::vector<StateProbability> filterStates(const Predictive& clock, std::span<const DayReport> reports,
                                                         LocalDate lastSession, LocalDate until, int horizon,
                                                         const FilterRules& rules = {});

} // namespace firstdew::outlook
