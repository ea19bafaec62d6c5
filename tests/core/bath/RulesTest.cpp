#include "bath/Tick.h"
#include "core/bath/Run.h"

#include "core/Build.h"

#include <catch2/catch.hpp>
#include <cmath>

using namespace build;

namespace {

ScriptRequest under() { return request(Site::Hands, WayOfWorking::HandsUnder); }

/// Begun and raised with the hands under, up to that step.
Run underAt(StepKind kind)
{
    Run run(under());
    run.begin();
    run.passTo(kind);
    REQUIRE(run.kind() == kind);
    return run;
}

} // namespace

TEST_CASE("with the hands under, no clock alone reaches a swap or the end")
{
    Run run(under());
    run.begin();
    run.pass(7200, 1000);
    CHECK(run.kind() == StepKind::HandsOut);
    CHECK(run.state.current == Current::Unknown);
    CHECK(run.send(BathEventKind::Swapped).error().code == "current-flows");
}

TEST_CASE("with the hands under, the phone waits for the tap, then counts 15 s down to the hands going in")
{
    Run run = underAt(StepKind::HandsOut);
    REQUIRE(run.send(BathEventKind::Lowered)); // meter at zero, hands out and dry
    CHECK(run.kind() == StepKind::Swap);
    run.pass(1800, 1000);
    CHECK(run.kind() == StepKind::Swap);
    REQUIRE(run.send(BathEventKind::Swapped));
    CHECK(run.kind() == StepKind::Announce);
    CHECK(remainingInStep(run.state).s == 15);
    CHECK(run.state.current == Current::Zero);
    run.pass(15);
    CHECK(run.kind() == StepKind::Raise);
    run.passTo(StepKind::HandsOut);
    REQUIRE(run.send(BathEventKind::Lowered));
    CHECK(run.state.phase == Phase::Finished);
    CHECK(run.count(EffectKind::Say, Prompt::HandsOutLast) >= 1);
    CHECK(run.count(EffectKind::Say, Prompt::DryAll) == 1);
}

TEST_CASE("whoever leads ticks ten times a second and at each whole second of the step, and no more often")
{
    Run run(request(Site::Feet));
    run.toHold();
    const long long begun = run.state.stepElapsedMs;
    int ticks = 0;
    int seconds = 0;
    while (run.state.stepElapsedMs - begun < 60'000) {
        const auto ms = untilNextTick(run.state);
        REQUIRE((0 < ms && ms <= kTickMs));
        run.now.wallMs += ms;
        run.now.monotonicMs += ms;
        REQUIRE(run.send(BathEventKind::Tick));
        ++ticks;
        seconds += run.state.stepElapsedMs % 1000 == 0 ? 1 : 0;
    }
    CHECK(ticks <= 601);
    CHECK(seconds == 60);
    run.now.monotonicMs += 30; // a tick that comes late is made good by the next
    run.now.wallMs += 30;
    REQUIRE(run.send(BathEventKind::Tick));
    for (int i = 0; i < 10; ++i) {
        run.now.monotonicMs += untilNextTick(run.state);
        REQUIRE(run.send(BathEventKind::Tick));
    }
    CHECK(run.state.stepElapsedMs % 1000 == 0);
}

TEST_CASE("with the hands under, lowering by the remote control has 60 s, and the order to take them out is said again")
{
    // our own choices, cautious
    Run run = underAt(StepKind::Lower);
    CHECK(remainingInStep(run.state).s == 60);
    run.passTo(StepKind::HandsOut);
    run.pass(61);
    CHECK(run.count(EffectKind::Say, Prompt::HandsOut) == 3);
}

TEST_CASE("a wall clock set forward or back by up to a minute moves no step")
{
    for (const int seconds : {-60, -25, -5, 5, 25, 60}) {
        INFO(seconds << " s");
        Run run = underAt(StepKind::Lower);
        run.now.wallMs += 1000LL * seconds;
        run.pass(1);
        CHECK(run.kind() == StepKind::Lower);
        CHECK(remainingInStep(run.state).s >= 59);
        if (run.state.phase == Phase::AwaitingMeanwhile)
            REQUIRE(run.resume(Meanwhile::KeptRunning));
        CHECK(run.kind() == StepKind::Lower);
        CHECK(remainingInStep(run.state).s >= 59);
    }
}

