#include "outlook/Intervals.h"

#include <algorithm>
#include <map>

namespace firstdew::outlook
{

namespace
{

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

/// Sessions up to this day belong to a course; nothing where there was none. A course without its review is not over.
std::optional<LocalDate> courseUntil(const Record& record, DiarySite site, LocalDate today)
{
    std::optional<LocalDate> until;
    for (const auto& c : record.all<Course>()) {
        if (!treats(c.payload.site).contains(site) || c.happened.date > today)
            continue;
        until = today;
        for (const auto& r : record.all<ReviewDone>())
            if (r.payload.site == c.payload.site && r.happened.date >= c.payload.start && r.happened.date <= today)
                until = r.happened.date;
    }
    return until;
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
    std::map<LocalDate, Report> days;
    for (const auto& e : record.all<CheckIn>()) {
        if (e.payload.site != site || e.happened.date > today)
            continue;
        const auto [it, fresh] =
            days.try_emplace(e.happened.date, Report{e.happened.date, e.payload.level, !e.payload.with.empty()});
        if (!fresh && e.payload.level > it->second.level)
            it->second = {e.happened.date, e.payload.level, !e.payload.with.empty()};
    }
    std::vector<Report> out;
    out.reserve(days.size());
    for (const auto& [date, report] : days)
        out.push_back(report);
    return out;
}

std::vector<Spell> spellsFor(const Record& record, DiarySite site, LocalDate today)
{
    const auto sessions = completedSessions(record, site, today);
    const auto reports = reportsOf(record, site, today);
    const auto course = courseUntil(record, site, today);
    const auto firstAfter = [&](LocalDate day) {
        return std::upper_bound(reports.begin(), reports.end(), day,
                                [](LocalDate d, const Report& r) { return d < r.date; });
    };
    std::vector<Spell> out;
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        const bool present = i + 1 == sessions.size();
        if (!present && sessions[i + 1] - sessions[i] <= 1)
            continue; // the spell of treatment goes on
        if (!present && course && sessions[i + 1] <= *course)
            continue; // between two sessions of a course
        // The day of the next session counts: it was reported before the session that it led to.
        out.push_back(
            spellOf(sessions[i], firstAfter(sessions[i]), present ? reports.end() : firstAfter(sessions[i + 1])));
    }
    return out;
}

} // namespace firstdew::outlook
