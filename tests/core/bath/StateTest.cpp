#include "Run.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <functional>

using namespace build;
using firstdew::protocol::Step;

// That a session comes back as it was is judged by comparing states: what did not count there could be lost unseen.

namespace {

template <class T>
void eachChangeCounts(const T& base, const std::vector<std::function<void(T&)>>& changes)
{
    CHECK(base == T(base));
    for (std::size_t i = 0; i < changes.size(); ++i) {
        T other = base;
        changes[i](other);
        INFO("change " << i);
        CHECK_FALSE(other == base);
        CHECK_FALSE(base == other);
    }
}

} // namespace

TEST_CASE("two states of a session that differ in one thing are not the same")
{
    Run run(request(Site::Hands));
    run.begin();
    REQUIRE(run.read(3));
    eachChangeCounts<State>(run.state, {
                                           [](State& s) { s.script.request.limit.mA += 1; },
                                           [](State& s) { s.script.steps.pop_back(); },
                                           [](State& s) { ++s.step; },
                                           [](State& s) { s.phase = Phase::Stopped; },
                                           [](State& s) { s.current = Current::Unknown; },
                                           [](State& s) { ++s.stepElapsedMs; },
                                           [](State& s) { ++s.sessionMs; },
                                           [](State& s) { ++s.last.wallMs; },
                                           [](State& s) { ++s.last.monotonicMs; },
                                           [](State& s) { ++s.kept.wallMs; },
                                           [](State& s) { ++s.heldMs; },
                                           [](State& s) { ++s.asked.wallMs; },
                                           [](State& s) { ++s.before.runs; },
                                           [](State& s) { s.before.charge.mAmin += 1; },
                                           [](State& s) { s.planned.mA += 1; },
                                           [](State& s) { ++s.spent; },
                                           [](State& s) { s.resume = Resume{}; },
                                           [](State& s) { s.pressed = Instant{}; },
                                           [](State& s) { s.stoppedBy = StoppedBy::Enough; },
                                           [](State& s) { s.wanted.mA += 1; },
                                           [](State& s) { s.steady = !s.steady; },
                                           [](State& s) { s.lastReading.reset(); },
                                           [](State& s) { s.readings.clear(); },
                                           [](State& s) { s.interrupted = s.readings; },
                                           [](State& s) { s.alarm = !s.alarm; },
                                           [](State& s) { ++s.stretch; },
                                           [](State& s) { ++s.restarts; },
                                           [](State& s) { ++s.discomforts; },
                                       });
    REQUIRE(run.state.lastReading);
    eachChangeCounts<MeterReading>(*run.state.lastReading, {
                                                               [](MeterReading& r) { ++r.atMs; },
                                                               [](MeterReading& r) { r.current.mA += 1; },
                                                               [](MeterReading& r) { ++r.phase; },
                                                               [](MeterReading& r) { ++r.polarity; },
                                                               [](MeterReading& r) { r.side = Side::Left; },
                                                               [](MeterReading& r) { ++r.stretch; },
                                                           });
}

