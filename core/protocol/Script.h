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
/// From the tap on the phone to the hands in the water (our own choice).
inline constexpr Seconds kHandsIn{15};
/// A shorter hold is at least this part of the site's own (our own choice).
inline constexpr double kLeastHold = 0.5;
/// Version of the order of steps that scriptFor() writes. A session that was kept with another one is not led on.
inline constexpr int kSteps = 2;

enum class StepKind {
    CheckList, ///< confirm the preparation; current zero, machine off
    SwitchOn,  ///< confirm: machine on, meter at zero, waveform as planned
    Announce,  ///< hands-under: counts down to the hands going in
    Raise,     ///< bring the current up slowly
    Hold,      ///< the clock of the phase runs
    Lower,     ///< bring the current to zero
    HandsOut,  ///< hands-under: meter at zero, hands out and dry; waits for the tap that says so
    Swap,      ///< reverse polarity at zero
    MoveSide,  ///< hand + foot: change to the other side, at zero
    Finish     ///< zero, machine off, then lift out
};

/// Spoken sentence of a step; texts and clips are the interface's.
enum class Prompt {
    CheckEverything,
    SwitchOnDirect,
    SwitchOnPulsed,
    HandsInSoon,
    RaiseSlowly,
    RaiseByRemote,
    HoldStill,
    HoldPads,
    LowerToZero,
    LowerByRemote,
    HandsOut,
    HandsOutLast,
    SwapLeads,
    FlipSwitch,
    SoakPadsLeads,
    SoakPadsSwitch,
    SoakPadsExchange,
    ChangeSide,
    LiftOut,
    TakePadsOff,
    DryAll,
    LookAtMeter,
    HalfWay,
    OneMinute,
    TenSeconds,
    Done,
    TooHigh,
    MachineOff,
    StartAgain,
    LowerALittle,
    WhatDidItDo,
    EnoughForToday,
    TooLongAgo,
    Stopped,
    StoppedPads,
    PracticeSwitchOn,
    PracticeRaise,
    PracticeLower
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
    Seconds lower{60}; ///< our own choice, cautious
    Seconds swapping{45};
    std::optional<Seconds> hold = std::nullopt; ///< of each phase, where it is shorter than usual: see kLeastHold
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

/// The steps of one whole session. Armpits with direct current, an allowance outside 20-180 s, a limit of zero or above
/// the trade's, a hold that is longer than the site's or too short, and hands-under for a child or another site are
/// refused.
[[nodiscard]] Result<Script> scriptFor(const ScriptRequest& request);

/// What is said when the current has to come down, when it is held, and when the session is stopped.
[[nodiscard]] Prompt lowerPrompt(const ScriptRequest& request);
[[nodiscard]] Prompt holdPrompt(const ScriptRequest& request);
[[nodiscard]] Prompt stoppedPrompt(const ScriptRequest& request);

/// Length of one phase's hold and the number of phases of a session at that site.
struct PhasePlan {
    Seconds hold;
    int phases = 2;
};
[[nodiscard]] PhasePlan phasesFor(Site site);

/// Why a way of working is not open.
enum class WayBar {
    NotForSite,  ///< leaves hands free that the site does not, or the other way round
    NeedsRemote, ///< both hands under, and no remote control is recorded for the machine
    AdultsOnly,  ///< a child is not left alone with both hands under
    NotSpoken,   ///< nothing on this device is known to say the prompts in the person's language
    ScreenReader ///< a tap anywhere, which has to stop, reaches the screen reader first
};

/// How a touch of the phone arrives.
enum class Touch {
    Plain,       ///< at once, or the person has a pedal or a switch that stops like a key
    ScreenReader ///< a screen reader takes it first
};

/// Who says the prompts in the person's language.
enum class Tongue {
    Recorded, ///< the recorded clips
    Device,   ///< the device's own voice, by clips that it spoke beforehand and that were found to be heard
    Reader,   ///< the screen reader
    Foreign   ///< nobody for sure: what is recorded is in English
};

/// What is there to say them.
struct Speakers {
    bool recorded = false; ///< clips in that language come with the app
    bool device = false;   ///< every prompt was spoken into a clip by the device's voice and checked
    bool reader = false;   ///< a screen reader is on and says the prompts in place of the app's voice
};
[[nodiscard]] Tongue tongueFor(const Speakers& speakers);

/// What the phone does for the person now.
struct Phone {
    Touch touch = Touch::Plain;
    Tongue tongue = Tongue::Recorded;
};

struct WayAnswer {
    WayOfWorking way{};
    std::optional<WayBar> bar;
    bool operator==(const WayAnswer&) const = default;
};

/// What bars that way of working, or nothing where it is open.
[[nodiscard]] std::optional<WayBar> barOf(Site site, WayOfWorking way, const Machine& machine, AgeGroup age,
                                          Phone phone = {});
/// The same as one sentence that says what is safe instead.
[[nodiscard]] std::optional<Error> refusalOfWay(Site site, WayOfWorking way, const Machine& machine, AgeGroup age,
                                                Phone phone = {});
/// The ways of working that the site knows, open ones first, each with what bars it.
[[nodiscard]] std::vector<WayAnswer> waysFor(Site site, const Machine& machine, AgeGroup age, Phone phone = {});

} // namespace firstdew::protocol

namespace firstdew::facts {
FIRSTDEW_TOKENS(protocol::StepKind, "check-list", "switch-on", "announce", "raise", "hold", "lower", "hands-out",
                "swap", "move-side", "finish");
FIRSTDEW_TOKENS(protocol::Prompt, "check-everything", "switch-on-direct", "switch-on-pulsed", "hands-in-soon",
                "raise-slowly", "raise-by-remote", "hold-still", "hold-pads", "lower-to-zero", "lower-by-remote",
                "hands-out", "hands-out-last", "swap-leads", "flip-switch", "soak-pads-leads", "soak-pads-switch",
                "soak-pads-exchange", "change-side", "lift-out", "take-pads-off", "dry-all", "look-at-meter",
                "half-way", "one-minute", "ten-seconds", "done", "too-high", "machine-off", "start-again",
                "lower-a-little", "what-did-it-do", "enough-for-today", "too-long-ago", "stopped", "stopped-pads",
                "practice-switch-on", "practice-raise", "practice-lower");
FIRSTDEW_TOKENS(protocol::Tongue, "recorded", "device", "reader", "foreign");
FIRSTDEW_TOKENS(protocol::WayBar, "not-for-site", "needs-remote", "adults-only", "not-spoken", "screen-reader");
} // namespace firstdew::facts
