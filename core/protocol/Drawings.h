#pragma once

#include "protocol/Preparation.h"
#include "protocol/Response.h"
#include "protocol/Script.h"

#include <vector>

namespace firstdew::protocol {

/// A picture that tells, without words, what hands do; drawn by assets/drawings/make.py under the same word.
enum class Drawing {
    JewelleryOff,
    LookAtHands,
    LookAtFeet,
    LookAtArmpits,
    JellyOnCut,
    NoAntiperspirant,
    NotShaved,
    WaterLevel,
    TraysOnTable,
    TraysOnFloor,
    PlateUnderGrid,
    SoakPads,
    CellsIn,
    LeadsIn,
    HelperBeside,
    RemoteInReach,
    MachineOff,
    SwitchOn,
    AtZero,
    TurnUp,
    TurnDown,
    RemoteUp,
    RemoteDown,
    HandsInTrays,
    FeetInTrays,
    HandFootRight,
    HandFootLeft,
    PadsFitted,
    HandsOut,
    SwapLeads,
    FlipSwitch,
    ExchangePads,
    PadsOff,
    DryHands,
    DryFeet,
    KitDrying
};

using Drawings = std::vector<Drawing>;

/// How the current is brought up or down in that way of working.
[[nodiscard]] Drawing raiseDrawing(const ScriptRequest& request);
[[nodiscard]] Drawing lowerDrawing(const ScriptRequest& request);
/// What a step asks for, in the order in which it is done; never empty. Where something is touched that carries
/// current, the meter at zero or the machine off comes first.
[[nodiscard]] Drawings drawingsOf(const Step& step, const ScriptRequest& request);
/// The same for a line of the preparation.
[[nodiscard]] Drawings drawingsOf(PrepItem item, Site site);
/// The same for a check of how it is done; empty where nothing is done with the hands.
[[nodiscard]] Drawings drawingsOf(TechniqueCheck check, Site site, PolaritySwap swap);

} // namespace firstdew::protocol

namespace firstdew::facts {
FIRSTDEW_TOKENS(protocol::Drawing, "jewellery-off", "look-at-hands", "look-at-feet", "look-at-armpits", "jelly-on-cut",
                "no-antiperspirant", "not-shaved", "water-level", "trays-on-table", "trays-on-floor",
                "plate-under-grid", "soak-pads", "cells-in", "leads-in", "helper-beside", "remote-in-reach",
                "machine-off", "switch-on", "at-zero", "turn-up", "turn-down", "remote-up", "remote-down",
                "hands-in-trays", "feet-in-trays", "hand-foot-right", "hand-foot-left", "pads-fitted", "hands-out",
                "swap-leads", "flip-switch", "exchange-pads", "pads-off", "dry-hands", "dry-feet", "kit-drying");
} // namespace firstdew::facts
