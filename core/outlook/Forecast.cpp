#include "outlook/Forecast.h"

#include "outlook/Filter.h"
#include "outlook/Learned.h"

#include <algorithm>
#include <cmath>

namespace firstdew::outlook {

namespace {

constexpr int kHorizon = 28; // days shown ahead

/// What the reports since the last session say if none is wrong.
struct Present {
    int dry = 0;                 ///< day of the latest dry report, counted from the last session
    std::optional<int> returned; ///< day of the clamminess, if no dry report followed
};

/// Clamminess counts if it is reported twice in a row, or at rest once the spell has reached its soonest usual end.
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

/// The day by which the chance of clamminess reaches `p`, given the last dry report.
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

    /// Whether waiting one more day has the greater expected harm, by the belief `day` days after the last session.
    [[nodiscard]] bool call(const Predictive& clock, std::span<const StateProbability> states, std::size_t day) const
    {
        const auto d = static_cast<double>(day);
        const double now = clock.survivor(d);
        const double stays = now > 0 ? clock.survivor(d + 1) / now : 0;
        return 1 - dry(states[day]) * stays > m_bearable;
    }

    /// The day on which the call began if there is one on `day`, otherwise the day on which it will begin.
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
    /// Removes the prior chance that the session had no effect: only reports justify another one.
    [[nodiscard]] double dry(const StateProbability& p) const { return std::min(1.0, p.dry / m_took); }

    double m_took;
    double m_bearable; ///< chance of dampness tomorrow up to which waiting has less harm
};

} // namespace

Forecast forecastFor(const Diary& diary, DiarySite site, const Settings& settings)
{
    const LocalDate today = diary.today;
    const auto& reports = diary.at(site).spellReports;
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
