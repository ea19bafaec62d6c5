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

std::vector<StateProbability> filterStates(const Predictive& clock, std::span<const DayReport> reports,
                                           LocalDate lastSession, LocalDate until, int horizon,
                                           const FilterRules& rules)
{
    std::vector<StateProbability> out;
    const double wet = 1 - rules.stayDryAfterSession;
    StateProbability p{rules.stayDryAfterSession, wet * (1 - rules.sweatingIfNot), wet * rules.sweatingIfNot};
    out.push_back(p);
    double survived = 1;
    auto report = reports.begin();
    const LocalDate end = until + horizon;
    for (LocalDate day = lastSession + 1; day <= end; day = day + 1) {
        const double now = clock.survivor(day - lastSession);
        const double hazard = survived > 1e-12 ? std::clamp(1 - now / survived, 0.0, 1.0) : 1.0;
        survived = now;
        const double left = p.dry * hazard;
        const double worse = p.clammy * rules.clammyToSweating;
        p = {p.dry - left, p.clammy + left - worse, p.sweating + worse};
        while (report != reports.end() && report->date < day)
            ++report;
        if (day <= until && report != reports.end() && report->date == day) {
            const auto& says = report->stirred() ? rules.stirred : rules.calm;
            const auto level = static_cast<std::size_t>(report->level);
            p = normalized({p.dry * says[0][level], p.clammy * says[1][level], p.sweating * says[2][level]});
        }
        out.push_back(p);
    }
    return out;
}

} // namespace firstdew::outlook
