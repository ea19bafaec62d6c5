#include "outlook/Forecast.h"

#include "outlook/Filter.h"
#include "outlook/Learned.h"

#include <algorithm>
#include <cmath>

namespace firstdew::outlook {

namespace {

constexpr int kHorizon = 28;   // days shown ahead
constexpr int kKeptWithin = 2; // a diary is kept if the last check-in was so many days ago (our own choice)

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

/// When the forecast calls for a top-up. A session may come before the day's check-in or after it, so the call of a day
/// rests on the check-ins until the evening before; a dry one of the day itself takes it back only if the site is now
/// more likely dry than it was that evening.
class Caller {
public:
    Caller(const Predictive& clock, const Renewal& renewal, std::span<const DayReport> reports, LocalDate last,
           LocalDate today, const FilterRules& rules, bool kept)
        : m_renewal(renewal), m_rules(rules), m_today(today - last)
    {
        // Only reports justify another session because the last one had no effect: the next one may have none either.
        m_rules.stayDryAfterSession = 1;
        Filter filter(clock, m_rules);
        m_days.push_back({filter.belief().dry, false});
        auto report = std::upper_bound(reports.begin(), reports.end(), last,
                                       [](LocalDate d, const DayReport& r) { return d < r.date; });
        for (int day = 1; day <= m_today; ++day) {
            filter.pass();
            const bool reported = report != reports.end() && report->date == last + day;
            if (reported) {
                filter.hear(report->level, report->stirred());
                ++report;
            }
            m_days.push_back({filter.belief().dry, reported});
        }
        m_due = m_today;
        if (calls(m_today)) {
            while (calls(*m_due - 1))
                --*m_due;
            m_dueIfSilent = m_due;
            return;
        }
        m_dueIfSilent = firstCall(filter, false);
        if (kept && m_today > 0 && !m_days.back().reported)
            filter.hear(Level::Dry, false);
        m_due = kept ? firstCall(filter, true) : m_dueIfSilent;
    }

    /// Days after the last session on which the call began, or will begin. See Forecast::due.
    [[nodiscard]] std::optional<int> due() const { return m_due; }
    [[nodiscard]] std::optional<int> dueIfSilent() const { return m_dueIfSilent; }
    [[nodiscard]] double dampTomorrow() const { return m_renewal.dampTomorrow(m_today, dryFor(m_today)); }

private:
    struct Day {
        double dry = 1; ///< chance, by the reports up to that day
        bool reported = false;
    };

    /// The first day after today that calls, if from then on each check-in says dry, or if there is none.
    [[nodiscard]] std::optional<int> firstCall(Filter filter, bool saysDry) const
    {
        for (int day = m_today + 1; day <= kLongestWait; ++day) {
            if (callsBy(day, filter.belief().dry))
                return day;
            filter.pass();
            if (saysDry)
                filter.hear(Level::Dry, false);
        }
        return std::nullopt;
    }

    [[nodiscard]] double dryFor(int day) const
    {
        const Day& now = m_days[static_cast<std::size_t>(day)];
        if (day == 0)
            return now.dry;
        const double evening = m_days[static_cast<std::size_t>(day) - 1].dry;
        return now.reported ? std::max(now.dry, evening) : evening;
    }
    [[nodiscard]] bool calls(int day) const { return callsBy(day, day > 0 ? dryFor(day) : 1); }
    [[nodiscard]] bool callsBy(int day, double dry) const { return day > kSettlingDays && m_renewal.treat(day, dry); }