TEST_CASE("two scripts that differ in one thing are not the same")
{
    const ScriptRequest asked = request(Site::HandFoot);
    eachChangeCounts<ScriptRequest>(asked, {
                                               [](ScriptRequest& q) { q.site = Site::Feet; },
                                               [](ScriptRequest& q) { q.waveform = Waveform::Pulsed; },
                                               [](ScriptRequest& q) { q.age = AgeGroup::Child; },
                                               [](ScriptRequest& q) { q.swap = PolaritySwap::Switch; },
                                               [](ScriptRequest& q) { q.way = WayOfWorking::Helper; },
                                               [](ScriptRequest& q) { q.firstSide = Side::Left; },
                                               [](ScriptRequest& q) { q.limit.mA += 1; },
                                               [](ScriptRequest& q) { ++q.raise.s; },
                                               [](ScriptRequest& q) { ++q.lower.s; },
                                               [](ScriptRequest& q) { ++q.swapping.s; },
                                               [](ScriptRequest& q) { q.hold = Seconds{300}; },
                                           });
    const auto script = scriptFor(asked);
    REQUIRE(script);
    const auto hold = std::ranges::find(script->steps, StepKind::Hold, &Step::kind);
    REQUIRE(hold != script->steps.end());
    eachChangeCounts<Step>(*hold, {
                                      [](Step& s) { s.kind = StepKind::Lower; },
                                      [](Step& s) { ++s.length.s; },
                                      [](Step& s) { s.timed = !s.timed; },
                                      [](Step& s) { ++s.phase; },
                                      [](Step& s) { s.polarity = -s.polarity; },
                                      [](Step& s) { s.side.reset(); },
                                      [](Step& s) { s.limit.mA += 1; },
                                      [](Step& s) { s.prompt = Prompt::Done; },
                                  });
}

TEST_CASE("a shorter session is kept as such, and comes back as such")
{
    ScriptRequest q = request(Site::Feet);
    q.hold = Seconds{450};
    const Run run(q);
    const auto kept = preparationOf(run.state, "b1");
    CHECK(kept.hold == Seconds{450});
    const auto back = replay(kept, {});
    REQUIRE(back);
    CHECK(back->script == run.state.script);
    CHECK(back->script.holdTotal() == Seconds{900});
}

TEST_CASE("the whole time left is what is left of the step and all of those to come")
{
    Run run(request(Site::Feet));
    CHECK(remainingInAll(run.state) == run.state.script.total());
    run.begin();
    const Seconds begun = remainingInAll(run.state);
    CHECK(begun < run.state.script.total()); // list and waveform are behind
    run.pass(10);
    CHECK(remainingInAll(run.state).s == begun.s - 10);
    REQUIRE(run.send(BathEventKind::Stop));
    CHECK(remainingInAll(run.state) == Seconds{0});
    CHECK(remainingInStep(run.state) == Seconds{0});
    CHECK(remainingInStep(State{}) == Seconds{0});
    CHECK(remainingInAll(State{}) == Seconds{0});
}

TEST_CASE("without a script there is no session to go on with")
{
    const auto out = step(State{}, {BathEventKind::Begin, {}, {}}, {1, 1});
    REQUIRE_FALSE(out);
    CHECK(out.error().code == "no-script");
    CHECK(out.error().message.find("current at zero") != std::string::npos);
}

TEST_CASE("a level aimed for that is none, or above the limit, gives way to the limit")
{
    const auto script = scriptFor(request(Site::Feet)).value();
    CHECK(prepared(script, {7}).wanted.mA == 7);
    CHECK(prepared(script, {99}).wanted.mA == 15);
    CHECK(prepared(script, {-1}).wanted.mA == 15);
    CHECK(prepared(script, {std::nan("")}).wanted.mA == 15);
}

TEST_CASE("kept events that do not follow from each other, or from what was prepared, are not made up for")
{
    BathPrepared p = preparationOf(Run(request(Site::Feet)).state, "b1");
    BathEvent begin;
    begin.bath = "b1";
    begin.event = BathEventKind::Begin;
    REQUIRE(replay(p, std::vector{begin}));
    BathEvent again = begin;
    again.sequence = 1;
    const auto twice = replay(p, std::vector{begin, again});
    REQUIRE_FALSE(twice);
    CHECK(twice.error().code == "bath-not-replayable");
    CHECK(twice.error().input == "event 1");
    CHECK(twice.error().message.find("machine off") != std::string::npos);
    BathEvent raised = begin;
    raised.event = BathEventKind::Raised;
    CHECK(replay(p, std::vector{raised}).error().input == "event 0");
    p.site = Site::Armpits; // with direct current
    CHECK_FALSE(replay(p, std::vector{begin}));
}
