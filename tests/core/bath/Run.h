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

    explicit Run(const ScriptRequest& q) : state(prepared(scriptFor(q).value(), {14})) { state.last = now; }

    Result<Outcome> send(Event e)
    {
        auto out = step(state, e, now);
        if (out) {
            state = out->state;
            effects.insert(effects.end(), out->effects.begin(), out->effects.end());
            if (out->journal) {
                BathEvent b;
                b.sequence = static_cast<int>(kept.size());
                b.event = e.kind;
                b.reading = e.reading;
                b.meanwhile = e.meanwhile;
                b.wallMs = now.wallMs;
                b.monotonicMs = now.monotonicMs;
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
    void toHold()
    {
        (void)send(BathEventKind::Begin);
        (void)send(BathEventKind::Raised);
    }
};

} // namespace build
