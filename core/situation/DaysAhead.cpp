#include "situation/DaysAhead.h"

#include "outlook/Learned.h"

#include <algorithm>

namespace firstdew::situation {

namespace {

/// Planned days from today on, ascending.
std::vector<LocalDate> plannedOf(const SiteSituation& s, LocalDate today)
{
    std::vector<LocalDate> out;
    if (!s.nextSession)
        return out;
    out.push_back(std::max(*s.nextSession, today));
    if (s.course && s.stage == Stage::FirstCourse)
        for (const auto& session : s.course->sessions)
            if (session.state == protocol::CourseState::Planned && session.date > out.back())
                out.push_back(session.date);
    return out;
}

} // namespace

std::vector<DayAhead> daysAhead(const Diary& diary, const SiteSituation& site, int days)
{
    const auto planned = plannedOf(site, diary.today);
    const auto& forecast = site.forecast;
    const outlook::Predictive& clock = outlook::learnedFrom(diary).clockFor(
        site.site, forecast.spells, diary.at(site.site).spellReports, outlook::Settings{}.rules);
    std::vector<DayAhead> out;
    for (int i = 0; i < days; ++i) {
        DayAhead day{diary.today + i, {}, false, false};
        const auto next = std::lower_bound(planned.begin(), planned.end(), day.date);
        day.session = next != planned.end() && *next == day.date;
        day.after = next != planned.begin();
        if (forecast.lastSession && day.after)
            day.begun = 1 - clock.survivor(day.date - *std::prev(next));
        else if (forecast.lastSession && static_cast<std::size_t>(i) < forecast.days.size())
            day.begun = forecast.days[static_cast<std::size_t>(i)].begun;
        out.push_back(day);
    }
    return out;
}

} // namespace firstdew::situation
