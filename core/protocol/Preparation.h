#pragma once

#include "facts/Payloads.h"

#include <vector>

namespace firstdew::protocol {

using namespace facts;

/// One line of the list before a session.
enum class PrepItem {
    JewelleryOff,     ///< and watches; not needed above the neck
    SkinChecked,      ///< no new redness, blister or burn
    WoundsCovered,    ///< small cuts under a thin layer of petroleum jelly, only on the broken skin
    NoAntiperspirant, ///< no aluminium salt on the site for 24 h
    NotShaved,        ///< for three days
    WarmWater,        ///< tap water, kWaterPerBath in each bath
    BathsOnTable,     ///< not of metal
    BathsOnFloor,
    PlateUnderGrid, ///< never touched by skin
    PadsSoaked,     ///< through and through, and tight
    LeadsIn,        ///< while the machine is off and its current at zero
    HelperStays,    ///< beside the person, the whole session
    RemoteInReach,  ///< of the treated hands, placed as its maker says
    CellsIn
};

/// Tap water for each bath, in millilitres (common practice, no source).
inline constexpr int kWaterPerBathMl = 350;
/// Hours without aluminium-salt antiperspirant on the site (common practice, no source).
inline constexpr int kAntiperspirantHours = 24;
/// Days since shaving (common practice, no source).
inline constexpr int kShavingDays = 3;

/// What has to be seen to before a session there; only what this site, machine and way of working need.
[[nodiscard]] std::vector<PrepItem> preparationFor(Site site, const Machine& machine, WayOfWorking way,
                                                   bool smallWounds);

/// A wait that an answer asks for; over where `until` is not after now.
struct PrepWait {
    PrepItem item{};
    LocalTime until;
    bool operator==(const PrepWait&) const = default;
};

/// Waits still running at `now`, the longest first. An answer in the future is taken as now.
[[nodiscard]] std::vector<PrepWait> waitsFor(const Preparation& answers, LocalTime now);

} // namespace firstdew::protocol

namespace firstdew::facts {
FIRSTDEW_TOKENS(protocol::PrepItem, "jewellery-off", "skin-checked", "wounds-covered", "no-antiperspirant",
                "not-shaved", "warm-water", "baths-on-table", "baths-on-floor", "plate-under-grid", "pads-soaked",
                "leads-in", "helper-stays", "remote-in-reach", "cells-in");
} // namespace firstdew::facts