TEST_CASE("nothing is raised before the waveform was confirmed, and not while the meter shows current")
{
    Run run(request(Site::Armpits));
    REQUIRE(run.send(BathEventKind::Begin));
    CHECK(run.kind() == StepKind::SwitchOn);
    CHECK(run.state.current == Current::Zero);
    CHECK(run.count(EffectKind::Say, Prompt::SwitchOnPulsed) == 1);
    CHECK_FALSE(run.send(BathEventKind::Raised));
    REQUIRE(run.read(3));
    CHECK(run.send(BathEventKind::SwitchedOn).error().code == "current-flows");
    REQUIRE(run.send(BathEventKind::Lowered));
    REQUIRE(run.send(BathEventKind::SwitchedOn));
    CHECK(run.kind() == StepKind::Raise);
}

TEST_CASE("readings are steady at least 45 s apart, within 0.5 mA, without a rise over the last three")
{
    // our own choice
    const auto at = [](std::vector<std::pair<int, double>> all) {
        std::vector<MeterReading> out;
        for (const auto& [second, mA] : all)
            out.push_back({1000LL * second, {mA}, 1, 1, {}, 1});
        return isSteady(out);
    };
    CHECK_FALSE(at({}));
    CHECK_FALSE(at({{0, 10}}));
    CHECK_FALSE(at({{0, 10}, {1, 10}}));
    CHECK_FALSE(at({{0, 10}, {44, 10}}));
    CHECK(at({{0, 10}, {45, 10}}));
    CHECK(at({{0, 10}, {45, 10.5}}));
    CHECK_FALSE(at({{0, 10}, {45, 10.6}}));
    CHECK_FALSE(at({{0, 10}, {60, 10.2}, {120, 10.4}}));
    CHECK(at({{0, 10}, {60, 10.4}, {120, 10.4}, {180, 10.4}}));
    CHECK_FALSE(at({{0, 10}, {30, 14}, {60, 10}}));
    CHECK(at({{0, 10}, {30, 9.8}, {60, 9.8}}));
    CHECK_FALSE(at({{0, 10}, {50, 10}, {52, 10}, {54, 10.1}}));
}

TEST_CASE("the meter is asked for every minute until steady, then every second minute")
{
    Run run(request(Site::Feet));
    run.toHold();
    run.pass(70);
    REQUIRE(run.read(10));
    run.pass(50);
    REQUIRE(run.read(10));
    REQUIRE(run.state.steady);
    CHECK(run.count(EffectKind::AskMeter) == 2);
    run.pass(119);
    CHECK(run.count(EffectKind::AskMeter) == 2);
    run.pass(1);
    CHECK(run.count(EffectKind::AskMeter) == 3);
}

TEST_CASE("after two restarts it is enough for today, and what was done is kept")
{
    // our own choice, cautious
    Run run(request(Site::Feet));
    for (int i = 0; i < 3; ++i) {
        run.toHold();
        REQUIRE(run.read(5));
        REQUIRE(run.send(BathEventKind::OutOfWater));
    }
    CHECK(run.state.phase == Phase::Stopped);
    CHECK(run.state.stoppedBy == StoppedBy::Enough);
    CHECK(run.state.restarts == 2);
    CHECK(run.state.interrupted.size() == 3);
    CHECK(run.count(EffectKind::Say, Prompt::EnoughForToday) == 1);
}

TEST_CASE("out of the water is told once, however often it is tapped")
{
    Run run(request(Site::Feet));
    run.toHold();
    REQUIRE(run.send(BathEventKind::OutOfWater));
    CHECK(run.send(BathEventKind::OutOfWater).error().code == "starting-again");
    CHECK(run.state.restarts == 1);
}

TEST_CASE("sessions earlier on the day count as restarts of that skin")
{
    Run first(request(Site::Feet));
    first.toHold();
    first.pass(60);
    REQUIRE(first.send(BathEventKind::OutOfWater));
    first.toHold();
    first.pass(60);
    REQUIRE(first.send(BathEventKind::Stop));
    const Before before = sumOf(std::vector{first.state, Run(request(Site::Feet)).state});
    CHECK(before.runs == 2);
    CHECK(before.charge.mAmin == Approx(28));
    Run second(request(Site::Feet), before);
    second.toHold();
    REQUIRE(second.send(BathEventKind::OutOfWater));
    CHECK(second.state.stoppedBy == StoppedBy::Enough);
    Run third(request(Site::Feet), sumOf(std::vector{first.state, second.state}));
    CHECK(enoughForToday(third.state));
    CHECK(third.send(BathEventKind::Begin).error().code == "enough-for-today");
}

