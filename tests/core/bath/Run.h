#pragma once

#include "bath/Engine.h"

#include <algorithm>
#include <optional>
#include <vector>

// A session driven by hand, for the tests of the engine.
namespace build {

using namespace firstdew::bath;
using firstdew::protocol::Prompt;
using firstdew::protocol::scriptFor;
using firstdew::protocol::ScriptRequest;
using firstdew::protocol::StepKind;

inline ScriptRequest request(Site site, WayOfWorking way = WayOfWorking::FreeHand)
{
    ScriptRequest q;
    q.site = site;
    q.waveform = site == Site::Armpits ? Waveform::Pulsed : Waveform::Direct;
    q.way = way;
    q.limit = {15};
    return q;
}

/// A session driven by hand, with its own clock.
struct Run {
    State state;
    Instant now{1'000'000, 0};
    std::vector<Effect> effects;
    std::vector<BathEvent> kept;

    explicit Run(const ScriptRequest& q, const Before& before = {})
        : state(prepared(scriptFor(q).value(), {14}, before))
    {
        state.last = state.kept = now;
    }

    Result<Outcome> send(Event e)
    {
        auto out = step(state, e, now);
        if (out) {
            state = out->state;
            effects.insert(effects.end(), out->effects.begin(), out->effects.end());
            for (const Kept& k : out->keep) {
                BathEvent b;
                b.sequence = static_cast<int>(kept.size());
                b.event = k.event.kind;
                b.reading = k.event.reading;
                b.meanwhile = k.event.meanwhile;
                b.wallMs = k.at.wallMs;
                b.monotonicMs = k.at.monotonicMs;
                kept.push_back(b);
            }
        }
        return out;
    }
    Result<Outcome> send(BathEventKind kind) { return send(Event{kind, {}, {}}); }
    Result<Outcome> read(double mA) { return send(Event{BathEventKind::Reading, Milliamps{mA}, {}}); }
    Result<Outcome> resume(Meanwhile m) { return send(Event{BathEventKind::Resumed, {}, m}); }
    void pass(int seconds, int tickMs = 500)
    {
        for (long long left = 1000LL * seconds; left > 0; left -= tickMs) {
            now.wallMs += tickMs;
            now.monotonicMs += tickMs;
            (void)send(BathEventKind::Tick);
        }
    }
    [[nodiscard]] StepKind kind() const { return state.script.steps[state.step].kind; }
    [[nodiscard]] int count(EffectKind k, std::optional<Prompt> p = {}) const
    {
        return static_cast<int>(std::count_if(effects.begin(), effects.end(),
                                              [&](const Effect& e) { return e.kind == k && (!p || e.prompt == p); }));
    }
    /// The list and the waveform are confirmed.
    void begin()
    {
        (void)send(BathEventKind::Begin);
        (void)send(BathEventKind::SwitchedOn);
    }
    void toHold()
    {
        begin();
        (void)send(BathEventKind::Raised);
    }
    /// By the clock alone, up to that step.
    void passTo(StepKind wanted)
    {
        for (int i = 0; i < 7200 && kind() != wanted && state.phase == Phase::Running; ++i)
            pass(1);
    }
    /// Both clocks go on, and nobody led.
    void away(int seconds)
    {
        now.wallMs += 1000LL * seconds;
        now.monotonicMs += 1000LL * seconds;
        (void)send(BathEventKind::Tick);
    }
};

} // namespace build
