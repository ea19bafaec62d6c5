#include "outlook/Filter.h"

#include <algorithm>

namespace firstdew::outlook {

StateProbability beliefAfterSession(const FilterRules& rules)
{
    const double wet = 1 - rules.stayDryAfterSession;
    return {rules.stayDryAfterSession, wet * (1 - rules.sweatingIfNot), wet * rules.sweatingIfNot};
}

FilterRules rulesAfter(const Spell& spell, const FilterRules& rules)
{
    FilterRules out = rules;
    if (spell.onDamp)
        out.stayDryAfterSession = rules.stayDryAfterDamp;
    if (!spell.evening)
        return out;
    StateProbability belief = beliefAfterSession(out);
    hear(belief, spell.evening->level, spell.evening->stirred(), out);
    const double damp = belief.clammy + belief.sweating;
    out.stayDryAfterSession = belief.dry;
    out.sweatingIfNot = damp > 0 ? belief.sweating / damp : rules.sweatingIfNot;
    return out;
}

double hazardOf(double before, double now) { return before > 1e-12 ? std::clamp(1 - now / before, 0.0, 1.0) : 1.0; }

StateProbability dayLater(const StateProbability& belief, double hazard, const FilterRules& rules)
{
    const double left = belief.dry * hazard;
    const double worse = belief.clammy * rules.clammyToSweating;
    return {belief.dry - left, belief.clammy + left - worse, belief.sweating + worse};
}

double hear(StateProbability& belief, Level level, bool stirred, const FilterRules& rules)
{
    const auto& says = stirred ? rules.stirred : rules.calm;
    const auto i = static_cast<std::size_t>(level);
    const StateProbability p{belief.dry * says[0][i], belief.clammy * says[1][i], belief.sweating * says[2][i]};
    const double sum = p.dry + p.clammy + p.sweating;
    belief = sum > 0 ? StateProbability{p.dry / sum, p.clammy / sum, p.sweating / sum}
                     : StateProbability{1.0 / 3, 1.0 / 3, 1.0 / 3};
    return sum;
}

Filter::Filter(const Predictive& clock, const FilterRules& rules)
    : m_clock(clock), m_rules(rules), m_belief(beliefAfterSession(rules))
{
}

void Filter::pass()
{
    const double now = m_clock.survivor(++m_day);
    m_belief = dayLater(m_belief, hazardOf(m_survived, now), m_rules);
    m_survived = now;
}

void Filter::hear(Level level, bool stirred) { outlook::hear(m_belief, level, stirred, m_rules); }

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