TEST_CASE("a session that started again ends at one and a half times the planned charge, on a person's word")
{
    // our own choice, cautious
    const double planned = 14.0 * 30;
    Run run(request(Site::Feet), {1, {1.4 * planned}});
    run.toHold();
    run.pass(60);
    CHECK(run.kind() == StepKind::Hold);
    run.pass(121);
    CHECK(run.kind() == StepKind::Lower);
    CHECK(run.count(EffectKind::Say, Prompt::EnoughForToday) == 1);
    CHECK(run.state.phase == Phase::Running);
    REQUIRE(run.send(BathEventKind::Lowered));
    CHECK(run.state.phase == Phase::Stopped);
    CHECK(run.state.stoppedBy == StoppedBy::Enough);

    Run whole(request(Site::Feet)); // not started again: its own time and limit bound it
    whole.toHold();
    REQUIRE(whole.read(15));
    whole.pass(900);
    CHECK(whole.kind() == StepKind::Lower);
    CHECK(whole.count(EffectKind::Say, Prompt::EnoughForToday) == 0);
}

TEST_CASE("switched off, the session goes on within ten minutes, after list and waveform")
{
    Run run(request(Site::Feet));
    run.toHold();
    run.pass(60);
    run.away(300);
    REQUIRE(run.resume(Meanwhile::SwitchedOff));
    CHECK(run.kind() == StepKind::CheckList);
    CHECK_FALSE(run.send(BathEventKind::Raised));
    REQUIRE(run.send(BathEventKind::Begin));
    CHECK(run.kind() == StepKind::SwitchOn);
    REQUIRE(run.send(BathEventKind::SwitchedOn));
    CHECK(run.kind() == StepKind::Raise);
    REQUIRE(run.send(BathEventKind::Raised));
    CHECK(remainingInStep(run.state).s == 840);
    CHECK(run.state.restarts == 0);
}

TEST_CASE("switched off for longer, or confirmed later, the session is over and what was done is kept")
{
    const int away = GENERATE(601, 300);
    Run run(request(Site::Feet));
    run.toHold();
    REQUIRE(run.read(9));
    run.away(away);
    REQUIRE(run.resume(Meanwhile::SwitchedOff));
    if (away == 300) {
        run.pass(301, 1000);
        REQUIRE(run.send(BathEventKind::Begin));
    }
    CHECK(run.state.phase == Phase::Stopped);
    CHECK(run.state.stoppedBy == StoppedBy::TooLongAgo);
    CHECK(run.state.readings.size() == 1);
    CHECK(run.count(EffectKind::Say, Prompt::TooLongAgo) == 1);
}

TEST_CASE("exactly ten minutes after the machine was switched off, the session may still go on")
{
    const int away = GENERATE(600, 300);
    Run run(request(Site::Feet));
    run.toHold();
    run.away(away);
    REQUIRE(run.resume(Meanwhile::SwitchedOff));
    run.pass(600 - away, 1000);
    REQUIRE(run.send(BathEventKind::Begin));
    CHECK(run.state.phase != Phase::Stopped);
    CHECK(run.kind() == StepKind::SwitchOn);
}

TEST_CASE("switched off with the hands under, the hands go in again before anything is raised")
{
    Run run = underAt(StepKind::Hold);
    run.pass(100);
    run.away(60);
    REQUIRE(run.resume(Meanwhile::SwitchedOff));
    run.begin();
    CHECK(run.kind() == StepKind::Announce);
    run.passTo(StepKind::Hold);
    CHECK(remainingInStep(run.state).s == 500);
}

TEST_CASE("switched off while lowering with the hands under, nobody is asked to take out hands that are out")
{
    Run run = underAt(StepKind::Lower);
    run.away(60);
    REQUIRE(run.resume(Meanwhile::SwitchedOff));
    REQUIRE(run.send(BathEventKind::Begin));
    REQUIRE(run.send(BathEventKind::SwitchedOn));
    CHECK(run.kind() == StepKind::Swap);
}

TEST_CASE("a tick that comes late asks, aloud, again and again, and moves nothing")
{
    Run run = underAt(StepKind::Announce);
    run.pass(5);
    run.away(20);
    CHECK(run.state.phase == Phase::AwaitingMeanwhile);
    CHECK(run.kind() == StepKind::Announce);
    CHECK(run.count(EffectKind::AskMeanwhile, Prompt::WhatDidItDo) == 1);
    run.pass(31);
    CHECK(run.count(EffectKind::AskMeanwhile, Prompt::WhatDidItDo) == 4);
    CHECK(run.kind() == StepKind::Announce);
    CHECK_FALSE(handsAreUnder(run.state));
}

