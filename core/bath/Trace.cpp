#include "bath/Trace.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace firstdew::bath {

namespace {

constexpr long long kLongGapMs = 120'000; // our own choice: one minute's reading left out

std::optional<Error> refusalOf(const TracePoint& p)
{
    if (!std::isfinite(p.second))
        return Error{"time-not-a-number", "second", "the time is not a number; give seconds from the beginning"};
    if (p.second < 0 || p.second > kLongestTrace)
        return Error{"time-out-of-range", "second",
                     fmt::format("{:g} s is not between 0 and a day; give seconds from the beginning", p.second)};
    if (!std::isfinite(p.mA))
        return Error{"reading-not-a-number", "milliamp",
                     "the reading is not a number; leave the line out if the meter was not read"};
    if (p.mA < 0)
        return Error{
            "reading-negative", "milliamp",
            fmt::format("{:g} mA is below zero; give the size of the current, polarity follows from the phase", p.mA)};
    if (p.mA > kMostPlausibleReading.mA)
        return Error{
            "reading-implausible", "milliamp",
            fmt::format("{:g} mA cannot be a reading of a machine for this treatment; check the number, and if "
                        "the meter shows it, machine off",
                        p.mA)};
    return std::nullopt;
}

} // namespace

std::optional<TraceError> refusalOfTrace(std::span<const TracePoint> trace)
{
    for (std::size_t i = 0; i < trace.size(); ++i) {
        if (auto error = refusalOf(trace[i]))
            return TraceError{*error, i};
        if (i > 0 && trace[i].second < trace[i - 1].second)
            return TraceError{{"time-goes-back", "second",
                               fmt::format("{:g} s comes after {:g} s; put the readings in the order of time",
                                           trace[i].second, trace[i - 1].second)},
                              i};
    }
    return std::nullopt;
}

std::vector<MeterReading> readingsOf(std::span<const TracePoint> trace, Site site, Side firstSide)
{
    std::vector<MeterReading> out;
    int phase = 1;
    const auto add = [&](const TracePoint& p) {
        std::optional<Side> side;
        if (site == Site::HandFoot)
            side = phase <= 2 ? firstSide : firstSide == Side::Right ? Side::Left : Side::Right;
        out.push_back({std::llround(p.second * 1000), {p.mA}, phase, phase % 2 == 1 ? 1 : -1, side, phase});
    };
    const auto flows = [&](std::size_t i) { return trace[i].mA > 0; };
    std::size_t end = trace.size(); // after the last point at which current flows
    while (end > 0 && !flows(end - 1))
        --end;
    bool flowed = false;
    for (std::size_t i = 0; i < trace.size(); ++i) {
        const bool waiting = !flowed && !flows(i) && i + 1 < end && !flows(i + 1);
        if (!waiting)
            add(trace[i]);
        if (flowed && !flows(i) && i < end) {
            ++phase; // the zero ends one phase and may begin the next
            flowed = false;
            if (flows(i + 1))
                add(trace[i]);
        }
        flowed = flowed || flows(i);
    }
    return out;
}

std::vector<TraceDoubt> doubtsOf(std::span<const MeterReading> readings, Site site)
{
    std::vector<TraceDoubt> out;
    if (readings.empty())
        return out;
    if (readings.front().current.mA > 0)
        out.push_back(TraceDoubt::BeginsAboveZero);
    if (readings.back().current.mA > 0)
        out.push_back(TraceDoubt::EndsAboveZero);
    const auto plan = protocol::phasesFor(site);
    const long long longest = 1000LL * (plan.hold.s + 2 * protocol::kMostAllowance.s);
    bool gap = false;
    bool noSwap = false;
    long long flowing = 0;
    for (std::size_t i = 1; i < readings.size(); ++i) {
        const MeterReading& a = readings[i - 1];
        const MeterReading& b = readings[i];
        const bool flows = a.phase == b.phase && (a.current.mA > 0 || b.current.mA > 0);
        gap = gap || (flows && b.atMs - a.atMs > kLongGapMs);
        flowing = flows ? flowing + b.atMs - a.atMs : 0;
        noSwap = noSwap || flowing > longest;
    }
    if (gap)
        out.push_back(TraceDoubt::LongGap);
    if (readings.back().phase > plan.phases)
        out.push_back(TraceDoubt::TooManyPhases);
    if (readings.back().phase < plan.phases)
        out.push_back(TraceDoubt::TooFewPhases);
    if (noSwap)
        out.push_back(TraceDoubt::NoSwap);
    return out;
}

} // namespace firstdew::bath
