#include "situation/Next.h"

#include "protocol/WayIn.h"

#include <algorithm>

namespace firstdew::situation {

namespace {

bool isDue(Advice advice)
{
    return advice == Advice::DoCourseSession || advice == Advice::FirstDewTopUp || advice == Advice::TopUpDue ||
           advice == Advice::RestartCourse;
}

bool putOff(const SiteSituation& s)
{
    return std::ranges::any_of(s.reasons, [](const Reason& r) { return r.kind == ReasonKind::PutOff; });
}

bool treatedToday(const Diary& diary, Site site)
{
    return std::ranges::any_of(diary.sessions, [&](const auto& e) {
        return e.payload.completed && e.happened.date == diary.today &&
               (treats(e.payload.site).bits() & treats(site).bits()) != 0;
    });
}

} // namespace

std::optional<Site> sessionAfter(const Diary& diary, const Situation& situation, Site done)
{
    if (!treatedToday(diary, done))
        return std::nullopt;
    for (const auto& s : situation.sites)
        if (isDue(s.advice) && !putOff(s) && !treatedToday(diary, s.treatedAs))
            return s.treatedAs;
    const auto usual = protocol::usuallyFollowedBy(diary, done);
    const bool open = usual && std::ranges::any_of(situation.sites, [&](const auto& s) {
                          return s.treatedAs == *usual && s.stage != Stage::Paused && s.advice != Advice::Blocked;
                      });
    return open ? usual : std::nullopt;
}

} // namespace firstdew::situation