TEST_CASE("lowered early with the hands under, the hands go in again before anything is raised")
{
    Run run = underAt(StepKind::Hold);
    run.pass(100);
    REQUIRE(run.send(BathEventKind::Lowered));
    run.pass(60);
    CHECK(mainEvent(run.state) == BathEventKind::SwitchedOn);
    REQUIRE(run.send(BathEventKind::SwitchedOn));
    CHECK(run.kind() == StepKind::Announce);
    run.passTo(StepKind::Hold);
    CHECK(remainingInStep(run.state).s == 500);
}

TEST_CASE("what the large button says follows what is known of the current")
{
    Run run(under());
    CHECK(mainEvent(run.state) == BathEventKind::Begin);
    REQUIRE(run.send(BathEventKind::Begin));
    CHECK(mainEvent(run.state) == BathEventKind::SwitchedOn);
    CHECK_FALSE(handsAreUnder(run.state));
    REQUIRE(run.send(BathEventKind::SwitchedOn));
    for (const StepKind kind : {StepKind::Announce, StepKind::Raise, StepKind::Hold, StepKind::Lower}) {
        run.passTo(kind);
        CHECK_FALSE(mainEvent(run.state));
        CHECK(handsAreUnder(run.state));
    }
    run.passTo(StepKind::HandsOut);
    CHECK(mainEvent(run.state) == BathEventKind::Lowered);
    CHECK_FALSE(handsAreUnder(run.state));
    REQUIRE(run.send(BathEventKind::Lowered));
    CHECK(mainEvent(run.state) == BathEventKind::Swapped);
    REQUIRE(run.read(4));
    CHECK(mainEvent(run.state) == BathEventKind::Lowered);

    Run free(request(Site::HandFoot));
    free.begin();
    CHECK(mainEvent(free.state) == BathEventKind::Raised);
    REQUIRE(free.send(BathEventKind::Raised));
    CHECK_FALSE(mainEvent(free.state));
    REQUIRE(free.send(BathEventKind::Lowered));
    CHECK(mainEvent(free.state) == BathEventKind::Raised);
    REQUIRE(free.send(BathEventKind::Raised));
    free.passTo(StepKind::Lower);
    CHECK(mainEvent(free.state) == BathEventKind::Lowered);
    free.away(30);
    CHECK_FALSE(mainEvent(free.state));
}

TEST_CASE("only a reading under the limit may count as comfortable")
{
    CHECK(mayBeComfortable({15}, {15}));
    CHECK_FALSE(mayBeComfortable({15.1}, {15}));
    CHECK_FALSE(mayBeComfortable({0}, {15}));
    Run run(request(Site::Feet));
    run.toHold();
    CHECK_FALSE(mostComfortable(run.state));
    REQUIRE(run.read(9));
    REQUIRE(run.read(16));
    REQUIRE(run.send(BathEventKind::OutOfWater));
    CHECK(mostComfortable(run.state) == Milliamps{9});
    CHECK(plausible({100}));
    CHECK_FALSE(plausible({100.1}));
    CHECK_FALSE(plausible({-0.1}));
}

TEST_CASE("a session that another order of steps led comes back as ended, with its readings")
{
    Run run(request(Site::Feet));
    run.toHold();
    REQUIRE(run.read(9));
    BathPrepared p = preparationOf(run.state, "b1");
    for (const auto version : {std::optional<int>(), std::optional(1), std::optional(99)}) {
        p.steps = version;
        for (const auto way : allOf<WayOfWorking>()) {
            p.way = way;
            const auto back = replay(p, run.kept);
            REQUIRE(back);
            CHECK(back->phase == Phase::Stopped);
            CHECK(back->stoppedBy == StoppedBy::OtherVersion);
            CHECK(back->current == Current::Unknown);
            CHECK(mostComfortable(*back) == Milliamps{9});
        }
    }
}

TEST_CASE("armpit pads are not under water: what is said of them says so")
{
    Run run(request(Site::Armpits));
    run.toHold();
    CHECK(run.count(EffectKind::Say, Prompt::HoldPads) == 1);
    CHECK(run.count(EffectKind::Say, Prompt::HoldStill) == 0);
    REQUIRE(run.send(BathEventKind::Stop));
    CHECK(run.count(EffectKind::Say, Prompt::StoppedPads) == 1);
}

