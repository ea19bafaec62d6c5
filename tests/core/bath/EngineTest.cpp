#include "bath/Dose.h"
#include "core/bath/Run.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

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

TEST_CASE("nobody goes on with a level above the limit while the alarm stands")
{
    Run run(request(Site::Feet));
    run.begin();
    run.passTo(StepKind::Raise);
    REQUIRE(run.read(16));
    CHECK_FALSE(mainEvent(run.state));
    const State before = run.state;
    CHECK_FALSE(run.send(BathEventKind::Raised));
    CHECK(run.state == before);
    REQUIRE(run.read(14));
    CHECK(mainEvent(run.state) == BathEventKind::Raised);
    REQUIRE(run.send(BathEventKind::Raised));
    CHECK(run.kind() == StepKind::Hold);
}

TEST_CASE("with the hands under, an alarm that stands keeps the session from going on to the swap")
{
    Run run(request(Site::Hands, WayOfWorking::HandsUnder));
    run.begin();
    run.passTo(StepKind::Lower);
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

TEST_CASE("the target leaves 3 mA under the limit until the readings are steady")
{
    // the room is our own choice, cautious; the drift of 1-3 mA a minute is common practice, no source
    Run run(request(Site::Feet));
    run.toHold();
    CHECK(run.state.target().mA == 12);
    REQUIRE(run.read(10));
    CHECK(run.state.target().mA == 12);
    REQUIRE(run.read(12));
    CHECK(run.state.target().mA == 12);
    run.pass(45);
    REQUIRE(run.read(12));
    CHECK(run.state.target().mA == 12); // a rise over the last three
    run.pass(45);
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
        run.begin();
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
    run.begin();
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
    run.pass(45);
    REQUIRE(run.read(12));
    CHECK(run.state.target().mA == 14);
    REQUIRE(run.send(BathEventKind::Lowered));
    REQUIRE(run.send(BathEventKind::Raised));
    CHECK(run.state.target().mA == 12);
    REQUIRE(run.read(12));
    CHECK(run.state.target().mA == 12);
    run.pass(45);
    REQUIRE(run.read(12));
    CHECK(run.state.target().mA == 14);
}

TEST_CASE("back while lowering with the hands under, the order to lower is said again and has its whole time")
{
    Run run(request(Site::Hands, WayOfWorking::HandsUnder));
    run.begin();
    run.pass(15 + 60 + 600 + 15);
    REQUIRE(run.kind() == StepKind::Lower);
    run.now.wallMs += 200'000;
    REQUIRE(run.send(BathEventKind::Tick));
    REQUIRE(run.resume(Meanwhile::KeptRunning));
    CHECK(run.kind() == StepKind::Lower);
    CHECK(run.count(EffectKind::Say, Prompt::LowerByRemote) == 2);
    CHECK(remainingInStep(run.state).s == 60);
}

TEST_CASE("killed twice, at whatever events, the session still comes back")
{
    Run whole(request(Site::Feet));
    whole.toHold();
    REQUIRE(whole.read(10));
    whole.pass(900);
    REQUIRE(whole.send(BathEventKind::Lowered));
    whole.pass(150);
    REQUIRE(whole.send(BathEventKind::Swapped));
    REQUIRE(whole.send(BathEventKind::Raised));
    const auto p = preparationOf(Run(request(Site::Feet)).state, "b1");
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
        const auto p = preparationOf(Run(run.state.script.request).state, "b1");
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

TEST_CASE("on coming back: out or unknown starts again")
{
    for (const auto answer : {Meanwhile::LimbsOut, Meanwhile::DoNotKnow}) {
        Run run(request(Site::Feet));
        run.toHold();
        run.pass(60);
        run.now.monotonicMs += 600'000;
        run.now.wallMs += 600'000;
        REQUIRE(run.send(BathEventKind::Tick));
        REQUIRE(run.resume(answer));
        CHECK(run.kind() == StepKind::CheckList);
        CHECK(run.count(EffectKind::Say, Prompt::MachineOff) == 1);
    }
}

TEST_CASE("what was held of an interrupted phase counts in that phase alone, whatever happens afterwards")
{
    Run run(request(Site::Feet));
    const auto goOn = [&] {
        REQUIRE(run.resume(Meanwhile::SwitchedOff));
        REQUIRE(run.send(BathEventKind::Begin));
        REQUIRE(run.send(BathEventKind::SwitchedOn));
    };
    run.toHold();
    run.pass(300);
    run.away(60);
    goOn();
    REQUIRE(run.send(BathEventKind::Raised));
    CHECK(remainingInStep(run.state).s == 600);
    run.passTo(StepKind::Lower);
    run.away(60); // and switched off while it was lowered
    goOn();
    REQUIRE(run.kind() == StepKind::Swap);
    REQUIRE(run.send(BathEventKind::Swapped));
    REQUIRE(run.send(BathEventKind::Raised));
    REQUIRE(run.kind() == StepKind::Hold);
    CHECK(remainingInStep(run.state).s == 900);
}
