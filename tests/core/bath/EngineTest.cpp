#include "bath/Dose.h"
#include "core/bath/Run.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <functional>
#include <limits>
#include <map>
#include <tuple>

using namespace firstdew::bath;
using build::request;
using build::Run;
using firstdew::protocol::Prompt;
using firstdew::protocol::scriptFor;
using firstdew::protocol::ScriptRequest;
using firstdew::protocol::StepKind;

TEST_CASE("a feet session runs through its two phases to the end")
{
    Run run(request(Site::Feet));
    CHECK_FALSE(run.send(BathEventKind::Raised)); // before the check list
    run.toHold();
    CHECK(run.kind() == StepKind::Hold);
    run.pass(15 * 60);
    CHECK(run.kind() == StepKind::Lower);
    CHECK(run.count(EffectKind::AskMeter) == 14);
    CHECK(run.count(EffectKind::Say, Prompt::HalfWay) == 1);
    CHECK(run.count(EffectKind::Say, Prompt::OneMinute) == 1);
    CHECK(run.count(EffectKind::Say, Prompt::TenSeconds) == 1);
    CHECK(run.send(BathEventKind::Swapped).error().code == "current-flows");
    REQUIRE(run.send(BathEventKind::Lowered));
    CHECK(run.kind() == StepKind::Swap);
    REQUIRE(run.send(BathEventKind::Swapped));
    REQUIRE(run.send(BathEventKind::Raised));
    run.pass(15 * 60);
    REQUIRE(run.send(BathEventKind::Lowered));
    CHECK(run.state.phase == Phase::Finished);
    CHECK(run.count(EffectKind::Completed) == 1);
    CHECK(run.send(BathEventKind::Begin).error().code == "session-ended");
}

TEST_CASE("with the hands under nothing needs a touch, and every step is said")
{
    Run run(request(Site::Hands, WayOfWorking::HandsUnder));
    REQUIRE(run.send(BathEventKind::Begin));
    run.pass(15 + 2 * (60 + 600 + 20) + 45);
    CHECK(run.state.phase == Phase::Finished);
    for (const auto p : {Prompt::HandsInSoon, Prompt::RaiseSlowly, Prompt::HoldStill, Prompt::LowerToZero,
                         Prompt::SwapLeads, Prompt::LiftOut, Prompt::Done})
        CHECK(run.count(EffectKind::Say, p) >= 1);
}

TEST_CASE("a reading above the limit alarms at once and again until a lower reading")
{
    Run run(request(Site::Feet));
    run.toHold();
    REQUIRE(run.read(15.5));
    CHECK(run.count(EffectKind::Alarm) == 1);
    run.pass(10);
    CHECK(run.count(EffectKind::Alarm) >= 3);
    REQUIRE(run.read(14));
    CHECK(run.count(EffectKind::AlarmOff) == 1);
    const int before = run.count(EffectKind::Alarm);
    run.pass(10);
    CHECK(run.count(EffectKind::Alarm) == before);
}

TEST_CASE("with the hands under, an alarm that stands keeps the session from going on to the swap")
{
    Run run(request(Site::Hands, WayOfWorking::HandsUnder));
    REQUIRE(run.send(BathEventKind::Begin));
    run.pass(15 + 60 + 600);
    CHECK(run.kind() == StepKind::Lower);
    REQUIRE(run.read(16));
    run.pass(120);
    CHECK(run.kind() == StepKind::Lower);
    REQUIRE(run.send(BathEventKind::Lowered));
    CHECK(run.kind() == StepKind::Swap);
}

TEST_CASE("readings that cannot be are refused and change nothing")
{
    Run run(request(Site::Feet));
    run.toHold();
    const State before = run.state;
    for (const double bad : {-1.0, std::nan(""), std::numeric_limits<double>::infinity(), 1e9, 100.5})
        CHECK_FALSE(run.read(bad));
    CHECK_FALSE(run.send(Event{BathEventKind::Reading, {}, {}}));
    CHECK(run.state == before);
}