TEST_CASE("switched off while lowering because it was enough, the session is over and is not gone on with")
{
    Run run(request(Site::Feet), {1, {1.5 * 14 * 30}});
    run.state.before.charge = {1.4 * 14 * 30};
    run.toHold();
    run.passTo(StepKind::Lower);
    REQUIRE(run.state.stoppedBy == StoppedBy::Enough);
    run.away(60);
    REQUIRE(run.resume(Meanwhile::SwitchedOff));
    CHECK(run.state.phase == Phase::Stopped);
    CHECK(run.state.stoppedBy == StoppedBy::Enough);
}

TEST_CASE("a steady clock that stands still while ticks come is noticed by the wall clock after ninety seconds")
{
    Run run(request(Site::Feet));
    run.toHold();
    for (int second = 1; second <= 91; ++second) {
        CHECK(run.state.phase == Phase::Running);
        run.now.wallMs += 1000;
        REQUIRE(run.send(BathEventKind::Tick));
    }
    CHECK(run.state.phase == Phase::AwaitingMeanwhile);
}

TEST_CASE("a phone started anew just after the session was left counts the time away by the wall clock")
{
    Run run(request(Site::Feet));
    run.toHold();
    run.pass(100);
    REQUIRE(run.send(BathEventKind::Away));
    run.now.monotonicMs -= 1000;
    run.now.wallMs += 20'000;
    REQUIRE(run.resume(Meanwhile::KeptRunning));
    CHECK(remainingInStep(run.state).s == 900 - 120);
}

TEST_CASE("to come back without a word on what the machine did is no answer")
{
    Run run(request(Site::Feet));
    run.toHold();
    run.away(60);
    const auto out = run.send(BathEventKind::Resumed);
    REQUIRE_FALSE(out);
    CHECK(out.error().code == "awaiting-answer");
    CHECK(run.state.phase == Phase::AwaitingMeanwhile);
}

TEST_CASE("a state without a script has no button, no drawing, no hands under water and nothing ahead")
{
    const State none;
    CHECK_FALSE(mainEvent(none));
    CHECK(drawingsNow(none).empty());
    CHECK_FALSE(handsAreUnder(none));
}

TEST_CASE("hands are under water in that way of working alone, and not once the current is at zero")
{
    Run free(request(Site::Feet));
    free.toHold();
    CHECK_FALSE(handsAreUnder(free.state));
    Run run = underAt(StepKind::Hold);
    CHECK(handsAreUnder(run.state));
    REQUIRE(run.send(BathEventKind::Lowered));
    CHECK_FALSE(handsAreUnder(run.state));
}

TEST_CASE("with the hands under, an alarm is answered by lowering, in a hold and while lowering")
{
    Run free(request(Site::Feet));
    free.toHold();
    REQUIRE(free.read(16));
    CHECK_FALSE(mainEvent(free.state));
    for (const StepKind kind : {StepKind::Raise, StepKind::Hold, StepKind::Lower}) {
        Run run = underAt(kind);
        CHECK_FALSE(mainEvent(run.state));
        REQUIRE(run.read(16));
        CHECK(mainEvent(run.state) == BathEventKind::Lowered);
    }
    free.passTo(StepKind::Lower);
    CHECK(mainEvent(free.state) != BathEventKind::Raised);
}

TEST_CASE("what is no number, or endless, is no reading of a meter")
{
    CHECK(plausible({0}));
    CHECK_FALSE(plausible({HUGE_VAL}));
    CHECK_FALSE(plausible({std::nan("")}));
}

TEST_CASE("a session planned with no current is measured by its limit")
{
    const auto script = scriptFor(request(Site::Feet)).value();
    CHECK(prepared(script, {0}).planned == script.request.limit);
    CHECK(prepared(script, {7}).planned == Milliamps{7});
}

TEST_CASE("a session led by another order of steps keeps the readings that a meter can show, and no others")
{
    Run run(request(Site::Feet));
    run.toHold();
    REQUIRE(run.read(9));
    BathPrepared p = preparationOf(run.state, "b1");
    p.steps = 1;
    BathEvent e = run.kept.back();
    e.reading.reset();
    run.kept.push_back(e);
    e.reading = Milliamps{999};
    run.kept.push_back(e);
    CHECK(replay(p, run.kept)->interrupted.size() == 1);
}

TEST_CASE("readings that had come to rest say nothing once the session starts again")
{
    Run run(request(Site::Feet));
    run.toHold();
    REQUIRE(run.read(10));
    run.pass(60);
    REQUIRE(run.read(10));
    REQUIRE(run.state.steady);
    REQUIRE(run.send(BathEventKind::OutOfWater));
    CHECK_FALSE(run.state.steady);
    CHECK_FALSE(run.state.lastReading);
}
