#include "core/bath/Run.h"

#include <catch2/catch.hpp>
#include <deque>
#include <random>
#include <set>
#include <tuple>

using namespace build;

// Every order of events, with ticks that come late, clocks that are corrected and absences at any of them, against an
// onlooker who stands at the machine and knows nothing of the engine.

namespace {

struct Onlooker {
    bool mayFlow = false;

    /// What the person says is believed: nobody else sees the meter.
    void hears(const Event& e)
    {
        using enum BathEventKind;
        if (e.kind == Lowered || e.kind == Begin || e.kind == SwitchedOn ||
            (e.kind == Resumed && e.meanwhile == Meanwhile::SwitchedOff))
            mayFlow = false;
        if (e.kind == Raised || (e.kind == Reading && e.reading->mA > 0) ||
            (e.kind == Resumed && e.meanwhile == Meanwhile::KeptRunning))
            mayFlow = true;
    }
    /// Told to raise, the person may raise.
    void sees(const State& after)
    {
        if (after.phase == Phase::Running && after.script.steps[after.step].kind == StepKind::Raise &&
            after.current != Current::Zero)
            mayFlow = true;
    }
};

/// An event, how far the steady clock went on before it, and how the wall clock was corrected meanwhile.
struct Move {
    Event event;
    long long ms = 0;
    long long correctedMs = 0;
};

bool atZeroOnly(StepKind kind)
{
    using enum StepKind;
    return kind == Swap || kind == MoveSide || kind == Finish || kind == SwitchOn || kind == Announce;
}

/// One move; nothing where the engine refused it. Requires what must hold of every move.
std::optional<State> take(const State& s, Onlooker& onlooker, const Instant& now, const Event& e)
{
    const auto out = step(s, e, now);
    if (!out) {
        REQUIRE_FALSE(out.error().message.empty());
        return std::nullopt;
    }
    const State& t = out->state;
    const Onlooker before = onlooker;
    onlooker.hears(e);
    INFO(token(e.kind) << " from " << token(s.script.steps[s.step].kind) << " to " << token(t.script.steps[t.step].kind)
                       << ", current " << static_cast<int>(s.current) << " to " << static_cast<int>(t.current));
    const StepKind was = s.script.steps[s.step].kind;
    const StepKind is = t.script.steps[t.step].kind;
    const bool byItself = e.kind == BathEventKind::Tick || e.kind == BathEventKind::Away;
    if (t.step != s.step && (atZeroOnly(is) || is == StepKind::Raise)) {
        // Reached at zero. A reading comes after the clock has moved the step.
        REQUIRE_FALSE((e.kind == BathEventKind::Reading ? before : onlooker).mayFlow);
        REQUIRE((s.current == Current::Zero || !byItself));
    }
    if (t.step != s.step && (is == StepKind::Swap || is == StepKind::MoveSide || is == StepKind::Finish))
        REQUIRE_FALSE(byItself);
    if (was == StepKind::SwitchOn && t.step > s.step)
        REQUIRE(e.kind == BathEventKind::SwitchedOn);
    if (t.phase == Phase::Finished)
        REQUIRE_FALSE(onlooker.mayFlow);
    if ((e.kind == BathEventKind::Swapped || e.kind == BathEventKind::MovedSide) && t.phase != Phase::Stopped)
        REQUIRE_FALSE(before.mayFlow);
    if (s.pressed && t.phase == Phase::Running && byItself) // a stop that can be taken back moves nothing
        REQUIRE((t.step == s.step && t.stepElapsedMs == s.stepElapsedMs && t.pressed == s.pressed));
    const bool late = std::max(now.monotonicMs - s.last.monotonicMs, now.wallMs - s.last.wallMs) > kLateMs;
    if (s.pressed && late)
        REQUIRE(t.phase == Phase::Stopped);
    else if (late && s.step > 0 && byItself) // it asks, and moves nothing
        REQUIRE((t.step == s.step && t.phase == Phase::AwaitingMeanwhile && t.current == Current::Unknown));
    if (s.phase == Phase::AwaitingMeanwhile && byItself)
        REQUIRE((t.step == s.step && t.stepElapsedMs == s.stepElapsedMs && t.phase == s.phase));
    const long long steady = std::max(0LL, now.monotonicMs - s.last.monotonicMs);
    if (byItself && t.step == s.step) // no correction of the wall clock shortens a step
        REQUIRE(t.stepElapsedMs <= s.stepElapsedMs + steady);
    onlooker.sees(t);
    if (t.current == Current::Zero && t.phase != Phase::Stopped)
        REQUIRE_FALSE(onlooker.mayFlow);
    REQUIRE(t.before.runs + t.restarts <= kMostRestarts);
    return t;
}

std::vector<Event> alphabet()
{
    std::vector<Event> out;
    for (const BathEventKind kind : allOf<BathEventKind>()) {
        if (kind == BathEventKind::Reading) {
            for (const double mA : {0.0, 10.0, 19.0})
                out.push_back({kind, Milliamps{mA}, {}});
        } else if (kind == BathEventKind::Resumed) {
            for (const Meanwhile m : allOf<Meanwhile>())
                out.push_back({kind, {}, m});
        } else {
            out.push_back({kind, {}, {}});
        }
    }
    return out;
}

std::vector<Move> moves()
{
    std::vector<Move> out;
    for (const Event& e : alphabet())
        for (const auto& [ms, correctedMs] : {std::pair{1000LL, 0LL},
                                              {1000, 60'000},
                                              {1000, -60'000},
                                              {1000, 8'000},
                                              {9'000, 0},
                                              {12'000, 0},
                                              {12'000, -60'000},
                                              {200'000, 0},
                                              {0, 200'000},
                                              {700'000, 0}})
            out.push_back({e, ms, correctedMs});
    return out;
}

/// What decides how a state goes on, of its readings and clocks only as much as that.
auto abstraction(const State& s, const Onlooker& o)
{
    const auto& step = s.script.steps[s.step];
    const long long left = step.timed ? 1000LL * step.length.s - s.stepElapsedMs : 0;
    const int near = !step.timed ? 0 : left <= 1000 ? 1 : left <= 9000 ? 2 : left <= 12'000 ? 3 : 4;
    const bool tooLate = s.resume && s.last.monotonicMs - s.resume->left.monotonicMs > kResumableMs;
    return std::tuple(s.step, s.phase, s.current, s.alarm, s.steady, s.restarts, s.stoppedBy, near,
                      s.resume ? static_cast<int>(s.resume->step) : -1, tooLate, s.heldMs > 0, o.mayFlow,
                      s.pressed.has_value());
}

struct Node {
    State state;
    Onlooker onlooker;
    Instant now;
};

/// Time alone, tick by tick, to shortly before the present timed step is over.
Node nearTheEnd(Node n)
{
    const auto step = n.state.step;
    for (int ticks = 0; ticks < 200 && n.state.step == step && remainingInStep(n.state).s > 10; ++ticks) {
        n.now.wallMs += 5000;
        n.now.monotonicMs += 5000;
        const auto next = take(n.state, n.onlooker, n.now, {BathEventKind::Tick, {}, {}});
        REQUIRE(next);
        n.state = *next;
    }
    return n;
}

} // namespace

TEST_CASE("no order of events, late ticks, clock corrections and absences reaches a swap, a raise or the end while "
          "current may flow, without a person's word")
{
    const auto all = moves();
    for (const ScriptRequest& q :
         {request(Site::Feet), request(Site::HandFoot), request(Site::Armpits),
          request(Site::Hands, WayOfWorking::Helper), request(Site::Hands, WayOfWorking::HandsUnder)}) {
        std::set<decltype(abstraction(State{}, {}))> seen;
        std::deque<Node> todo{{prepared(scriptFor(q).value(), {14}), {}, {1'000'000, 0}}};
        todo.front().state.last = todo.front().state.kept = todo.front().now;
        std::set<std::size_t> steps;
        long long visited = 0;
        const auto reach = [&](Node n) {
            steps.insert(n.state.step);
            if (seen.insert(abstraction(n.state, n.onlooker)).second)
                todo.push_back(std::move(n));
        };
        while (!todo.empty()) {
            const Node n = std::move(todo.front());
            todo.pop_front();
            if (n.state.phase == Phase::Finished || n.state.phase == Phase::Stopped)
                continue;
            if (n.state.script.steps[n.state.step].timed && n.state.phase == Phase::Running)
                reach(nearTheEnd(n));
            for (const Move& m : all) {
                Node next = n;
                next.now.monotonicMs += m.ms;
                next.now.wallMs += m.ms + m.correctedMs;
                ++visited;
                if (auto state = take(n.state, next.onlooker, next.now, m.event)) {
                    next.state = std::move(*state);
                    reach(std::move(next));
                }
            }
        }
        CHECK(steps.size() == scriptFor(q)->steps.size()); // every step was reached
        CHECK(visited > 10'000);
        CHECK(seen.size() < 20'000); // bounded by the abstraction, not by a depth
    }
}

TEST_CASE("whatever happens at whatever times, the same holds, and a session killed there comes back as it was")
{
    std::mt19937_64 dice(20'260'101);
    const auto events = alphabet();
    const std::vector<ScriptRequest> sessions{request(Site::Feet), request(Site::HandFoot), request(Site::Armpits),
                                              request(Site::Hands, WayOfWorking::HandsUnder)};
    const auto below = [&](long long n) { return static_cast<long long>(dice() % static_cast<unsigned long long>(n)); };
    int finished = 0;
    for (int trial = 0; trial < 400; ++trial) {
        Run run(sessions[static_cast<std::size_t>(trial) % sessions.size()]);
        const auto prepared = preparationOf(run.state, "b1");
        Onlooker onlooker;
        for (int n = 0; n < 400 && (run.state.phase == Phase::Running || run.state.phase == Phase::AwaitingMeanwhile);
             ++n) {
            const auto main = mainEvent(run.state);
            const bool tame = below(12) != 0; // mostly what the page offers
            Event e = tame ? Event{main.value_or(BathEventKind::Tick), {}, {}}
                           : events[static_cast<std::size_t>(below(static_cast<long long>(events.size())))];
            if (tame && run.state.phase == Phase::AwaitingMeanwhile)
                e = {BathEventKind::Resumed, {}, below(8) == 0 ? Meanwhile::LimbsOut : Meanwhile::KeptRunning};
            if (below(40) == 0)
                run.now.wallMs += below(120'001) - 60'000;
            const long long ms = below(60) == 0 ? below(300'000) : below(9'500);
            run.now.wallMs += ms;
            run.now.monotonicMs += ms;
            const State before = run.state;
            (void)take(before, onlooker, run.now, e);
            (void)run.send(e);
        }
        finished += run.state.phase == Phase::Finished;
        const auto back = replay(prepared, run.kept);
        REQUIRE(back);
        CHECK(back->step == run.state.step);
        CHECK(back->readings == run.state.readings);
        CHECK(back->interrupted == run.state.interrupted);
        CHECK(back->restarts == run.state.restarts);
        CHECK(back->stoppedBy == run.state.stoppedBy);
        CHECK(back->resume == run.state.resume);
    }
    CHECK(finished > 5);
}