TEST_CASE("out of the water: machine off, the script starts again, the charge so far is kept as interrupted")
{
    Run run(request(Site::Feet));
    run.toHold();
    REQUIRE(run.read(10));
    run.pass(60);
    REQUIRE(run.read(10));
    REQUIRE(run.send(BathEventKind::OutOfWater));
    CHECK(run.kind() == StepKind::CheckList);
    CHECK(run.state.current == Current::Unknown);
    CHECK(run.state.readings.empty());
    CHECK(chargeOf(run.state.interrupted).mAmin == Approx(10));
    CHECK(run.count(EffectKind::Say, Prompt::MachineOff) == 1);
    CHECK(run.count(EffectKind::Say, Prompt::StartAgain) == 1);
    CHECK_FALSE(run.send(BathEventKind::Raised));
    run.toHold();
    CHECK(remainingInStep(run.state).s == 15 * 60);
}

TEST_CASE("lowered early, the phase waits at zero and its clock stands")
{
    Run run(request(Site::Feet));
    run.toHold();
    run.pass(100);
    REQUIRE(run.send(BathEventKind::Lowered));
    run.pass(500);
    CHECK(remainingInStep(run.state).s == 800);
    CHECK(run.send(BathEventKind::Swapped).error().code == "not-now");
    REQUIRE(run.send(BathEventKind::Raised));
    run.pass(800);
    CHECK(run.kind() == StepKind::Lower);
}

TEST_CASE("the target leaves 3 mA under the limit until two readings in a row are steady")
{
    // the room is our own choice, cautious; the drift of 1-3 mA a minute is common practice, no source
    Run run(request(Site::Feet));
    run.toHold();
    CHECK(run.state.target().mA == 12);
    REQUIRE(run.read(10));
    CHECK(run.state.target().mA == 12);
    REQUIRE(run.read(12));
    CHECK(run.state.target().mA == 12);
    REQUIRE(run.read(12));
    CHECK(run.state.target().mA == 14);
    REQUIRE(run.send(BathEventKind::Discomfort));
    CHECK(run.state.target().mA == 11);
    CHECK(run.count(EffectKind::Say, Prompt::LowerALittle) == 1);
}

TEST_CASE("a meter that shows current where none should flow bars the swap")
{
    Run run(request(Site::Feet));
    run.toHold();
    run.pass(900);
    REQUIRE(run.send(BathEventKind::Lowered));
    REQUIRE(run.read(4));
    CHECK(run.send(BathEventKind::Swapped).error().code == "current-flows");
    REQUIRE(run.send(BathEventKind::Lowered));
    CHECK(run.send(BathEventKind::Swapped));
}

TEST_CASE("an app that was away for long asks what the machine did")
{
    Run run(request(Site::Feet));
    run.toHold();
    run.pass(60);
    run.now.wallMs += 120'000;
    run.now.monotonicMs += 120'000;
    REQUIRE(run.send(BathEventKind::Tick));
    CHECK(run.state.phase == Phase::AwaitingMeanwhile);
    CHECK(run.state.current == Current::Unknown);
    CHECK_FALSE(run.read(10));
    REQUIRE(run.resume(Meanwhile::KeptRunning));
    CHECK(remainingInStep(run.state).s == 900 - 180);
    CHECK(run.state.current == Current::Flowing);
}

TEST_CASE("a phone that slept sees it by the wall clock alone, and asks")
{
    // the clock that never jumps stands still while the machine sleeps (clock_gettime(2), CLOCK_MONOTONIC)
    Run run(request(Site::Feet));
    run.toHold();
    run.pass(60);
    run.now.wallMs += 600'000;
    REQUIRE(run.send(BathEventKind::Tick));
    CHECK(run.state.phase == Phase::AwaitingMeanwhile);
    REQUIRE(run.resume(Meanwhile::KeptRunning));
    CHECK(remainingInStep(run.state).s == 900 - 660);
}

TEST_CASE("a wall clock set back by an hour loses nothing and doubles nothing")
{
    Run run(request(Site::Feet));
    run.toHold();
    run.pass(60);
    run.now.wallMs -= 3'600'000;
    run.pass(60);
    CHECK(remainingInStep(run.state).s == 900 - 120);
}

TEST_CASE("a phase is not cut short by two clocks that tick in turn")
{
    // Ticks about each tenth of a second; the milliseconds of the two clocks turn over at different moments.
    Run run(request(Site::Feet));
    run.toHold();
    const Instant start = run.now;
    constexpr long long kTickMicroseconds = 100'450;
    constexpr int kTicks = 6000;
    for (int i = 1; i <= kTicks; ++i) {
        run.now.monotonicMs = start.monotonicMs + i * kTickMicroseconds / 1000;
        run.now.wallMs = start.wallMs + (i * kTickMicroseconds + 500) / 1000;
        REQUIRE(run.send(BathEventKind::Tick));
    }
    CHECK(remainingInStep(run.state).s == 900 - 602);
}

