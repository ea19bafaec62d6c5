#include "protocol/TeachBack.h"

#include "protocol/CareSheets.h"
#include "protocol/Limits.h"
#include "protocol/MayBegin.h"

#include <algorithm>
#include <fmt/format.h>

namespace firstdew::protocol {

namespace {

std::size_t charactersIn(const std::string& text)
{
    return static_cast<std::size_t>(
        std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xc0U) != 0x80U; }));
}

Error wrong(const char* field, std::string why) { return {"taught-invalid", field, std::move(why)}; }

} // namespace

const Entry<Taught>* taughtAt(const Diary& diary, Site site)
{
    const auto last =
        std::find_if(diary.taught.rbegin(), diary.taught.rend(), [&](const auto& e) { return e.payload.site == site; });
    return last == diary.taught.rend() ? nullptr : &*last;
}

std::vector<Entry<Taught>> taughtSessions(const Diary& diary)
{
    std::vector<Entry<Taught>> out;
    for (const Site site : allOf<Site>())
        if (const auto* taught = taughtAt(diary, site))
            out.push_back(*taught);
    return out;
}

bool offersTeachBack(const Diary& diary, Site site)
{
    const auto before = std::ranges::count_if(diary.sessions, [&](const auto& e) {
        return e.payload.site == site && e.payload.completed && e.happened.date < diary.today;
    });
    return taughtAt(diary, site) == nullptr && before < kTeachBackSessions;
}

Result<Done> checkTaught(const Diary& diary, const Taught& taught)
{
    if (isBlank(taught.who))
        return wrong("who", "is empty; say who watched, by name or role");
    if (charactersIn(taught.who) > kMostWatcher)
        return wrong("who", fmt::format("is longer than {} characters; shorten it", kMostWatcher));
    if (taught.ticks.empty() && !taught.level)
        return wrong("ticks", "are empty; tick what was seen, or give the level agreed");
    const LimitQuery query = limitQueryFor(diary, taught.site, taught.waveform);
    if (const auto refused = refusalOf(query))
        return *refused;
    if (!taught.level)
        return Done{};
    if (!(taught.level->mA > 0))
        return wrong("level_ma", fmt::format("{} mA is no level; give one above zero, or none", taught.level->mA));
    if (const Milliamps limit = limitFor(query).limit; *taught.level > limit)
        return Error{"taught-above-limit", fmt::format("{:g}", limit.mA),
                     fmt::format("{:g} mA is above the limit of {:g} mA there; agree on a level up to the limit",
                                 taught.level->mA, limit.mA)};
    return Done{};
}

std::optional<Milliamps> agreedLevel(const Diary& diary, Site site, Waveform waveform)
{
    std::optional<Milliamps> out;
    const auto take = [&](const std::optional<Milliamps>& level) {
        if (level)
            out = out ? std::min(*out, *level) : *level;
    };
    if (const auto* taught = taughtAt(diary, site); taught != nullptr && taught->payload.waveform == waveform)
        take(taught->payload.level);
    if (const CareSheet* sheet = sheetFor(diary, site); sheet != nullptr && sheet->waveform == waveform)
        take(sheet->level);
    return out;
}

} // namespace firstdew::protocol
