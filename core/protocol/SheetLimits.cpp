#include "protocol/SheetLimits.h"

#include "protocol/Area.h"

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

} // namespace firstdew::protocol