TEST_CASE("after a gap no event moves the session on, not even the first one tapped")
{
    for (const auto kind : {BathEventKind::Raised, BathEventKind::Lowered, BathEventKind::Discomfort,
                            BathEventKind::Swapped, BathEventKind::Reading}) {
        Run run(request(Site::Hands, WayOfWorking::HandsUnder));
        REQUIRE(run.send(BathEventKind::Begin));
        run.pass(15 + 60 + 60);
        const State before = run.state;
        run.now.wallMs += 3'600'000;
        run.now.monotonicMs += 3'600'000;
        const auto out = run.send(Event{kind, Milliamps{10}, {}});
        REQUIRE_FALSE(out);
        CHECK(out.error().code == "awaiting-answer");
        CHECK(run.state == before);
        REQUIRE(run.send(BathEventKind::Stop)); // ending is always taken at its word
        CHECK(run.state.phase == Phase::Stopped);
        CHECK(run.count(EffectKind::Say, Prompt::MachineOff) == 1);
        CHECK(run.count(EffectKind::Completed) == 0);
    }
}

TEST_CASE("while the current is being raised the reading is asked for every minute as well")
{
    // every minute, since it drifts up by 1-3 mA: common practice, no source
    Run run(request(Site::Feet));
    REQUIRE(run.send(BathEventKind::Begin));
    run.pass(185);
    CHECK(run.count(EffectKind::AskMeter) == 3);
    REQUIRE(run.send(BathEventKind::Raised));
    run.pass(900);
    const int asked = run.count(EffectKind::AskMeter);
    REQUIRE(run.send(BathEventKind::Lowered));
    run.pass(300); // zero current, polarity being swapped: nothing to read
    CHECK(run.count(EffectKind::AskMeter) == asked);
}