    const Renewal& m_renewal;
    FilterRules m_rules;
    int m_today;
    std::optional<int> m_due;
    std::optional<int> m_dueIfSilent;
    std::vector<Day> m_days;
};

std::optional<LocalDate> earlier(std::optional<LocalDate> a, std::optional<LocalDate> b)
{
    return a && b ? std::min(a, b) : (a ? a : b);
}

/// Takes in when that caller calls. Of several, the earliest counts.
void decide(Forecast& f, const Caller& caller, const Renewal& renewal)
{
    const auto dayOf = [&](std::optional<int> age) {
        return age ? std::optional(*f.lastSession + *age) : std::nullopt;
    };
    f.due = earlier(f.due, dayOf(caller.due()));
    f.dueIfSilent = earlier(f.dueIfSilent, dayOf(caller.dueIfSilent()));
    f.dampTomorrow = std::max(f.dampTomorrow, caller.dampTomorrow());
    f.bestAge = f.bestAge > 0 ? std::min(f.bestAge, renewal.age()) : renewal.age();
    f.firstDew = f.firstDew || renewal.treat(f.days.front().date - *f.lastSession, f.today.dry);
}

} // namespace

double returnCostOf(double risk)
{
    const double r = std::isfinite(risk) ? std::clamp(risk, 0.01, 0.9) : Settings{}.risk;
    return (1 - r) / (2 * r);
}

Forecast forecastFor(const Diary& diary, DiarySite site, const Settings& settings)
{
    const LocalDate today = diary.today;
    const auto& reports = diary.at(site).spellReports;
    Forecast f;
    f.site = site;
    f.returnCost = settings.returnCost.value_or(returnCostOf(settings.risk));
    f.spells = spellsFor(diary, site);
    Learned& learned = learnedFrom(diary);
    f.change = learned.changeOf(site, f.spells, reports, settings.rules);
    if (f.change && today - f.change->found <= kShorterToldFor)
        f.change->medianBefore = learned.medianBeforeChange(site, f.spells, reports, settings.rules);
    f.shortening = learned.shorteningOf(site, f.spells, reports, settings.rules);
    for (const Spell& s : f.spells) {
        ++(s.otherwise ? f.otherwise : f.learned);
        f.censored += s.otherwise || s.right ? 0 : 1;
    }
    const Renewal& renewal = learned.renewalFor(site, f.spells, reports, settings.rules, f.returnCost);
    const Predictive& usual = learned.clockFor(site, f.spells, reports, settings.rules);
    const Predictive& clock = learned.presentFor(site, f.spells, reports, settings.rules);
    const Fitting& fitting = learned.fittingOf(site, f.spells, reports, settings.rules);
    f.errors = learned.errorsOf(site, f.spells, reports, settings.rules);
    f.misfit = fitting.eValue();
    f.widened = fitting.misfit();
    f.bestAge = renewal.age();
    f.soonest = clock.quantile(0.05);
    f.usualFrom = usual.quantile(0.1);
    f.usualMedian = usual.quantile(0.5);
    f.usualTo = usual.quantile(0.9);
    if (f.spells.empty())
        return f;

    const LocalDate last = f.spells.back().lastSession;
    const FilterRules rules = learned.rulesFor(site, f.spells, reports, settings.rules);
    const Present present = presentOf(reports, last, f.soonest);
    f.lastSession = last;
    f.quantiles.emplace();
    for (std::size_t i = 0; i < kForecastLevels.size(); ++i)
        (*f.quantiles)[i] = dayOf(clock, last, present, kForecastLevels[i]);

    const auto states = filterStates(clock, reports, last, today, kHorizon, rulesAfter(f.spells.back(), rules));
    const auto offset = static_cast<std::size_t>(today - last);
    f.today = states[offset];
    for (std::size_t i = offset; i < states.size(); ++i)
        f.days.push_back({last + static_cast<int>(i), 1 - states[i].dry, states[i]});
    const bool kept = !diary.at(site).reports.empty() && today - diary.at(site).reports.back().date <= kKeptWithin;
    decide(f, Caller(clock, renewal, reports, last, today, rules, kept), renewal);
    if (f.widened) {
        const Predictive& before = learned.presentFor(site, f.spells, reports, settings.rules, Clock::AsLearned);
        const Renewal& other =
            learned.renewalFor(site, f.spells, reports, settings.rules, f.returnCost, Clock::AsLearned);
        decide(f, Caller(before, other, reports, last, today, rules, kept), other);
    }
    return f;
}

} // namespace firstdew::outlook
