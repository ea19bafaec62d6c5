#include "protocol/SheetLimits.h"

#include "protocol/Area.h"
#include "protocol/CurrentAdvice.h"

#include <algorithm>

namespace firstdew::protocol {

std::vector<SheetLimit> limitsOf(const CareSheet& sheet, AgeGroup age)
{
    std::vector<SheetLimit> out;
    for (const Site site : allOf<Site>()) {
        if (!sheet.sites.contains(site))
            continue;
        for (const Waveform waveform : allOf<Waveform>()) {
            LimitQuery query{site, waveform, age, std::nullopt, {sheet}, std::nullopt, true};
            if (site == Site::Armpits) {
                query.contact = sheet.pad.value_or(kUnknownPad);
                query.padKnown = sheet.pad.has_value();
            }
            const LimitAnswer answer = limitFor(query);
            if (answer.allowed)
                out.push_back({site, waveform, answer.limit});
        }
    }
    return out;
}

std::optional<Milliamps> mostLevel(const CareSheet& sheet, Waveform waveform, AgeGroup age)
{
    std::optional<Milliamps> out;
    for (const SheetLimit& one : limitsOf(sheet, age))
        if (one.waveform == waveform)
            out = out ? std::min(*out, one.limit) : one.limit;
    return out;
}

std::optional<Milliamps> levelToStart(const CareSheet& sheet, Waveform waveform, AgeGroup age)
{
    std::optional<Milliamps> out;
    for (const SheetLimit& one : limitsOf(sheet, age))
        if (one.waveform == waveform) {
            const Milliamps aim = firstAim(one.site, waveform, one.limit);
            out = out ? std::min(*out, aim) : aim;
        }
    return out;
}

} // namespace firstdew::protocol