TEST_CASE("what the meter showed at the check list is no reading of the run that follows")
{
    Run run(request(Site::Feet));
    run.toHold();
    run.pass(100);
    REQUIRE(run.send(BathEventKind::OutOfWater));
    REQUIRE(run.read(4)); // not off yet
    run.toHold();
    run.pass(30);
    REQUIRE(run.read(10));
    CHECK(run.state.readings.size() == 1);
    CHECK(run.state.readings.front().atMs == 30'000);
    CHECK(run.state.interrupted.size() == 1);
}

TEST_CASE("a reading at the limit is no alarm, one a tenth above it is")
{
    Run run(request(Site::Feet));
    run.toHold();
    REQUIRE(run.read(15));
    CHECK(run.count(EffectKind::Alarm) == 0);
    REQUIRE(run.read(15.1));
    CHECK(run.count(EffectKind::Alarm) == 1);
}

TEST_CASE("raised again after a pause, a reading alike the one before does not count as steady")
{
    Run run(request(Site::Feet));
    run.toHold();
    REQUIRE(run.read(12));
    REQUIRE(run.read(12));
    CHECK(run.state.target().mA == 14);
    REQUIRE(run.send(BathEventKind::Lowered));
    REQUIRE(run.send(BathEventKind::Raised));
    CHECK(run.state.target().mA == 12);
    REQUIRE(run.read(12));
    CHECK(run.state.target().mA == 12);
    REQUIRE(run.read(12));
    CHECK(run.state.target().mA == 14);
}

TEST_CASE("another waveform is prepared only at zero current")
{
    Run run(request(Site::Feet));
    auto other = request(Site::Feet);
    other.waveform = Waveform::Pulsed;
    const auto script = scriptFor(other).value();
    CHECK(preparedInstead(run.state, script, {10}));
    run.toHold();
    CHECK(preparedInstead(run.state, script, {10}).error().code == "current-flows");
    REQUIRE(run.send(BathEventKind::Lowered));
    CHECK(preparedInstead(run.state, script, {10})->script == script);
}

TEST_CASE(
    "what says that current flows as the last step runs out ends nothing twice, and calls for the machine to go off")
{
    const auto event =
        GENERATE(BathEventKind::Reading, BathEventKind::Raised, BathEventKind::Discomfort, BathEventKind::OutOfWater);
    Run run(request(Site::Hands, WayOfWorking::HandsUnder));
    REQUIRE(run.send(BathEventKind::Begin));
    run.pass(15 + 2 * (60 + 600 + 20) + 45 - 1);
    REQUIRE(run.state.phase == Phase::Running);
    run.now.wallMs += 2000;
    run.now.monotonicMs += 2000;
    REQUIRE((event == BathEventKind::Reading ? run.read(9) : run.send(event)));
    CHECK(run.state.phase == Phase::Finished);
    CHECK(run.count(EffectKind::Completed) == 1);
    CHECK(run.count(EffectKind::Say, Prompt::MachineOff) == 1);
}

TEST_CASE("what cannot be a reading is refused as the last step runs out, and the session is over at the next event")
{
    Run run(request(Site::Hands, WayOfWorking::HandsUnder));
    REQUIRE(run.send(BathEventKind::Begin));
    run.pass(15 + 2 * (60 + 600 + 20) + 45 - 1);
    run.now.wallMs += 2000;
    run.now.monotonicMs += 2000;
    CHECK_FALSE(run.read(-1));
    CHECK_FALSE(run.send(BathEventKind::Reading));
    CHECK(run.state.phase == Phase::Running);
    REQUIRE(run.send(BathEventKind::Tick));
    CHECK(run.state.phase == Phase::Finished);
}

TEST_CASE("back while lowering with the hands under, the order to lower is said again and has its whole time")
{
    Run run(request(Site::Hands, WayOfWorking::HandsUnder));
    REQUIRE(run.send(BathEventKind::Begin));
    run.pass(15 + 60 + 600 + 15);
    REQUIRE(run.kind() == StepKind::Lower);
    run.now.wallMs += 200'000;
    REQUIRE(run.send(BathEventKind::Tick));
    REQUIRE(run.resume(Meanwhile::KeptRunning));
    CHECK(run.kind() == StepKind::Lower);
    CHECK(run.count(EffectKind::Say, Prompt::LowerToZero) == 2);
    CHECK(remainingInStep(run.state).s == 20);
}

TEST_CASE("killed twice, at whatever events, the session still comes back")
{
    const auto preparedFor = [](const ScriptRequest& q) {
        BathPrepared p;
        p.site = q.site, p.waveform = q.waveform, p.age = q.age, p.swap = q.swap, p.way = q.way;
        p.firstSide = q.firstSide, p.limit = q.limit, p.raise = q.raise, p.lower = q.lower, p.swapping = q.swapping;
        p.target = Milliamps{14};
        return p;
    };
    Run whole(request(Site::Feet));
    whole.toHold();
    REQUIRE(whole.read(10));
    whole.pass(900);
    REQUIRE(whole.send(BathEventKind::Lowered));
    whole.pass(150);
    REQUIRE(whole.send(BathEventKind::Swapped));
    REQUIRE(whole.send(BathEventKind::Raised));
    const auto p = preparedFor(whole.state.script.request);
    const std::vector<Event> words{{BathEventKind::Resumed, {}, Meanwhile::KeptRunning},
                                   {BathEventKind::Resumed, {}, Meanwhile::SwitchedOff},
                                   {BathEventKind::Resumed, {}, Meanwhile::LimbsOut},
                                   {BathEventKind::OutOfWater, {}, {}},
                                   {BathEventKind::Stop, {}, {}}};
    int comeBack = 0;
    for (std::size_t upTo = 1; upTo <= whole.kept.size(); ++upTo)
        for (const int away : {5, 600})
            for (const Event& word : words) {
                Run run(whole.state.script.request);
                run.kept.assign(whole.kept.begin(), whole.kept.begin() + static_cast<std::ptrdiff_t>(upTo));
                const BathEvent& last = run.kept.back();
                run.state = replay(p, run.kept).value();
                REQUIRE(run.state.phase == Phase::AwaitingMeanwhile);
                run.now = {last.wallMs + 1000 * away, 1000 * away}; // the phone was started anew
                REQUIRE(run.send(word));
                run.pass(30);
                const auto again = replay(p, run.kept);
                REQUIRE(again);
                CHECK(again->step == run.state.step);
                CHECK(again->restarts == run.state.restarts);
                CHECK(again->readings == run.state.readings);
                CHECK(again->interrupted == run.state.interrupted);
                ++comeBack;
            }
    CHECK(comeBack > 100);
}

TEST_CASE("killed at any event, the session comes back to the same step, asks, and assumes nothing of the current")
{
    Run run(request(Site::HandFoot));
    const auto restarted = [&] {
        BathPrepared p;
        const auto& q = run.state.script.request;
        p.site = q.site, p.waveform = q.waveform, p.age = q.age, p.swap = q.swap, p.way = q.way,
        p.firstSide = q.firstSide;
        p.limit = q.limit, p.raise = q.raise, p.lower = q.lower, p.swapping = q.swapping, p.target = Milliamps{14};
        const auto back = replay(p, run.kept);
        REQUIRE(back);
        CHECK(back->step == run.state.step);
        CHECK(back->readings == run.state.readings);
        CHECK(back->interrupted == run.state.interrupted);
        if (run.state.script.steps[run.state.step].timed)
            CHECK(std::abs(back->stepElapsedMs - run.state.stepElapsedMs) <= 61'000);
        if (run.state.phase == Phase::Running && run.state.step > 0) {
            CHECK(back->phase == Phase::AwaitingMeanwhile);
            CHECK(back->current == Current::Unknown);
        } else {
            CHECK(back->phase == run.state.phase);
        }
    };
    restarted();
    run.toHold();
    restarted();
    for (int phase = 1; phase <= 4; ++phase) {
        REQUIRE(run.read(10 + phase));
        restarted();
        run.pass(601);
        restarted();
        REQUIRE(run.send(BathEventKind::Lowered));
        restarted();
        if (phase == 4)
            break;
        REQUIRE(run.send(phase == 2 ? BathEventKind::MovedSide : BathEventKind::Swapped));
        run.pass(200); // the person takes their time
        restarted();
        REQUIRE(run.send(BathEventKind::Raised));
    }
    CHECK(run.state.phase == Phase::Finished);
}

TEST_CASE("on coming back: switched off waits at zero, out or unknown starts again")
{
    for (const auto answer : {Meanwhile::SwitchedOff, Meanwhile::LimbsOut, Meanwhile::DoNotKnow}) {
        Run run(request(Site::Feet));
        run.toHold();
        run.pass(60);
        run.now.monotonicMs += 600'000;
        run.now.wallMs += 600'000;
        REQUIRE(run.send(BathEventKind::Tick));
        REQUIRE(run.resume(answer));
        if (answer == Meanwhile::SwitchedOff) {
            CHECK(run.kind() == StepKind::Hold);
            CHECK(run.state.current == Current::Zero);
            CHECK(remainingInStep(run.state).s == 840);
        } else {
            CHECK(run.kind() == StepKind::CheckList);
            CHECK(run.count(EffectKind::Say, Prompt::MachineOff) == 1);
        }
    }
}

// Every order of events to a fair depth. A step is shortened to seconds' worth of ticks by sending long ones.
TEST_CASE("no order of events reaches a swap, a change of side or the end while current may flow")
{
    struct Shadow { // what an onlooker at the machine knows, kept apart from the engine
        bool mayFlow = false;
    };
    const std::vector<Event> alphabet{
        {BathEventKind::Begin, {}, {}},
        {BathEventKind::Raised, {}, {}},
        {BathEventKind::Reading, Milliamps{10}, {}},
        {BathEventKind::Reading, Milliamps{19}, {}},
        {BathEventKind::Discomfort, {}, {}},
        {BathEventKind::Lowered, {}, {}},
        {BathEventKind::Swapped, {}, {}},
        {BathEventKind::MovedSide, {}, {}},
        {BathEventKind::OutOfWater, {}, {}},
        {BathEventKind::Stop, {}, {}},
        {BathEventKind::Resumed, {}, Meanwhile::KeptRunning},
        {BathEventKind::Resumed, {}, Meanwhile::SwitchedOff},
        {BathEventKind::Resumed, {}, Meanwhile::DoNotKnow},
    };
    const std::vector<ScriptRequest> sessions{request(Site::Feet), request(Site::HandFoot), request(Site::Armpits),
                                              request(Site::Hands, WayOfWorking::HandsUnder)};
    for (const auto& session : sessions) {
        std::map<std::tuple<std::size_t, int, int, bool, bool>, int> seen; // by what decides, to the deepest rest
        long long visited = 0;
        long long swaps = 0;
        const std::function<void(const State&, Shadow, Instant, int)> walk = [&](const State& s, Shadow shadow,
                                                                                 Instant now, int rest) {
            if (rest == 0)
                return;
            const auto key =
                std::tuple(s.step, static_cast<int>(s.phase), static_cast<int>(s.current), s.alarm, shadow.mayFlow);
            if (const auto it = seen.find(key); it != seen.end() && it->second >= rest)
                return;
            seen[key] = rest;
            if (shadow.mayFlow && s.phase != Phase::Stopped) // nor a change of waveform
                REQUIRE_FALSE(preparedInstead(s, s.script, {10}));
            // With the hands under, lowering is announced and its time waited for: that is all the word there is.
            const auto afterClock = [&](const State& t, BathEventKind by) {
                const bool said = by == BathEventKind::Lowered || by == BathEventKind::Resumed;
                Shadow next = shadow;
                for (std::size_t i = s.step; i < t.step; ++i)
                    if (s.script.steps[i].kind == StepKind::Lower && s.script.steps[i].timed) {
                        REQUIRE((said || !s.alarm));
                        next.mayFlow = false;
                    }
                return next;
            };
            const auto take = [&](const Event& e, long long ms) {
                const Instant later{now.wallMs + ms, now.monotonicMs + ms};
                const auto out = step(s, e, later);
                ++visited;
                if (!out) {
                    REQUIRE_FALSE(out.error().message.empty());
                    return;
                }
                const State& t = out->state;
                Shadow next = afterClock(t, e.kind);
                const Shadow atEvent = next;
                if (e.kind == BathEventKind::Lowered ||
                    (e.kind == BathEventKind::Resumed && e.meanwhile == Meanwhile::SwitchedOff))
                    next.mayFlow = false;
                if (e.kind == BathEventKind::Begin)
                    next.mayFlow = false; // the check list says machine off, current zero
                const auto kind = t.script.steps[t.step].kind;
                const bool moved = t.step != s.step && t.step > s.step;
                if (moved && (kind == StepKind::Swap || kind == StepKind::MoveSide || kind == StepKind::Finish))
                    REQUIRE_FALSE(next.mayFlow);
                const auto was = s.script.steps[s.step].kind;
                if (moved && (was == StepKind::Swap || was == StepKind::MoveSide)) // nor is it left by the clock
                    REQUIRE_FALSE(shadow.mayFlow);
                if (e.kind == BathEventKind::Swapped || e.kind == BathEventKind::MovedSide) {
                    REQUIRE_FALSE(atEvent.mayFlow);
                    ++swaps;
                }
                if (t.phase == Phase::Finished)
                    REQUIRE_FALSE(next.mayFlow);
                if (e.kind == BathEventKind::Reading) {
                    next.mayFlow = true; // the meter knows better than any clock
                    if (t.phase == Phase::Finished)
                        REQUIRE(std::any_of(out->effects.begin(), out->effects.end(),
                                            [](const Effect& f) { return f.prompt == Prompt::MachineOff; }));
                    else
                        REQUIRE(t.current == Current::Flowing);
                    return walk(t, next, later, rest - 1);
                }
                if (t.current == Current::Zero)
                    REQUIRE_FALSE(next.mayFlow);
                if (kind == StepKind::Raise && t.current != Current::Zero)
                    next.mayFlow = true;
                if (e.kind == BathEventKind::Raised)
                    next.mayFlow = true;
                walk(t, next, later, rest - 1);
            };
            for (const Event& e : alphabet) {
                take(e, 1000);
                take(e, 200'000); // the first thing tapped after nobody watched
            }
            take({BathEventKind::Tick, {}, {}}, 1000);
            take({BathEventKind::Tick, {}, {}}, 80'000);
            take({BathEventKind::Tick, {}, {}}, 200'000); // away
            // The rest of a hold at once, through its minutes.
            if (s.phase == Phase::Running && s.script.steps[s.step].kind == StepKind::Hold) {
                State t = s;
                Instant later = now;
                for (int i = 0; i < 16 && t.step == s.step; ++i) {
                    later = {later.wallMs + 60'000, later.monotonicMs + 60'000};
                    const auto out = step(t, {BathEventKind::Tick, {}, {}}, later);
                    REQUIRE(out);
                    t = out->state;
                }
                walk(t, afterClock(t, BathEventKind::Tick), later, rest - 1);
            }
        };
        State start = prepared(scriptFor(session).value(), {14});
        walk(start, {}, {0, 0}, 40);
        CHECK(visited > 1000);
        CHECK(swaps > 0);
    }
}
