#pragma once

#include "outlook/FilterRules.h"
#include "outlook/Intervals.h"
#include "outlook/Predictive.h"

namespace firstdew::outlook {

/// The rules for what follows the session of that spell: whether the skin was damp before it, and what was said of it
/// in the evening.
[[nodiscard]] FilterRules rulesAfter(const Spell& spell, const FilterRules& rules);
/// The belief right after a session.
[[nodiscard]] StateProbability beliefAfterSession(const FilterRules& rules);
/// The chance that a spell which has lasted with chance `before` ends by the day with chance `now` of lasting.
[[nodiscard]] double hazardOf(double before, double now);
/// The belief on the next day, on which dry skin turns damp with chance `hazard`.
[[nodiscard]] StateProbability dayLater(const StateProbability& belief, double hazard, const FilterRules& rules);
/// Takes a report into the belief, and returns the chance that it had.
double hear(StateProbability& belief, Level level, bool stirred, const FilterRules& rules);

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
