#pragma once

#include "outlook/Intervals.h"
#include "outlook/Predictive.h"

namespace firstdew::outlook
{

/// How reports and returns behave; all our own choices until a rehearsal has judged them.
struct FilterRules {
    double stayDryAfterSession = 0.95; ///< chance that a session left the site dry
    double clammyToSweating = 0.25;    ///< chance a day that clamminess turns to full sweating
    /// P(level reported | state), state dry, clammy, sweating; on a calm and on a stirred day.
    std::array<std::array<double, 4>, 3> calm{
        {{0.965, 0.025, 0.007, 0.003}, {0.10, 0.75, 0.12, 0.03}, {0.02, 0.13, 0.50, 0.35}}};
    std::array<std::array<double, 4>, 3> stirred{
        {{0.80, 0.15, 0.04, 0.01}, {0.08, 0.69, 0.18, 0.05}, {0.02, 0.10, 0.48, 0.40}}};
};

/// The hidden state after each day from the day of the last session on, given reports up to each day.
/// Element i is the belief on lastSession + i; days after `until` are predicted only, up to `horizon` days more.
[[nodiscard]] std::vector<StateProbability> filterStates(const Predictive& clock, std::span<const Report> reports,
                                                         LocalDate lastSession, LocalDate until, int horizon,
                                                         const FilterRules& rules = {});

} // namespace firstdew::outlook
