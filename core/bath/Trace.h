#pragma once

#include "bath/Engine.h"

#include <span>

// A list of meter readings from outside, without the steps of a session.
namespace firstdew::bath {

struct TracePoint {
    double second = 0;
    double mA = 0;
};

/// Longest time a trace may span, s.
inline constexpr double kLongestTrace = 86'400;

/// What is wrong with a trace, and at which of its points.
struct TraceError {
    Error error;
    std::size_t point = 0;
};

/// Refused, with the point: what is no number, a time that goes back or lies below 0 or beyond a day, a current below
/// zero or above kMostPlausibleReading. Two points at one second are a jump.
[[nodiscard]] std::optional<TraceError> refusalOfTrace(std::span<const TracePoint> trace);

/// The readings of a sound trace, told apart into phases: a phase runs from zero current to zero current. Polarity
/// turns from phase to phase; with hand + foot the side changes after two.
[[nodiscard]] std::vector<MeterReading> readingsOf(std::span<const TracePoint> trace, Site site, Side firstSide);

/// What a nurse would ask about a trace, whatever its dose.
enum class TraceDoubt {
    BeginsAboveZero,
    EndsAboveZero,
    LongGap,       ///< more than two minutes between readings: the meter is to be read every minute
    TooManyPhases, ///< more than the session has: polarity and limb cannot be told for sure
    TooFewPhases,  ///< fewer: some skin got one polarity only
    NoSwap         ///< current flowed on beyond a phase, its raising and its lowering
};
[[nodiscard]] std::vector<TraceDoubt> doubtsOf(std::span<const MeterReading> readings, Site site);

} // namespace firstdew::bath

namespace firstdew::facts {
FIRSTDEW_TOKENS(bath::TraceDoubt, "begins-above-zero", "ends-above-zero", "long-gap", "too-many-phases",
                "too-few-phases", "no-swap");
} // namespace firstdew::facts
