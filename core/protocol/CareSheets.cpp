#include "protocol/CareSheets.h"

#include "protocol/CurrentAdvice.h"
#include "protocol/Limits.h"

#include <algorithm>

namespace firstdew::protocol {

bool directNotTolerated(const Diary& diary, Site site)
{
    const auto last = std::find_if(diary.sessions.rbegin(), diary.sessions.rend(), [&](const auto& e) {
        return e.payload.site == site && e.payload.waveform == Waveform::Direct;
    });
    if (last == diary.sessions.rend())
        return false;
    const Session& s = last->payload;
    const auto level = s.comfortable ? s.comfortable : s.peak;
    return (s.comfort == Comfort::Unpleasant || s.comfort == Comfort::Painful) && level && *level <= kPoorlyTolerated;
}

namespace {

bool isFor(const CareSheet& sheet, Site site) { return sheet.sites.empty() || sheet.sites.contains(site); }

} // namespace

const CareSheet* sheetFor(const Diary& diary, Site site)
{
    const Entry<CareSheet>* newest = nullptr;
    const auto order = [](const Entry<CareSheet>& e) { return std::pair(e.payload.given, e.position); };
    for (const auto& e : diary.careSheets)
        if (isFor(e.payload, site) && e.payload.given <= diary.today &&
            (newest == nullptr || order(e) > order(*newest)))
            newest = &e;
    return newest == nullptr ? nullptr : &newest->payload;
}

std::vector<CareSheet> sheetsBinding(const Diary& diary, Site site)
{
    std::vector<CareSheet> out;
    const auto add = [&](Site of) {
        if (const CareSheet* sheet = sheetFor(diary, of))
            out.push_back(*sheet);
    };
    std::vector<Site> path{site};
    if (site == Site::HandFoot)
        path.insert(path.end(), {Site::Hands, Site::Feet});
    for (const Site of : path)
        add(of);
    for (const auto& e : diary.careSheets)
        if (e.payload.given > diary.today && std::ranges::any_of(path, [&](Site of) { return isFor(e.payload, of); }))
            out.push_back(e.payload);
    return out;
}

std::vector<SheetInForce> sheetsInForce(const Diary& diary)
{
    std::vector<SheetInForce> out;
    for (const Site site : allOf<Site>()) {
        const CareSheet* sheet = sheetFor(diary, site);
        if (sheet == nullptr)
            continue;
        const auto known = std::ranges::find(out, *sheet, &SheetInForce::sheet);
        if (known != out.end())
            known->sites.push_back(site);
        else
            out.push_back({*sheet, {site}});
    }
    return out;
}

Allowances allowancesFor(const Diary& diary, Site site)
{
    Allowances out;
    if (const CareSheet* sheet = sheetFor(diary, site)) {
        out.raise = sheet->raise.value_or(out.raise);
        out.lower = sheet->lower.value_or(out.lower);
        out.swapping = sheet->swapping.value_or(out.swapping);
    }
    return out;
}

Waveform waveformFor(const Diary& diary, Site site)
{
    const Machine machine = diary.machine.value_or(Machine{});
    const CareSheet* sheet = sheetFor(diary, site);
    if (site == Site::Armpits || !machine.direct)
        return Waveform::Pulsed;
    if (sheet != nullptr && sheet->waveform)
        return *sheet->waveform;
    const bool child = ageGroupOn(diary.person ? diary.person->birth : std::nullopt, diary.today) == AgeGroup::Child;
    return machine.pulsed && (child || directNotTolerated(diary, site)) ? Waveform::Pulsed : Waveform::Direct;
}

} // namespace firstdew::protocol
