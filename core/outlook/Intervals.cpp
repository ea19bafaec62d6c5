#include "outlook/Intervals.h"

#include "outlook/Dose.h"

#include <algorithm>
#include <utility>

namespace firstdew::outlook {

namespace {

/// If the site is clammy this soon after the session and was not dry before, the session had no effect.
constexpr int kNeverDryWithin = 2;
/// A report of dampness no older than this says how the skin was at a session.
constexpr int kDampWithin = 2;

/// The first clammy report that counts as a return. Clammy on a stirred day followed by a dry report does not.
std::vector<DayReport>::const_iterator firstReturn(std::vector<DayReport>::const_iterator from,
                                                   std::vector<DayReport>::const_iterator to)
{
    for (auto it = from; it != to; ++it) {
        if (it->level == Level::Dry)
            continue;
        const bool contradicted = it->stirred() && std::next(it) != to && std::next(it)->level == Level::Dry;
        if (!contradicted)
            return it;
    }
    return to;
}

Spell spellOf(LocalDate last, std::vector<DayReport>::const_iterator from, std::vector<DayReport>::const_iterator to)
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

Spell spellAfter(const Diary& diary, DiarySite of, LocalDate session, LocalDate until)
{
    const SiteDiary& site = diary.at(of);
    const auto firstAfter = [&](LocalDate day) {
        return std::upper_bound(site.spellReports.begin(), site.spellReports.end(), day,
                                [](LocalDate d, const DayReport& r) { return d < r.date; });
    };
    Spell spell = spellOf(session, firstAfter(session), firstAfter(until));
    spell.watched = until - session;
    spell.otherwise = site.otherwiseTreated(session, until);
    return spell;
}

std::vector<Spell> spellsFor(const Diary& diary, DiarySite of)
{
    const SiteDiary& site = diary.at(of);
    const LocalDate today = diary.today;
    const auto treated = treatedDays(diary, of);
    std::vector<LocalDate> sessions;
    for (const TreatedDay& day : treated)
        sessions.push_back(day.day);
    const auto& reports = site.spellReports;
    const auto ofOneCourse = [&](LocalDate a, LocalDate b) {
        return std::any_of(site.courses.begin(), site.courses.end(), [&](const diary::CourseSet& c) {
            return a >= c.course.start && b <= c.firstReview.value_or(today); // a course without a review is not over
        });
    };
    const auto firstAfter = [&](LocalDate day) { // the first report after that day
        return std::upper_bound(reports.begin(), reports.end(), day,
                                [](LocalDate d, const DayReport& r) { return d < r.date; });
    };
    const auto onDamp = [&](std::size_t i) {
        const auto next = firstAfter(sessions[i]);
        const DayReport* last = next == reports.begin() ? nullptr : &*std::prev(next);
        if (i > 0 && (last == nullptr || last->date <= sessions[i - 1]))
            last = site.afterSessionOn(sessions[i - 1]); // nothing was said of the skin since
        return last != nullptr && last->level != Level::Dry && sessions[i] - last->date <= kDampWithin;
    };
    std::vector<Spell> out;
    double dose = 0; // the greatest of neighbouring days
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        const bool goesOn = i > 0 && sessions[i] - sessions[i - 1] <= 1;
        dose = goesOn ? std::max(dose, treated[i].dose) : treated[i].dose;
        const bool present = i + 1 == sessions.size();
        if (!present && sessions[i + 1] - sessions[i] <= 1)
            continue; // the treated spell continues
        if (!present && ofOneCourse(sessions[i], sessions[i + 1]))
            continue;
        // What was said on the day of the next session before that session still belongs to this spell.
        out.push_back(
            spellOf(sessions[i], firstAfter(sessions[i]), present ? reports.end() : firstAfter(sessions[i + 1])));
        out.back().onDamp = onDamp(i);
        if (const DayReport* said = out.back().onDamp ? site.afterSessionOn(sessions[i]) : nullptr)
            out.back().evening = *said;
        out.back().dose = dose;
        out.back().watched = (present ? today : sessions[i + 1]) - sessions[i];
        out.back().otherwise = site.otherwiseTreated(sessions[i], sessions[i] + out.back().watched);
    }
    return out;
}

} // namespace firstdew::outlook
