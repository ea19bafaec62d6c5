#include "outlook/Forecast.h"

#include "outlook/Filter.h"

#include <algorithm>
#include <cmath>

namespace firstdew::outlook
{

namespace
{

constexpr int kHorizon = 28; // days shown ahead

/// Harm of one more day left to itself once dampness has begun, against that of one needless top-up
/// (our own choice: four to one, so that a top-up is called for from one chance in five).
constexpr double kWaitingADay = 4;
constexpr double kNeedlessTopUp = 1;

/// The day by which the chance of clamminess reaches `p`, from what was known at the last dry report.
LocalDate dayOf(const Predictive& clock, LocalDate lastSession, const Spell& present, double p)
{
    if (present.right)
        return lastSession + *present.right;
    return lastSession + static_cast<int>(std::ceil(clock.quantile(p, present.left)));
}

} // namespace

Forecast forecastFor(const Record& record, DiarySite site, LocalDate today, double risk)
{
    Forecast f;
    f.site = site;
    f.risk = std::isfinite(risk) ? std::clamp(risk, 0.01, 0.9) : 0.2;
    f.spells = spellsFor(record, site, today);
    f.censored =
        static_cast<int>(std::count_if(f.spells.begin(), f.spells.end(), [](const Spell& s) { return !s.right; }));
    const std::span<const Spell> past(f.spells.data(), f.spells.empty() ? 0 : f.spells.size() - 1);
    const Predictive clock(past);
    f.usualFrom = clock.quantile(0.1);
    f.usualTo = clock.quantile(0.9);
    if (f.spells.empty())
        return f;

    const Spell& present = f.spells.back();
    f.lastSession = present.lastSession;
    f.due = dayOf(clock, present.lastSession, present, f.risk);
    f.quantiles.emplace();
    for (std::size_t i = 0; i < kForecastLevels.size(); ++i)
        (*f.quantiles)[i] = dayOf(clock, present.lastSession, present, kForecastLevels[i]);

    const auto reports = reportsOf(record, site, today);
    const auto states = filterStates(clock, reports, present.lastSession, today, kHorizon);
    const auto offset = static_cast<std::size_t>(today - present.lastSession);
    f.today = states[offset];
    for (std::size_t i = offset; i < states.size(); ++i)
        f.days.push_back({present.lastSession + static_cast<int>(i), 1 - states[i].dry, states[i]});
    f.firstDew = (1 - f.today.dry) * kWaitingADay > f.today.dry * kNeedlessTopUp;
    return f;
}

} // namespace firstdew::outlook
