#include "protocol/Preparation.h"

#include <algorithm>

namespace firstdew::protocol {

// Common practice, no source.
std::vector<PrepItem> preparationFor(Site site, const Machine& machine, WayOfWorking way, bool smallWounds)
{
    const bool pads = site == Site::Armpits;
    std::vector<PrepItem> out{PrepItem::JewelleryOff, PrepItem::SkinChecked};
    if (smallWounds)
        out.push_back(PrepItem::WoundsCovered);
    out.push_back(PrepItem::NoAntiperspirant);
    if (pads || site == Site::Feet || site == Site::HandFoot)
        out.push_back(PrepItem::NotShaved);
    if (pads) {
        out.push_back(PrepItem::PadsSoaked);
    } else {
        if (site != Site::Feet)
            out.push_back(PrepItem::BathsOnTable);
        if (site != Site::Hands)
            out.push_back(PrepItem::BathsOnFloor);
        out.push_back(PrepItem::PlateUnderGrid);
        out.push_back(PrepItem::WarmWater); // nobody carries full trays, or builds in them
    }
    if (machine.power == PowerSource::Cells)
        out.push_back(PrepItem::CellsIn);
    out.push_back(PrepItem::LeadsIn);
    if (way == WayOfWorking::Helper)
        out.push_back(PrepItem::HelperStays);
    if (way == WayOfWorking::HandsUnder)
        out.push_back(PrepItem::RemoteInReach);
    return out;
}

std::vector<PrepWait> waitsFor(const Preparation& answers, LocalTime now)
{
    std::vector<PrepWait> out;
    const auto ask = [&](PrepItem item, const std::optional<LocalTime>& since, int minutes) {
        if (!since)
            return;
        const LocalTime until = std::min(*since, now).plusMinutes(minutes);
        if (until > now)
            out.push_back({item, until});
    };
    ask(PrepItem::NoAntiperspirant, answers.antiperspirant, kAntiperspirantHours * 60);
    ask(PrepItem::NotShaved, answers.shaved, kShavingDays * 24 * 60);
    std::stable_sort(out.begin(), out.end(), [](const PrepWait& a, const PrepWait& b) { return a.until > b.until; });
    return out;
}

} // namespace firstdew::protocol
