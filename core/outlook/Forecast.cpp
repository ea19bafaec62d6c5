#include "outlook/Forecast.h"

#include "outlook/Filter.h"
#include "outlook/Learned.h"

#include <algorithm>
#include <cmath>

namespace firstdew::outlook {

namespace {

constexpr int kHorizon = 28; // days shown ahead

/// What the reports since the last session say when taken at their word.
struct Present {
    int dry = 0;                 ///< days after the last session of the latest dry report
    std::optional<int> returned; ///< of the clamminess that stands, with no dry report since
};

/// Clamminess stands twice in a row, or at rest once the spell is older than its soonest usual end.
Present presentOf(std::span<const DayReport> reports, LocalDate lastSession, double soonest)
{
    Present p;
    const DayReport* before = nullptr;
    for (const DayReport& r : reports) {
        if (r.date <= lastSession)
            continue;
        const int day = r.date - lastSession;
        if (r.level == Level::Dry) {
            p.dry = day;
            p.returned.reset();
        } else if (!p.returned &&
                   ((!r.stirred() && day >= soonest) || (before != nullptr && before->level != Level::Dry))) {
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

/// Weighs waiting against a needless top-up.
class Scales {
public:
    Scales(const Settings& settings, double risk) : m_took(settings.rules.stayDryAfterSession)
    {
        const double usual = Settings{}.risk;
        const double waiting = settings.costs.waitingADay * ((1 - risk) / risk) / ((1 - usual) / usual);
        m_bearable = settings.costs.needlessTopUp / (settings.costs.needlessTopUp + waiting);
    }

    /// Whether, by what was believed `day` days after the last session, waiting one more would do the greater harm.
    [[nodiscard]] bool call(const Predictive& clock, std::span<const StateProbability> states, std::size_t day) const
    {
        const auto d = static_cast<double>(day);
        const double now = clock.survivor(d);
        const double stays = now > 0 ? clock.survivor(d + 1) / now : 0;
        return 1 - dry(states[day]) * stays > m_bearable;
    }

    /// The first day of the call that stands on `day`, or the first one on which it will.
    [[nodiscard]] int callDay(const Predictive& clock, std::span<const StateProbability> states, std::size_t day) const
    {
        if (call(clock, states, day)) {
            while (day > 0 && call(clock, states, day - 1))
                --day;
            return static_cast<int>(day);
        }
        const double p = 1 - (1 - m_bearable) / dry(states[day]);
        const double by = clock.quantile(std::max(p, 0.0), static_cast<double>(day));
        return std::max(static_cast<int>(day), static_cast<int>(std::ceil(by - 1e-9)) - 1);
    }

private:
    /// That the session may not have taken is no reason for another one; only reports are.
    [[nodiscard]] double dry(const StateProbability& p) const { return std::min(1.0, p.dry / m_took); }

    double m_took;
    double m_bearable; ///< chance of dampness tomorrow up to which waiting is the lesser harm
};

} // namespace

Forecast forecastFor(const Diary& diary, DiarySite site, const Settings& settings)
{
    const LocalDate today = diary.today;
    const auto& reports = diary.at(site).reports;
    Forecast f;
    f.site = site;
    f.risk = std::isfinite(settings.risk) ? std::clamp(settings.risk, 0.01, 0.9) : Settings{}.risk;
    f.spells = spellsFor(diary.at(site), today);
    f.censored =
        static_cast<int>(std::count_if(f.spells.begin(), f.spells.end(), [](const Spell& s) { return !s.right; }));
    const Predictive& clock = learnedFrom(diary).clockFor(site, f.spells, reports, settings.rules);
    f.soonest = clock.quantile(0.05);
    f.usualFrom = clock.quantile(0.1);
    f.usualMedian = clock.quantile(0.5);
    f.usualTo = clock.quantile(0.9);
    if (f.spells.empty())
        return f;

    const LocalDate last = f.spells.back().lastSession;
    const Present present = presentOf(reports, last, f.soonest);
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
    const Scales scales(settings, f.risk);
    f.firstDew = scales.call(clock, states, offset);
    f.call = std::min(*f.due, last + scales.callDay(clock, states, offset));
    return f;
}

} // namespace firstdew::outlook
