#pragma once

#include "bath/Engine.h"

#include <span>

namespace firstdew::bath {

/// Charge of the readings in one run: straight line between readings of a phase, zero outside. mA·min.
[[nodiscard]] MilliampMinutes chargeOf(std::span<const MeterReading> readings);

/// The skin a session's current passes. At polarity +1 current enters at the first of a pair and leaves at the second:
/// right before left, hand before foot (which plate that is on a machine is for the machine's instructions to say).
enum class Limb { RightHand, LeftHand, RightFoot, LeftFoot, RightArmpit, LeftArmpit };

struct PhaseCharge {
    int phase = 0;
    int polarity = 0;
    std::optional<Side> side; ///< hand + foot
    Seconds length;           ///< from its first reading to its last
    MilliampMinutes charge;
    Milliamps peak;
};

struct LimbCharge {
    Limb limb{};
    MilliampMinutes in;  ///< entered here
    MilliampMinutes out; ///< left here
    [[nodiscard]] MilliampMinutes net() const { return {in.mAmin - out.mAmin}; }
};

/// Time above the limit; its ends lie where the straight line between readings crosses it.
struct OverLimit {
    double fromSecond = 0;
    double toSecond = 0;
    Milliamps peak;
};

struct Dose {
    MilliampMinutes charge;
    std::vector<PhaseCharge> byPhase;
    std::vector<LimbCharge> byLimb;
    Milliamps peak;
    std::vector<OverLimit> overLimit;
    std::optional<double> peakDensity; ///< mA/cm², where the contact area is known
};

/// What a session's readings come to. Straight line between readings of a phase, zero outside.
[[nodiscard]] Dose doseOf(std::span<const MeterReading> readings, Site site, Milliamps limit,
                          std::optional<SquareCentimetres> contact);

[[nodiscard]] inline Millicoulombs inMillicoulombs(MilliampMinutes charge) { return {charge.mAmin * 60}; }

} // namespace firstdew::bath

namespace firstdew::facts {
FIRSTDEW_TOKENS(bath::Limb, "right-hand", "left-hand", "right-foot", "left-foot", "right-armpit", "left-armpit");
} // namespace firstdew::facts
