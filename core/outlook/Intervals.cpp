#include "outlook/Intervals.h"

#include <algorithm>
#include <utility>

namespace firstdew::outlook {

namespace {

/// A clammy report this soon after the session, with no dry one before it: the session never took hold.
constexpr int kNeverDryWithin = 2;

std::vector<LocalDate> completedSessions(const Record& record, DiarySite site, LocalDate today)
{
    std::vector<LocalDate> days;
    for (const auto& e : record.all<Session>())
        if (e.payload.completed && e.happened.date <= today && treats(e.payload.site).contains(site))
            days.push_back(e.happened.date);
    std::sort(days.begin(), days.end());
    days.erase(std::unique(days.begin(), days.end()), days.end());
    return days;
}

/// First and last day of a course; one without its review is not over.
using CourseDays = std::pair<LocalDate, LocalDate>;

std::vector<CourseDays> coursesOf(const Record& record, DiarySite site, LocalDate today)
{
    std::vector<CourseDays> out;
    for (const auto& c : record.all<Course>()) {
        if (!treats(c.payload.site).contains(site) || c.happened.date > today)
            continue;
        LocalDate until = today;
        for (const auto& r : record.all<ReviewDone>())
            if (r.payload.site == c.payload.site && r.happened.date >= c.payload.start && r.happened.date <= today) {
                until = r.happened.date;
                break;
            }
        out.emplace_back(c.payload.start, until);
    }
    return out;
}

/// The first clammy report that the next one does not contradict: clammy on a stirred day and dry the next is no
/// return.
std::vector<Report>::const_iterator firstReturn(std::vector<Report>::const_iterator from,
                                                std::vector<Report>::const_iterator to)
{
    for (auto it = from; it != to; ++it) {
        if (it->level == Level::Dry)
            continue;
        const bool contradicted = it->stirred && std::next(it) != to && std::next(it)->level == Level::Dry;
        if (!contradicted)
            return it;
    }
    return to;
}

Spell spellOf(LocalDate last, std::vector<Report>::const_iterator from, std::vector<Report>::const_iterator to)
{
    Spell spell;
    spell.lastSession = last;
    const auto event = firstReturn(from, to);
    for (auto it = from; it != event; ++it)
        if (it->level == Level::Dry)
            spell.left = it->date - last;
    if (event == to)
        return spell;
    spell.right = event->date - last;
    spell.gotDry = spell.left > 0 || *spell.right > kNeverDryWithin;
    return spell;
}

} // namespace

std::vector<Report> reportsOf(const Record& record, DiarySite site, LocalDate today)
{
    std::vector<Report> out;
    for (const auto& e : record.all<CheckIn>()) { // in the order in which they happened
        if (e.payload.site != site || e.happened.date > today)
            continue;
        const Report report{e.happened.date, e.payload.level, !e.payload.with.empty()};
        if (out.empty() || out.back().date != report.date)
            out.push_back(report);
        else if (report.level > out.back().level)
            out.back() = report;
    }
    return out;
}

std::vector<Spell> spellsFor(const Record& record, DiarySite site, LocalDate today)
{
    const auto sessions = completedSessions(record, site, today);
    const auto reports = reportsOf(record, site, today);
    const auto courses = coursesOf(record, site, today);
    const auto ofOneCourse = [&](LocalDate a, LocalDate b) {
        return std::any_of(courses.begin(), courses.end(),
                           [&](const CourseDays& c) { return a >= c.first && b <= c.second; });
    };
    const auto firstAfter = [&](LocalDate day) { // the first report behind that day
        return std::upper_bound(reports.begin(), reports.end(), day,
                                [](LocalDate d, const Report& r) { return d < r.date; });
    };
    std::vector<Spell> out;
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        const bool present = i + 1 == sessions.size();
        if (!present && sessions[i + 1] - sessions[i] <= 1)
            continue; // the spell of treatment goes on
        if (!present && ofOneCourse(sessions[i], sessions[i + 1]))
            continue;
        // The day of the next session counts: it was reported before the session that it led to.
        out.push_back(
            spellOf(sessions[i], firstAfter(sessions[i]), present ? reports.end() : firstAfter(sessions[i + 1])));
        out.back().watched = (present ? today : sessions[i + 1]) - sessions[i];
    }
    return out;
}

} // namespace firstdew::outlook
