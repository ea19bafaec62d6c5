#pragma once

#include "facts/Payloads.h"

#include <optional>
#include <vector>

namespace firstdew::protocol {

using namespace facts;

/// Current density above which a warning is due, mA/cm²: intact skin bears this much direct current without
/// harm (Shrivastava & Singh, Br J Dermatol 1977;96:189, as cited in reviews; the page from memory).
inline constexpr double kDensityWarning = 0.2;
/// Current density above which no target is advised, mA/cm²: the ceiling commonly quoted for iontophoresis
/// (e.g. Costello & Jeske, Phys Ther 1995;75:554-563; the page from memory).
inline constexpr double kDensityCeiling = 0.5;
/// Treated as a child before this birthday (medical advice before treating children: common practice, no source).
inline constexpr int kAdultFromYears = 18;

/// The rule that sets a limit.
enum class LimitRow {
    AdultDirect,
    ChildDirect,
    AdultPulsed,
    ChildPulsed,
    CareSheet,          ///< the prescriber's lower limit
    Density,            ///< 0.5 mA/cm² over the contact area
    PadUnknown,         ///< the same over kUnknownPad, since nobody said how large the pads are
    ArmpitsPulsedOnly,  ///< refuses direct current at the armpits
    PrescribedWaveform, ///< refuses a waveform other than the prescriber's
    MachineLacksWaveform
};

struct LimitQuery {
    Site site{};
    Waveform waveform{};
    AgeGroup age = AgeGroup::Child;           ///< the cautious reading where the birth date is unknown
    std::optional<Machine> machine;           ///< nothing: not asked
    std::vector<CareSheet> sheets;            ///< whose limits bind; the first one is that of the site itself
    std::optional<SquareCentimetres> contact; ///< smallest contact area of the path, see contactArea()
    bool padKnown = true;                     ///< false: `contact` is kUnknownPad
};

struct LimitAnswer {
    bool allowed = false;
    Milliamps limit;                    ///< 0 where not allowed
    LimitRow binding{};                 ///< the row that set `limit` or refused
    std::vector<LimitRow> applied;      ///< every row that was looked at and applies
    std::optional<Milliamps> warnAbove; ///< 0.2 mA/cm² over the contact area, where that is below the limit
};

/// What may be advised here, and why: the lowest of all limits that apply.
[[nodiscard]] LimitAnswer limitFor(const LimitQuery& query);

/// Adult or child (under 18) on the day of the session; a missing birth date reads as child.
[[nodiscard]] AgeGroup ageGroupOn(std::optional<LocalDate> birth, LocalDate day);

} // namespace firstdew::protocol
