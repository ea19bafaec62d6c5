#include "protocol/Skin.h"

#include <algorithm>

namespace firstdew::protocol {

namespace {

/// Whether a clinician's word frees the skin of a harm found on `day` and recorded at `position`. The word has to come
/// later in both: one written down before the harm was about something else. A harm dated ahead was found by a clock
/// that was wrong, so that its day says nothing.
bool freed(const Diary& diary, DiarySite site, LocalDate day, std::size_t position)
{
    const LocalDate since = std::min(day, diary.today);
    return std::ranges::any_of(diary.skinClearances, [&](const auto& e) {
        const bool later = e.position > position && e.payload.given >= since;
        return later && e.payload.site == site && !isBlank(e.payload.who) && e.payload.given <= diary.today;
    });
}

/// Keeps the latest harm that nobody has freed the skin of.
void consider(std::optional<SkinBar>& latest, const Diary& diary, DiarySite site, SetOf<SkinFinding> skin,
              const LocalTime& found, std::size_t position)
{
    if (!harms(skin) || (latest && latest->since > found.date) || freed(diary, site, found.date, position))
        return;
    latest = SkinBar{site, skin.contains(SkinFinding::Burn) ? SkinFinding::Burn : SkinFinding::Blister, found.date};
}

} // namespace

std::optional<SkinBar> skinBar(const Diary& diary, DiarySite site)
{
    std::optional<SkinBar> latest;
    for (const auto* sessions : {&diary.sessions, &diary.sessionsAhead})
        for (const auto& e : *sessions)
            if (treats(e.payload.site).contains(site))
                consider(latest, diary, site, e.payload.skin, e.happened, e.position);
    for (const auto* found : {&diary.skin, &diary.skinAhead})
        for (const auto& e : *found)
            if (e.payload.site == site)
                consider(latest, diary, site, e.payload.skin, e.happened, e.position);
    return latest;
}

std::optional<SkinBar> skinBar(const Diary& diary, Site site)
{
    for (const DiarySite skin : allOf<DiarySite>())
        if (treats(site).contains(skin))
            if (const auto bar = skinBar(diary, skin))
                return bar;
    return std::nullopt;
}

} // namespace firstdew::protocol
