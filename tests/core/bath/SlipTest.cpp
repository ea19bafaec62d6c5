#include "Run.h"

#include <catch2/catch.hpp>

using namespace build;

namespace {

Run holding()
{
    Run run(request(Site::Feet));
    run.toHold();
    (void)run.read(10);
    run.pass(100);
    return run;
}

State comeBack(const Run& run)
{
    return replay(preparationOf(Run(run.state.script.request).state, "b1"), run.kept).value();
}

} // namespace

TEST_CASE("a stop is said at once and moves nothing, and is final after five seconds")
{
    Run run = holding();
    const long long held = run.state.stepElapsedMs;
    run.effects.clear();
    REQUIRE(run.send(BathEventKind::StopPressed));
    CHECK(run.count(EffectKind::Say, Prompt::MachineOff) == 1);
    CHECK(stopsIn(run.state, run.now).s == 5);
    run.pass(4);
    CHECK(run.state.phase == Phase::Running);
    CHECK(run.state.stepElapsedMs == held);
    CHECK(stopsIn(run.state, run.now).s == 1);
    run.pass(1);
    CHECK(run.state.phase == Phase::Stopped);
    CHECK(run.state.stoppedBy == StoppedBy::Person);
    CHECK(run.count(EffectKind::Say, Prompt::MachineOff) == 1); // it is not said again
    CHECK(run.count(EffectKind::Interrupted) == 1);
    CHECK(comeBack(run).phase == Phase::Stopped);
}

TEST_CASE("a stop that is taken back costs the session nothing, and its time counts")
{
    Run run = holding();
    const long long held = run.state.stepElapsedMs;
    REQUIRE(run.send(BathEventKind::StopPressed));
    run.pass(3);
    REQUIRE(run.send(BathEventKind::StopTakenBack));
    CHECK(run.state.phase == Phase::Running);
    CHECK(stopsIn(run.state, run.now).s == 0);
    CHECK(run.state.stepElapsedMs == held + 3000); // the machine ran all the while
    CHECK(run.state.current == Current::Flowing);
    run.pass(60);
    CHECK(run.state.stepElapsedMs == held + 63'000);
    CHECK(comeBack(run).step == run.state.step);
    CHECK_FALSE(run.send(BathEventKind::StopTakenBack)); // nothing is left to take back
}

TEST_CASE("a stop taken back too late stands")
{
    Run run = holding();
    REQUIRE(run.send(BathEventKind::StopPressed));
    run.now.monotonicMs += 5000;
    run.now.wallMs += 5000;
    REQUIRE(run.send(BathEventKind::StopTakenBack));
    CHECK(run.state.phase == Phase::Stopped);
    CHECK(comeBack(run).phase == Phase::Stopped);
}

TEST_CASE("killed while a stop can be taken back, the session comes back as stopped")
{
    Run run = holding();
    REQUIRE(run.send(BathEventKind::StopPressed));
    run.pass(2);
    const State back = comeBack(run);
    CHECK(back.phase == Phase::Stopped);
    CHECK(back.readings == run.state.readings);
}

TEST_CASE("what is reported after a stop takes it back, and an impossible report does not")
{
    Run run = holding();
    REQUIRE(run.send(BathEventKind::StopPressed));
    CHECK_FALSE(run.read(-1));
    CHECK(stopsIn(run.state, run.now).s == 5);
    REQUIRE(run.read(11));
    CHECK(stopsIn(run.state, run.now).s == 0);
    CHECK(run.state.readings.size() == 2);
    CHECK(comeBack(run).readings == run.state.readings);
    Run twice = holding();
    REQUIRE(twice.send(BathEventKind::StopPressed));
    REQUIRE(twice.send(BathEventKind::Stop));
    CHECK(twice.state.phase == Phase::Stopped);
}

TEST_CASE("an alarm is silent while a stop waits, and sounds again once that is taken back")
{
    Run run = holding();
    REQUIRE(run.read(16)); // above the limit of 15
    run.effects.clear();
    REQUIRE(run.send(BathEventKind::StopPressed));
    CHECK(run.count(EffectKind::AlarmOff) == 1);
    run.pass(4);
    CHECK(run.count(EffectKind::Alarm) == 0);
    REQUIRE(run.send(BathEventKind::StopTakenBack));
    run.pass(4);
    CHECK(run.count(EffectKind::Alarm) >= 1);
}

TEST_CASE("where nobody led, a stop needs no time to be taken back")
{
    Run run = holding();
    run.away(30);
    REQUIRE(run.state.phase == Phase::AwaitingMeanwhile);
    REQUIRE(run.send(BathEventKind::StopPressed));
    CHECK(run.state.phase == Phase::Stopped);
}
