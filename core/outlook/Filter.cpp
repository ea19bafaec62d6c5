#include "outlook/Filter.h"

#include <algorithm>

namespace firstdew::outlook {

namespace {

StateProbability normalized(StateProbability p)
{
    const double sum = p.dry + p.clammy + p.sweating;
    if (!(sum > 0))
        return {1.0 / 3, 1.0 / 3, 1.0 / 3};
    return {p.dry / sum, p.clammy / sum, p.sweating / sum};
}

} // namespace

Filter::Filter(const Predictive& clock, const FilterRules& rules) : m_clock(clock), m_rules(rules)
{
    const double wet = 1 - rules.stayDryAfterSession;
    m_belief = {rules.stayDryAfterSession, wet * (1 - rules.sweatingIfNot), wet * rules.sweatingIfNot};
}

void Filter::pass()
{
    const double now = m_clock.survivor(++m_day);
    const double hazard = m_survived > 1e-12 ? std::clamp(1 - now / m_survived, 0.0, 1.0) : 1.0;
    m_survived = now;
    const double left = m_belief.dry * hazard;
    const double worse = m_belief.clammy * m_rules.clammyToSweating;
    m_belief = {m_belief.dry - left, m_belief.clammy + left - worse, m_belief.sweating + worse};
}

void Filter::hear(Level level, bool stirred)
{
    const auto& says = stirred ? m_rules.stirred : m_rules.calm;
    const auto i = static_cast<std::size_t>(level);
    m_belief = normalized({m_belief.dry * says[0][i], m_belief.clammy * says[1][i], m_belief.sweating * says[2][i]});
}

std::vector<StateProbability> filterStates(const Predictive& clock, std::span<const DayReport> reports,
                                           LocalDate lastSession, LocalDate until, int horizon,
                                           const FilterRules& rules)
{
    Filter filter(clock, rules);
    std::vector<StateProbability> out{filter.belief()};
    auto report = reports.begin();
    for (LocalDate day = lastSession + 1; day <= until + horizon; day = day + 1) {
        filter.pass();
        while (report != reports.end() && report->date < day)
            ++report;
        if (day <= until && report != reports.end() && report->date == day)
            filter.hear(report->level, report->stirred());
        out.push_back(filter.belief());
    }
    return out;
}

} // namespace firstdew::outlook
