#pragma once

#include "facts/Payloads.h"
#include "facts/Result.h"

#include <string_view>
#include <vector>

namespace firstdew::protocol {

using namespace facts;

/// Bounds of a hands-under allowance.
inline constexpr Seconds kLeastAllowance{20};
inline constexpr Seconds kMostAllowance{180};

enum class StepKind {
    CheckList, ///< confirm the preparation; current zero, machine off
    Announce,  ///< hands-under: what comes next, before the hands go in
    Raise,     ///< bring the current up slowly
    Hold,      ///< the clock of the phase runs
    Lower,     ///< bring the current to zero
    Swap,      ///< reverse polarity at zero
    MoveSide,  ///< hand + foot: change to the other side, at zero
    Finish     ///< zero, machine off, then lift out
};

/// Spoken sentence of a step; texts and clips are the interface's.
enum class Prompt {
    CheckEverything,
    HandsInSoon,
    RaiseSlowly,
    HoldStill,
    LowerToZero,
    SwapLeads,
    FlipSwitch,
    SoakPads,
    ChangeSide,
    LiftOut,
    LookAtMeter,
    HalfWay,
    OneMinute,
    TenSeconds,
    Done,
    TooHigh,
    MachineOff,
    StartAgain,
    LowerALittle,
    Stopped
};

struct ScriptRequest {
    Site site{};
    Waveform waveform{};
    AgeGroup age{};
    PolaritySwap swap{};
    WayOfWorking way{};
    Side firstSide = Side::Right;
    Milliamps limit;   ///< from limitFor
    Seconds raise{60}; ///< hands-under allowances, 20 to 180 s each
    Seconds lower{20};
    Seconds swapping{45};
    bool operator==(const ScriptRequest&) const = default;
};

/// One step of a session. `timed` steps end by the clock; the others wait for the person's word.
struct Step {
    StepKind kind{};
    Seconds length; ///< hold: the phase's length; others: the allowance, or an estimate where not timed
    bool timed = false;
    int phase = 0;    ///< 1, 2 (and 3, 4 for hand + foot); 0 outside phases
    int polarity = 0; ///< +1 or -1 in a phase, opposite in neighbouring phases of one side; 0 outside
    std::optional<Side> side;
    Milliamps limit;
    Prompt prompt{};
    bool operator==(const Step&) const = default;
};

struct Script {
    ScriptRequest request;
    std::vector<Step> steps;
    [[nodiscard]] Seconds holdTotal() const;
    [[nodiscard]] Seconds total() const;
    bool operator==(const Script&) const = default;
};

/// The steps of one whole session. Armpits with direct current, an allowance outside 20-180 s and a
/// limit of zero or above the trade's are refused.
[[nodiscard]] Result<Script> scriptFor(const ScriptRequest& request);

/// Length of one phase's hold and the number of phases of a session at that site.
struct PhasePlan {
    Seconds hold;
    int phases = 2;
};
[[nodiscard]] PhasePlan phasesFor(Site site);

/// The ways of working open at a site, the usual one first.
[[nodiscard]] std::vector<WayOfWorking> waysFor(Site site);

} // namespace firstdew::protocol

namespace firstdew::facts {
FIRSTDEW_WORDS(protocol::StepKind, "check-list", "announce", "raise", "hold", "lower", "swap", "move-side", "finish");
FIRSTDEW_WORDS(protocol::Prompt, "check-everything", "hands-in-soon", "raise-slowly", "hold-still", "lower-to-zero",
               "swap-leads", "flip-switch", "soak-pads", "change-side", "lift-out", "look-at-meter", "half-way",
               "one-minute", "ten-seconds", "done", "too-high", "machine-off", "start-again", "lower-a-little",
               "stopped");
} // namespace firstdew::facts
