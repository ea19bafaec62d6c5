#include "core/bath/Run.h"

#include <catch2/catch.hpp>

using namespace build;

namespace {

/// How the two clocks may show a sleep of ten minutes (clock_gettime(2): CLOCK_MONOTONIC stands still in a suspend,
/// CLOCK_BOOTTIME does not; a wall clock may be set in either direction at the same time).
struct Sleep {
    const char* name;
    long long wallMs;
    long long monotonicMs;
};
constexpr Sleep kSleeps[] = {{"the steady clock stood still", 600'000, 0},
                             {"the steady clock jumped too", 600'000, 600'000},
                             {"the steady clock jumped, the wall was set back by a day", -85'800'000, 600'000},
                             {"the phone was started anew", 600'000, -500'000}};

void sleep(Run& run, const Sleep& how)
{
    run.now.wallMs += how.wallMs;
    run.now.monotonicMs += how.monotonicMs;
}

/// A session with the hands under, up to the middle of its n-th step.
Run middleOf(std::size_t step)
{
    Run run(request(Site::Hands, WayOfWorking::HandsUnder));
    REQUIRE(run.send(BathEventKind::Begin));
    while (run.state.step < step)
        if (const auto event = mainEvent(run.state))
            REQUIRE(run.send(*event));
        else
            run.pass(1);
    run.pass(run.state.script.steps[step].length.s / 2);
    REQUIRE(run.state.step == step);
    return run;
}

} // namespace

TEST_CASE("whichever step the phone slept in and whatever its clocks show, the session stays there and asks")
{
    const std::size_t steps = scriptFor(request(Site::Hands, WayOfWorking::HandsUnder))->steps.size();
    for (std::size_t step = 1; step + 1 < steps; ++step)
        for (const Sleep& how : kSleeps) {
            INFO("step " << step << ", " << how.name);
            Run run = middleOf(step);
            const auto before = run.state;
            sleep(run, how);
            REQUIRE(run.send(BathEventKind::Tick));
            CHECK(run.state.phase == Phase::AwaitingMeanwhile);
            CHECK(run.state.current == Current::Unknown);
            CHECK(run.state.step == step);
            CHECK(run.state.stepElapsedMs == before.stepElapsedMs);
            CHECK(run.count(EffectKind::AskMeanwhile) == 1);
            run.pass(300); // however long the answer takes, nothing moves
            CHECK(run.state.step == step);
            CHECK(run.state.current == Current::Unknown);
        }
}

TEST_CASE("a machine that kept running while the phone slept has its time counted, once, and not beyond the phase")
{
    for (const Sleep& how : kSleeps) {
        INFO(how.name);
        Run run(request(Site::Feet));
        run.toHold();
        run.pass(100);
        sleep(run, how);
        REQUIRE(run.send(BathEventKind::Tick));
        run.pass(20);
        REQUIRE(run.resume(Meanwhile::KeptRunning));
        CHECK(run.kind() == StepKind::Hold);
        CHECK(remainingInStep(run.state).s == 900 - 100 - 620);
        sleep(run, how);
        REQUIRE(run.send(BathEventKind::Tick));
        REQUIRE(run.resume(Meanwhile::KeptRunning));
        CHECK(run.kind() == StepKind::Lower); // due for longer: never more than the phase
        CHECK(run.state.sessionMs == 900'000);
        CHECK(run.count(EffectKind::Say, Prompt::LowerToZero) == 1);
    }
}

TEST_CASE("asleep between two kept events and killed later, the session comes back as it went on")
{
    for (int second = 61; second < 150; ++second)
        for (const int asleep : {20, 45, 89}) {
            INFO(asleep << " s asleep from second " << second);
            Run run(request(Site::Feet));
            const auto p = preparationOf(run.state, "b1");
            run.toHold();
            run.pass(second, 1000);
            sleep(run, {"", 1000LL * asleep, 1000LL * asleep});
            REQUIRE_FALSE(run.send(BathEventKind::Discomfort)); // asked first
            REQUIRE(run.send(BathEventKind::Tick));
            REQUIRE(run.resume(Meanwhile::KeptRunning));
            run.pass(5, 1000);
            REQUIRE(run.read(9));
            const auto back = replay(p, run.kept);
            REQUIRE(back);
            CHECK(back->readings == run.state.readings);
            CHECK(back->step == run.state.step);
            CHECK(back->discomforts == run.state.discomforts);
        }
}

TEST_CASE("a sleep too short to be asked about counts by the steady clock alone")
{
    for (const Sleep& how : {Sleep{"", 9'000, 9'000}, Sleep{"", 0, 9'000}, Sleep{"", -3'540'000, 9'000}}) {
        Run run(request(Site::Feet));
        run.toHold();
        run.pass(60);
        sleep(run, how);
        REQUIRE(run.send(BathEventKind::Tick));
        CHECK(run.state.phase == Phase::Running);
        CHECK(remainingInStep(run.state).s == 900 - 69);
    }
}

TEST_CASE("a wall clock set forward is taken for a sleep: the phase may end sooner, never later")
{
    Run run(request(Site::Feet));
    run.toHold();
    run.pass(100);
    run.now.wallMs += 3'600'000;
    run.pass(1);
    CHECK(run.state.phase == Phase::AwaitingMeanwhile);
    REQUIRE(run.resume(Meanwhile::KeptRunning));
    CHECK(run.kind() == StepKind::Lower);
}

TEST_CASE("a wall clock set back and forward again runs no session through")
{
    Run run(request(Site::Hands, WayOfWorking::HandsUnder));
    run.begin();
    run.now.wallMs -= 7'200'000;
    run.pass(1);
    run.now.wallMs += 7'200'000;
    run.pass(1);
    CHECK(run.kind() == StepKind::Announce);
    CHECK(run.state.phase == Phase::AwaitingMeanwhile);
}

TEST_CASE("a clock that is set to and fro all the time neither holds a phase up nor runs it through")
{
    Run run(request(Site::Feet));
    run.toHold();
    for (int i = 0; i < 300; ++i) {
        run.now.wallMs += i % 2 == 0 ? 900 : -900; // corrections under a second
        run.pass(1);
    }
    CHECK(remainingInStep(run.state).s == 900 - 300);
}
