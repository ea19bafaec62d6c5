#include "bath/Engine.h"

#include <fmt/format.h>

namespace firstdew::bath {

namespace {

bool running(const State& s) { return s.phase == Phase::Running && s.step > 0; }

/// After a break in the events nothing is known of the current.
void awaitMeanwhile(State& s)
{
    s.phase = Phase::AwaitingMeanwhile;
    s.current = Current::Unknown;
}

} // namespace

Result<protocol::Script> scriptOf(const BathPrepared& p)
{
    return protocol::scriptFor(
        {p.site, p.waveform, p.age, p.swap, p.way, p.firstSide, p.limit, p.raise, p.lower, p.swapping});
}

Result<State> replay(const BathPrepared& prepared, std::span<const BathEvent> events)
{
    const auto script = scriptOf(prepared);
    if (!script)
        return script.error();
    State s = bath::prepared(*script, prepared.target.value_or(prepared.limit));
    for (std::size_t i = 0; i < events.size(); ++i) {
        const BathEvent& e = events[i];
        const auto take = [&] { return step(s, {e.event, e.reading, e.meanwhile}, {e.wallMs, e.monotonicMs}); };
        auto next = take();
        if (!next && running(s)) {
            // It was taken all the same: by a session read back before, which waited for a word just here.
            awaitMeanwhile(s);
            next = take();
        }
        if (!next)
            return Error{"bath-not-replayable", fmt::format("event {}", i),
                         "the kept events of this session do not follow from each other; machine off, and log what was "
                         "done by hand"};
        s = std::move(next.value().state);
    }
    if (running(s))
        awaitMeanwhile(s);
    return s;
}

} // namespace firstdew::bath
