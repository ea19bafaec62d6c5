#include "protocol/Limits.h"

#include <algorithm>

namespace firstdew::protocol {

namespace {

struct TradeLimit {
    Waveform waveform{};
    AgeGroup age{};
    Milliamps limit;
    LimitRow row{};
};

constexpr std::array kTradeLimits{
    // Common practice; NHS hospital leaflet WPR26540: adults 20 mA, children 15 mA.
    TradeLimit{Waveform::Direct, AgeGroup::Adult, {20}, LimitRow::AdultDirect},
    TradeLimit{Waveform::Direct, AgeGroup::Child, {15}, LimitRow::ChildDirect},
    // Common practice, no source.
    TradeLimit{Waveform::Pulsed, AgeGroup::Adult, {30}, LimitRow::AdultPulsed},
    // Our own choice, cautious: the level at which an older child is advised to try direct current instead.
    TradeLimit{Waveform::Pulsed, AgeGroup::Child, {20}, LimitRow::ChildPulsed},
};

const TradeLimit& tradeLimit(Waveform waveform, AgeGroup age)
{
    return *std::find_if(kTradeLimits.begin(), kTradeLimits.end(),
                         [&](const TradeLimit& t) { return t.waveform == waveform && t.age == age; });
}

std::optional<LimitRow> refusal(const LimitQuery& q)
{
    // Common practice, no source: armpits with pulsed current only, always.
    if (q.site == Site::Armpits && q.waveform == Waveform::Direct)
        return LimitRow::ArmpitsPulsedOnly;
    if (!q.sheets.empty() && q.sheets.front().waveform && *q.sheets.front().waveform != q.waveform &&
        q.site != Site::Armpits)
        return LimitRow::PrescribedWaveform;
    if (q.machine && !(q.waveform == Waveform::Direct ? q.machine->direct : q.machine->pulsed))
        return LimitRow::MachineLacksWaveform;
    return std::nullopt;
}

} // namespace

LimitAnswer limitFor(const LimitQuery& query)
{
    LimitAnswer out;
    if (const auto row = refusal(query)) {
        out.binding = *row;
        out.applied.push_back(*row);
        return out;
    }
    const TradeLimit& trade = tradeLimit(query.waveform, query.age);
    out.allowed = true;
    out.limit = trade.limit;
    out.binding = trade.row;
    const auto lowerTo = [&](Milliamps limit, LimitRow row) {
        out.applied.push_back(row);
        if (limit < out.limit) {
            out.limit = limit;
            out.binding = row;
        }
    };
    out.applied.push_back(trade.row);
    for (const CareSheet& sheet : query.sheets) {
        const auto& written = query.waveform == Waveform::Direct ? sheet.directLimit : sheet.pulsedLimit;
        if (written && written->mA > 0)
            lowerTo(*written, LimitRow::CareSheet);
    }
    if (query.contact && query.contact->cm2 > 0) {
        lowerTo({kDensityCeiling * query.contact->cm2}, query.padKnown ? LimitRow::Density : LimitRow::PadUnknown);
        const Milliamps warn{kDensityWarning * query.contact->cm2};
        if (warn < out.limit)
            out.warnAbove = warn;
    }
    return out;
}

AgeGroup ageGroupOn(std::optional<LocalDate> birth, LocalDate day)
{
    return birth && ageInYears(*birth, day) >= kAdultFromYears ? AgeGroup::Adult : AgeGroup::Child;
}

} // namespace firstdew::protocol
