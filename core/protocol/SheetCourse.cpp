#include "protocol/SheetCourse.h"

#include "protocol/CareSheets.h"
#include "protocol/Course.h"

#include <algorithm>

namespace firstdew::protocol {

namespace {

/// The course that runs on skin which `site` treats: chosen last, not reviewed, with sessions left to do.
const Course* runningCourse(const Diary& diary, Site site)
{
    for (const DiarySite skin : allOf<DiarySite>()) {
        const diary::CourseSet* set = treats(site).contains(skin) ? diary.at(skin).course() : nullptr;
        if (set == nullptr || set->firstReview)
            continue;
        const auto plan = templateDays(set->course.plan, set->course.days, set->course.start);
        const auto& days = diary.at(skin).sessionDays;
        const auto done = std::ranges::count_if(days, [&](LocalDate d) { return d >= set->course.start; });
        if (plan && done < static_cast<std::ptrdiff_t>(plan->days.size()))
            return &set->course;
    }
    return nullptr;
}

bool inForceAfter(const CareSheet& sheet, const Diary& diary, Site site)
{
    const CareSheet* present = sheetFor(diary, site);
    return sheet.sites.contains(site) && (present == nullptr || present->given <= sheet.given);
}

} // namespace

std::vector<PrescribedCourse> coursesOf(const CareSheet& sheet, const Diary& diary)
{
    std::vector<PrescribedCourse> out;
    for (const Site site : allOf<Site>()) {
        if (!sheet.plan || !inForceAfter(sheet, diary, site))
            continue;
        const CareSheet* present = sheetFor(diary, site);
        if (present != nullptr && present->plan == sheet.plan && present->days == sheet.days)
            continue;
        PrescribedCourse next{Course{site, *sheet.plan, sheet.days, diary.today, {}}, false, false};
        if (const Course* running = runningCourse(diary, site)) {
            next.goesOn = running->site == site && running->plan == *sheet.plan && running->days == sheet.days;
            next.replaces = !next.goesOn;
            if (next.goesOn)
                next.course = *running;
            else if (*sheet.plan != CourseTemplate::Prescribed) // prescribed days are those days
                next.course.free = running->free;
        }
        out.push_back(std::move(next));
    }
    return out;
}

std::vector<Payload> acceptanceOf(const CareSheet& sheet, const Diary& diary)
{
    std::vector<Payload> out{sheet};
    for (const Site site : allOf<Site>()) {
        if (!inForceAfter(sheet, diary, site))
            continue;
        for (const Site other : allOf<Site>()) {
            if (other == site || !shareSkin(other, site) || diary.chosen[other] != true || sheet.sites.contains(other))
                continue;
            out.emplace_back(SiteUse{other, false});
            if (other != Site::HandFoot)
                continue;
            const Site rest = site == Site::Hands ? Site::Feet : Site::Hands;
            if (!sheet.sites.contains(rest) && diary.chosen[rest] != true)
                out.emplace_back(SiteUse{rest, true});
        }
        if (diary.chosen[site] != true)
            out.emplace_back(SiteUse{site, true});
    }
    for (const auto& next : coursesOf(sheet, diary))
        if (!next.goesOn)
            out.emplace_back(next.course);
    return out;
}

} // namespace firstdew::protocol
