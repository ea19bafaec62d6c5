#include "bath/Engine.h"
#include "bath/Turn.h"

#include <algorithm>
#include <cmath>

// What a page asks of a state: what its button says, and which readings mean something.
namespace firstdew::bath {

using protocol::StepKind;

std::optional<BathEventKind> mainEvent(const State& s)
{
    using enum BathEventKind;
    if (s.phase != Phase::Running || s.script.steps.empty())
        return std::nullopt;
    const bool zero = s.current == Current::Zero;
    const bool under = s.script.request.way == WayOfWorking::HandsUnder;
    switch (s.script.steps[s.step].kind) {
    case StepKind::CheckList: return Begin;
    case StepKind::SwitchOn: return zero ? SwitchedOn : Lowered;
    case StepKind::Announce: return zero ? std::nullopt : std::optional(Lowered);
    case StepKind::Raise:
        if (under && !zero)
            return s.alarm ? std::optional(Lowered) : std::nullopt;
        if (s.alarm) // nothing above the limit is a level to go on with
            return std::nullopt;
        return under ? SwitchedOn : Raised;
    case StepKind::Hold:
        if (zero)
            return under ? SwitchedOn : Raised;
        if (under && s.alarm)
            return Lowered;
        return std::nullopt;
    case StepKind::Lower:
        if (under && !s.alarm)
            return std::nullopt;
        return Lowered;
    case StepKind::HandsOut: return Lowered;
    case StepKind::Swap: return zero ? Swapped : Lowered;
    case StepKind::MoveSide: return zero ? MovedSide : Lowered;
    case StepKind::Finish: break;
    }
    return std::nullopt;
}

bool handsAreUnder(const State& s)
{
    if (s.phase != Phase::Running || s.script.steps.empty() || s.script.request.way != WayOfWorking::HandsUnder)
        return false;
    const StepKind kind = s.script.steps[s.step].kind;
    return (kind == StepKind::Announce || inPhase(kind)) && !mainEvent(s);
}

protocol::Drawings drawingsNow(const State& s)
{
    using protocol::Drawing;
    if (s.phase != Phase::Running || s.script.steps.empty())
        return {};
    const auto& step = s.script.steps[s.step];
    const auto& q = s.script.request;
    const auto event = mainEvent(s);
    if (s.alarm || (event == BathEventKind::Lowered && step.kind != StepKind::HandsOut))
        return {lowerDrawing(q)};
    if (step.kind != StepKind::SwitchOn && event == BathEventKind::SwitchedOn)
        return {Drawing::AtZero, Drawing::HandsInTrays}; // both hands under: they go in again first
    if (step.kind == StepKind::Hold && event == BathEventKind::Raised)
        return {raiseDrawing(q)};
    return drawingsOf(step, q);
}

bool plausible(Milliamps reading)
{
    return std::isfinite(reading.mA) && reading.mA >= 0 && reading <= kMostPlausibleReading;
}

bool mayBeComfortable(Milliamps reading, Milliamps limit) { return reading.mA > 0 && reading <= limit; }

std::optional<Milliamps> mostComfortable(const State& s)
{
    std::optional<Milliamps> most;
    for (const auto* readings : {&s.interrupted, &s.readings})
        for (const MeterReading& r : *readings)
            if (mayBeComfortable(r.current, s.script.request.limit))
                most = std::max(most.value_or(r.current), r.current);
    return most;
}

bool isSteady(std::span<const MeterReading> readings)
{
    if (readings.size() < 2)
        return false;
    if (readings.size() > 2 && readings.back().current > readings[readings.size() - 3].current)
        return false;
    double least = readings.back().current.mA;
    double most = least;
    for (auto r = readings.rbegin(); r != readings.rend(); ++r) {
        least = std::min(least, r->current.mA);
        most = std::max(most, r->current.mA);
        if (most - least > kSteadyWithin.mA)
            return false;
        if (readings.back().atMs - r->atMs >= kSteadyApartMs)
            return true;
    }
    return false;
}

} // namespace firstdew::bath
