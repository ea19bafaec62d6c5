#include "bath/Ahead.h"

#include "bath/Turn.h"

#include <algorithm>

namespace firstdew::bath {

namespace {

constexpr long long kSecondMs = 1000;

/// All that is told by the clock is told at a whole second of its step; an alarm is repeated by the session's clock.
long long untilNext(const State& s)
{
    long long ms = kSecondMs - s.stepElapsedMs % kSecondMs;
    if (s.alarm)
        ms = std::min(ms, kAlarmRepeatMs - s.sessionMs % kAlarmRepeatMs);
    return ms;
}

} // namespace

bool saidUnanswered(protocol::Prompt prompt)
{
    using enum protocol::Prompt;
    switch (prompt) {
    case HoldStill:
    case HoldPads:
    case LowerToZero:
    case LowerByRemote:
    case HandsOut:
    case HandsOutLast:
    case LookAtMeter:
    case HalfWay:
    case OneMinute:
    case TenSeconds:
    case TooHigh:
    case MachineOff:
    case LowerALittle:
    case WhatDidItDo:
    case EnoughForToday: return true;
    case CheckEverything:
    case SwitchOnDirect:
    case SwitchOnPulsed:
    case HandsInSoon:
    case RaiseSlowly:
    case RaiseByRemote:
    case SwapLeads:
    case FlipSwitch:
    case SoakPadsLeads:
    case SoakPadsSwitch:
    case SoakPadsExchange:
    case ChangeSide:
    case LiftOut:
    case TakePadsOff:
    case DryAll:
    case Done:
    case StartAgain:
    case TooLongAgo:
    case Stopped:
    case StoppedPads:
    case PracticeSwitchOn:
    case PracticeRaise:
    case PracticeLower: break;
    }
    return false;
}

Ahead ahead(const State& state, Instant now, long long mostMs)
{
    Ahead out;
    State s = state;
    for (long long at = 0; !ended(s) && !s.script.steps.empty() && at < mostMs; out.endsMs = at) {
        const long long ms = untilNext(s);
        at += ms;
        now.monotonicMs += ms;
        now.wallMs += ms;
        auto outcome = step(s, {BathEventKind::Tick, {}, {}}, now);
        if (!outcome)
            break;
        for (const Effect& effect : outcome->effects)
            if (effect.prompt && !saidUnanswered(*effect.prompt)) {
                // The tone of the step that is not begun belongs to it.
                std::erase_if(out.cues, [&](const Cue& c) { return c.atMs == at; });
                out.endsMs = at;
                return out;
            } else {
                out.cues.push_back({at, effect});
            }
        s = std::move(outcome->state);
    }
    return out;
}

} // namespace firstdew::bath
