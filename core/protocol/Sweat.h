#pragma once

#include "facts/Payloads.h"
#include "facts/Result.h"

namespace firstdew::protocol {

using namespace facts;

/// Sweat of healthy people by weighing paper, mg/min per m² of body surface (Stefaniak & Proczko, Clin Auton Res
/// 2013;23(4)). `upperNormal` is the published limit, mean + 2 SD.
struct NormalSweat {
    DiarySite site{};
    double mean = 0;
    double sd = 0;
    double upperNormal = 0;
};
[[nodiscard]] NormalSweat normalSweat(DiarySite site);

/// The other cut-off, in mg within five minutes (Thorlacius et al., Int J Dermatol 2015;54:e409-15).
inline constexpr Milligrams kFiveMinuteCutOff{100};

/// What the paper gained, by the minute; the weighing is a plausible one, as sweatRate() says.
[[nodiscard]] inline double mgPerMinute(const Weighing& w) { return (w.after.mg - w.before.mg) / w.minutes; }

struct SweatRate {
    double mgPerMin = 0;
    double mgPerMinPerM2 = 0;
    double upperNormal = 0; ///< of the site, mg/min per m²
    bool above = false;     ///< above `upperNormal`
    /// At this rate more than 100 mg in five minutes. Nothing for feet: the paper measured palms and armpits.
    std::optional<bool> aboveFiveMinuteCut;
};

/// Gravimetry: what the paper gained, by the minute and by body surface. Refused: a number that is none, paper that
/// weighs nothing or got lighter, more than 100 g, a time of 0 or above a day.
[[nodiscard]] Result<SweatRate> sweatRate(const Weighing& weighing, SquareMetres body);

} // namespace firstdew::protocol
