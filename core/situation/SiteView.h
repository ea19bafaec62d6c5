#pragma once

#include "outlook/Dose.h"
#include "situation/Assess.h"

#include <vector>

// What the files that make up assess() share. Nobody else includes it.
namespace firstdew::situation {

/// Everything that the rules of one site use.
struct View {
    const Diary& diary;
    LocalDate today;
    diary::SiteInUse use;
    const std::vector<LocalDate>& sessions; ///< days with a completed session
    std::vector<LocalDate> treated;         ///< days with a session, also one stopped with most of its charge done
    std::vector<DayReport> sinceSession;    ///< reports on days after the last of these, and Spell::evening
    const diary::CourseSet* course = nullptr;
};

[[nodiscard]] inline View viewOf(const Diary& diary, const diary::SiteInUse& use)
{
    const diary::SiteDiary& site = diary.at(use.site);
    View v{diary, diary.today, use, site.sessionDays, {}, {}, site.course()};
    for (const outlook::TreatedDay& day : outlook::treatedDays(diary, use.site))
        v.treated.push_back(day.day);
    for (const DayReport& r : site.reports)
        if (v.treated.empty() || r.date > v.treated.back())
            v.sinceSession.push_back(r);
    return v;
}

[[nodiscard]] inline Reason because(ReasonKind kind)
{
    Reason r;
    r.kind = kind;
    return r;
}

[[nodiscard]] inline Reason because(ReasonKind kind, LocalDate date)
{
    Reason r = because(kind);
    r.date = date;
    return r;
}

} // namespace firstdew::situation
