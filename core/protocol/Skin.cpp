#include "protocol/Skin.h"

namespace firstdew::protocol {

namespace {

/// The latest harm found at a site, and where it stands among the facts.
struct Harm {
    SkinBar bar;
    std::size_t position = 0;
};

void consider(std::optional<Harm>& latest, DiarySite site, SetOf<SkinFinding> skin, LocalDate day, std::size_t position)
{
    if (!harms(skin) || (latest && latest->bar.since > day))
        return;
    const auto finding = skin.contains(SkinFinding::Burn) ? SkinFinding::Burn : SkinFinding::Blister;
    latest = Harm{{site, finding, day}, position};
}

std::optional<Harm> latestHarm(const Diary& diary, DiarySite site)
{
    std::optional<Harm> latest;
    for (const auto* sessions : {&diary.sessions, &diary.sessionsTomorrow})
        for (const auto& e : *sessions)
            if (treats(e.payload.site).contains(site))
                consider(latest, site, e.payload.skin, e.happened.date, e.position);
    for (const auto& e : diary.skin)
        if (e.payload.site == site)
            consider(latest, site, e.payload.skin, e.happened.date, e.position);
    return latest;
}

} // namespace

std::optional<SkinBar> skinBar(const Diary& diary, DiarySite site)
{
    const auto harm = latestHarm(diary, site);
    if (!harm)
        return std::nullopt;
    for (const auto& e : diary.skinClearances) {
        const bool after =
            e.payload.given > harm->bar.since || (e.payload.given == harm->bar.since && e.position > harm->position);
        if (e.payload.site == site && !e.payload.who.empty() && e.payload.given <= diary.today && after)
            return std::nullopt;
    }
    return harm->bar;
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
