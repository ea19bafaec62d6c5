#include "situation/Next.h"

#include "protocol/WayIn.h"

#include <algorithm>

namespace firstdew::situation {

namespace {

bool putOff(const SiteSituation& s)
{
    return std::ranges::any_of(s.reasons, [](const Reason& r) { return r.kind == ReasonKind::PutOff; });
}

bool treatedToday(const Diary& diary, Site site)
{
    return std::ranges::any_of(diary.sessions, [&](const auto& e) {
        return e.payload.completed && e.happened.date == diary.today && shareSkin(e.payload.site, site);
    });
}

} // namespace

std::optional<Site> sessionAfter(const Diary& diary, const Situation& situation, Site done)
{
    if (!treatedToday(diary, done))
        return std::nullopt;
    for (const auto& s : situation.sites)
        if (callsForSession(s.advice) && !putOff(s) && !treatedToday(diary, s.treatedAs))
            return s.treatedAs;
    const auto usual = protocol::usuallyFollowedBy(diary, done);
    const bool open = usual && std::ranges::any_of(situation.sites, [&](const auto& s) {
                          return s.treatedAs == *usual && s.stage != Stage::Paused && s.advice != Advice::Blocked;
                      });
    return open ? usual : std::nullopt;
}

} // namespace firstdew::situation
