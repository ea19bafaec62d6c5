#include "outlook/Forecast.h"

#include "outlook/Filter.h"
#include "outlook/Learned.h"

#include <algorithm>
#include <cmath>

namespace firstdew::outlook
{

namespace
{

constexpr int kHorizon = 28; // days shown ahead

/// What the reports since the last session say when taken at their word.
struct Present {
    int dry = 0;                 ///< days after the last session of the latest dry report
    std::optional<int> returned; ///< of the clamminess that stands: at rest or twice in a row, and no dry report since
};

Present presentOf(std::span<const Report> reports, LocalDate lastSession)
{
    Present p;
    const Report* before = nullptr;
    for (const Report& r : reports) {
        if (r.date <= lastSession)
            continue;
        const int day = r.date - lastSession;
        if (r.level == Level::Dry) {
            p.dry = day;
            p.returned.reset();
        } else if (!p.returned && (!r.stirred || (before != nullptr && before->level != Level::Dry))) {
            p.returned = day;
        }
        before = &r;
    }
    return p;
}

/// The day by which the chance of clamminess reaches `p`, from what was known at the last dry report.
LocalDate dayOf(const Predictive& clock, LocalDate lastSession, const Present& present, double p)
{
    const int day = static_cast<int>(std::ceil(clock.quantile(p, present.dry) - 1e-9));
    return lastSession + (present.returned ? std::min(day, *present.returned) : day);
}

} // namespace

Forecast forecastFor(const Record& record, DiarySite site, LocalDate today, const Settings& settings, Learned* learned)
{
    Forecast f;
    f.site = site;
    f.risk = std::isfinite(settings.risk) ? std::clamp(settings.risk, 0.01, 0.9) : Settings{}.risk;
    f.spells = spellsFor(record, site, today);
    f.censored =
        static_cast<int>(std::count_if(f.spells.begin(), f.spells.end(), [](const Spell& s) { return !s.right; }));
    const auto reports = reportsOf(record, site, today);
    Learned forThisCall;
    const Predictive& clock = (learned != nullptr ? *learned : forThisCall).clockFor(site, f.spells, reports, settings.rules);
    f.soonest = clock.quantile(0.05);
    f.usualFrom = clock.quantile(0.1);
    f.usualTo = clock.quantile(0.9);
    if (f.spells.empty())
        return f;

    const LocalDate last = f.spells.back().lastSession;
    const Present present = presentOf(reports, last);
    f.lastSession = last;
    f.due = dayOf(clock, last, present, f.risk);
    f.quantiles.emplace();
    for (std::size_t i = 0; i < kForecastLevels.size(); ++i)
        (*f.quantiles)[i] = dayOf(clock, last, present, kForecastLevels[i]);

    const auto states = filterStates(clock, reports, last, today, kHorizon, settings.rules);
    const auto offset = static_cast<std::size_t>(today - last);
    f.today = states[offset];
    for (std::size_t i = offset; i < states.size(); ++i)
        f.days.push_back({last + static_cast<int>(i), 1 - states[i].dry, states[i]});
    f.firstDew = (1 - f.today.dry) * settings.costs.waitingADay > f.today.dry * settings.costs.needlessTopUp;
    return f;
}

} // namespace firstdew::outlook
