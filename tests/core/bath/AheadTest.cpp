#include "bath/Ahead.h"

#include "core/bath/Run.h"

#include <catch2/catch.hpp>

using namespace firstdew::bath;
using build::request;
using build::Run;
using firstdew::protocol::Prompt;
using firstdew::protocol::scriptFor;
using firstdew::protocol::StepKind;

namespace {

using Heard = std::vector<std::pair<EffectKind, std::optional<Prompt>>>;

Heard heardOf(const std::vector<Cue>& cues)
{
    Heard out;
    for (const Cue& c : cues)
        out.emplace_back(c.effect.kind, c.effect.prompt);
    return out;
}

Heard heardOf(const std::vector<Effect>& effects)
{
    Heard out;
    for (const Effect& e : effects)
        out.emplace_back(e.kind, e.prompt);
    return out;
}

bool says(const Ahead& a, Prompt prompt)
{
    return std::any_of(a.cues.begin(), a.cues.end(), [&](const Cue& c) { return c.effect.prompt == prompt; });
}

/// What the hands and the clock do in turn, looked ahead from after each of it.
template <typename Look>
void throughWith(Run& run, Look look)
{
    for (int i = 0; i < 20'000 && run.state.phase == Phase::Running; ++i) {
        if (const auto event = mainEvent(run.state); event && !run.state.script.steps[run.state.step].timed) {
            REQUIRE(run.send(*event));
            look();
        } else {
            run.pass(7);
            look();
        }
    }
}

} // namespace

TEST_CASE("without an answer nothing is said ahead that raises, swaps, changes sides or speaks of an end")
{
    int looked = 0;
    for (const Site site : allOf<Site>())
        for (const WayOfWorking way : allOf<WayOfWorking>())
            for (const PolaritySwap swap : allOf<PolaritySwap>()) {
                auto q = request(site, way);
                q.swap = swap;
                if (!scriptFor(q))
                    continue;
                Run run(q);
                throughWith(run, [&] {
                    const std::size_t step = run.state.step;
                    for (const Cue& c : ahead(run.state, run.now, 120'000).cues) {
                        ++looked;
                        CHECK(c.effect.kind != EffectKind::Completed);
                        if (c.effect.prompt)
                            CHECK(saidUnanswered(*c.effect.prompt));
                    }
                    CHECK(run.state.step == step);
                });
                CHECK(run.state.phase == Phase::Finished);
            }
    CHECK(looked > 5000);
    for (const Prompt never :
         {Prompt::RaiseSlowly, Prompt::RaiseByRemote, Prompt::SwitchOnDirect, Prompt::SwitchOnPulsed,
          Prompt::HandsInSoon, Prompt::SwapLeads, Prompt::FlipSwitch, Prompt::SoakPadsLeads, Prompt::SoakPadsSwitch,
          Prompt::SoakPadsExchange, Prompt::ChangeSide, Prompt::LiftOut, Prompt::TakePadsOff, Prompt::Done})
        CHECK_FALSE(saidUnanswered(never));
}

TEST_CASE("what is looked ahead to is what the session then says, at the same tenth of a second")
{
    Run run(request(Site::Hands, WayOfWorking::HandsUnder));
    run.begin();
    run.passTo(StepKind::Raise);
    run.pass(3);
    const Ahead plan = ahead(run.state, run.now, 800'000);
    CHECK(plan.endsMs == 800'000);
    run.effects.clear();
    const long long from = run.now.monotonicMs;
    std::vector<long long> when;
    while (run.now.monotonicMs < from + 800'000) {
        run.pass(1, 100);
        when.resize(run.effects.size(), run.now.monotonicMs - from);
    }
    REQUIRE(heardOf(plan.cues) == heardOf(run.effects));
    for (std::size_t i = 0; i < when.size(); ++i)
        CHECK(std::abs(plan.cues[i].atMs - when[i]) <= 1000);
    CHECK(says(plan, Prompt::HalfWay));
    CHECK(says(plan, Prompt::LowerByRemote));
    CHECK(says(plan, Prompt::HandsOut));
}

TEST_CASE("before the hands are in, the time ahead ends where the current would be raised")
{
    Run run(request(Site::Hands, WayOfWorking::HandsUnder));
    run.begin();
    REQUIRE(run.kind() == StepKind::Announce);
    run.pass(5);
    const Ahead plan = ahead(run.state, run.now);
    CHECK(plan.endsMs == 10'000);
    CHECK(plan.cues.empty());
}

TEST_CASE("with a free hand the time ahead asks for the meter, and lowers at the end of the hold")
{
    Run run(request(Site::Feet));
    run.toHold();
    const Ahead plan = ahead(run.state, run.now);
    CHECK(says(plan, Prompt::LookAtMeter));
    CHECK(says(plan, Prompt::LowerToZero));
    CHECK(plan.endsMs >= kAheadMs);
    for (const Cue& c : plan.cues)
        if (c.effect.prompt == Prompt::LowerToZero)
            CHECK(c.atMs == 900'000); // 15 minutes (common practice, no source)
}

TEST_CASE("an alarm that stands, and a question that waits, are repeated ahead too")
{
    Run run(request(Site::Feet));
    run.toHold();
    run.pass(10);
    REQUIRE(run.read(20));
    const Ahead loud = ahead(run.state, run.now, 10'000);
    CHECK(std::count_if(loud.cues.begin(), loud.cues.end(),
                        [](const Cue& c) { return c.effect.kind == EffectKind::Alarm; }) == 3);
    REQUIRE(run.read(12));
    run.away(60);
    REQUIRE(run.state.phase == Phase::AwaitingMeanwhile);
    const Ahead asks = ahead(run.state, run.now, 60'000);
    CHECK(asks.cues.size() >= 5);
    for (const Cue& c : asks.cues)
        CHECK(c.effect.prompt == Prompt::WhatDidItDo);
}

TEST_CASE("a session that is over, or is being stopped, has nothing ahead")
{
    Run run(request(Site::Feet));
    run.toHold();
    REQUIRE(run.send(BathEventKind::StopPressed));
    const Ahead stopping = ahead(run.state, run.now);
    CHECK(stopping.cues.size() == 1); // that it was interrupted, which is silent
    CHECK(stopping.endsMs <= kSlipMs + 1000);
    REQUIRE(run.send(BathEventKind::Stop));
    CHECK(ahead(run.state, run.now).cues.empty());
    CHECK(ahead(run.state, run.now).endsMs == 0);
}

TEST_CASE("only what lowers, warns, asks or counts is said while nobody answers")
{
    const std::vector said{Prompt::HoldStill,    Prompt::HoldPads,     Prompt::LowerToZero,   Prompt::LowerByRemote,
                           Prompt::HandsOut,     Prompt::HandsOutLast, Prompt::LookAtMeter,   Prompt::HalfWay,
                           Prompt::OneMinute,    Prompt::TenSeconds,   Prompt::TooHigh,       Prompt::MachineOff,
                           Prompt::LowerALittle, Prompt::WhatDidItDo,  Prompt::EnoughForToday};
    for (const Prompt prompt : allOf<Prompt>()) {
        INFO(token(prompt));
        CHECK(saidUnanswered(prompt) == (std::ranges::find(said, prompt) != said.end()));
    }
    CHECK(ahead(State{}, {}).endsMs == 0);
}
