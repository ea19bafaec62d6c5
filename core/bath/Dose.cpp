#include "bath/Dose.h"

#include <algorithm>

namespace firstdew::bath {

namespace {

struct Pair {
    Limb first{};
    Limb second{};
};

/// Whether current flowed from one reading to the other.
bool joined(const MeterReading& a, const MeterReading& b)
{
    return a.phase == b.phase && a.stretch == b.stretch && b.atMs >= a.atMs;
}

Pair pairOf(Site site, std::optional<Side> side)
{
    switch (site) {
    case Site::Hands: return {Limb::RightHand, Limb::LeftHand};
    case Site::Feet: return {Limb::RightFoot, Limb::LeftFoot};
    case Site::HandFoot:
        return side == Side::Left ? Pair{Limb::LeftHand, Limb::LeftFoot} : Pair{Limb::RightHand, Limb::RightFoot};
    case Site::Armpits: return {Limb::RightArmpit, Limb::LeftArmpit};
    }
    return {};
}

std::vector<PhaseCharge> byPhase(std::span<const MeterReading> readings)
{
    std::vector<PhaseCharge> out;
    for (auto from = readings.begin(); from != readings.end();) {
        const auto to =
            std::find_if(from, readings.end(), [&](const MeterReading& r) { return r.phase != from->phase; });
        const auto peak = std::max_element(
            from, to, [](const MeterReading& a, const MeterReading& b) { return a.current < b.current; });
        if (from->phase != 0) // between phases no current should flow: nothing is counted to a phase there
            out.push_back({from->phase,
                           from->polarity,
                           from->side,
                           {static_cast<int>(((to - 1)->atMs - from->atMs + 500) / 1000)},
                           chargeOf({from, to}),
                           peak->current});
        from = to;
    }
    return out;
}

std::vector<LimbCharge> byLimb(std::span<const PhaseCharge> phases, Site site)
{
    std::vector<LimbCharge> out;
    const auto at = [&](Limb limb) -> LimbCharge& {
        const auto it = std::find_if(out.begin(), out.end(), [&](const LimbCharge& l) { return l.limb == limb; });
        return it != out.end() ? *it : out.emplace_back(LimbCharge{limb, {}, {}});
    };
    for (const PhaseCharge& p : phases) {
        const Pair pair = pairOf(site, p.side);
        const bool forward = p.polarity >= 0;
        at(pair.first); // both stand in the table, the first one first
        at(pair.second);
        at(forward ? pair.first : pair.second).in.mAmin += p.charge.mAmin;
        at(forward ? pair.second : pair.first).out.mAmin += p.charge.mAmin;
    }
    return out;
}

double second(const MeterReading& r) { return static_cast<double>(r.atMs) / 1000; }

/// Where the line from `a` to `b` crosses the limit.
double crossing(const MeterReading& a, const MeterReading& b, Milliamps limit)
{
    return second(a) + (second(b) - second(a)) * (limit.mA - a.current.mA) / (b.current.mA - a.current.mA);
}

std::vector<OverLimit> overLimit(std::span<const MeterReading> readings, Milliamps limit)
{
    std::vector<OverLimit> out;
    bool above = false;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const MeterReading& r = readings[i];
        const bool follows = i > 0 && joined(readings[i - 1], r);
        if (above && !follows)
            above = false;
        if (above) {
            const bool still = r.current > limit;
            out.back().toSecond = still ? second(r) : crossing(readings[i - 1], r, limit);
            out.back().peak = std::max(out.back().peak, r.current);
            above = still;
        } else if (r.current > limit) {
            out.push_back({follows ? crossing(readings[i - 1], r, limit) : second(r), second(r), r.current});
            above = true;
        }
    }
    return out;
}

} // namespace

MilliampMinutes chargeOf(std::span<const MeterReading> readings)
{
    double sum = 0;
    for (std::size_t i = 1; i < readings.size(); ++i) {
        const MeterReading& a = readings[i - 1];
        const MeterReading& b = readings[i];
        if (joined(a, b))
            sum += (a.current.mA + b.current.mA) / 2 * static_cast<double>(b.atMs - a.atMs) / 60000.0;
    }
    return {sum};
}

Dose doseOf(std::span<const MeterReading> readings, Site site, Milliamps limit,
            std::optional<SquareCentimetres> contact)
{
    Dose out;
    out.charge = chargeOf(readings);
    out.byPhase = byPhase(readings);
    out.byLimb = byLimb(out.byPhase, site);
    for (const MeterReading& r : readings)
        out.peak = std::max(out.peak, r.current);
    out.overLimit = overLimit(readings, limit);
    if (contact && contact->cm2 > 0)
        out.peakDensity = out.peak.mA / contact->cm2;
    return out;
}

} // namespace firstdew::bath
