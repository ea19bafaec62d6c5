#include "protocol/Practice.h"

#include "core/bath/Run.h"

#include <catch2/catch.hpp>

using namespace firstdew::bath;
using build::request;
using build::Run;
using firstdew::protocol::kPracticeStep;
using firstdew::protocol::practiceOf;
using firstdew::protocol::Prompt;
using firstdew::protocol::realLength;
using firstdew::protocol::Script;
using firstdew::protocol::scriptFor;
using firstdew::protocol::ScriptRequest;
using firstdew::protocol::StepKind;

namespace {

/// Every kind of session that there is.
std::vector<ScriptRequest> everyRequest()
{
    std::vector<ScriptRequest> out;
    for (const Site site : allOf<Site>())
        for (const WayOfWorking way : allOf<WayOfWorking>())
            for (const PolaritySwap swap : allOf<PolaritySwap>())
                for (const Waveform waveform : allOf<Waveform>()) {
                    auto q = request(site, way);
                    q.swap = swap;
                    q.waveform = waveform;
                    if (scriptFor(q))
                        out.push_back(q);
                }
    return out;
}

/// A session run by that script.
Run runOf(const Script& script)
{
    Run run(script.request);
    run.state = prepared(script, {10});
    run.state.last = run.state.kept = run.now;
    return run;
}

/// By the large button and the clock alone, to the end; the seconds that the clock took.
int throughTo(Run& run)
{
    int seconds = 0;
    for (int i = 0; i < 4000 && run.state.phase == Phase::Running; ++i) {
        if (const auto event = mainEvent(run.state); event && !run.state.script.steps[run.state.step].timed)
            REQUIRE(run.send(*event));
        else {
            run.pass(1);
            ++seconds;
        }
    }
    return seconds;
}

bool asksForCurrent(Prompt prompt)
{
    return prompt == Prompt::SwitchOnDirect || prompt == Prompt::SwitchOnPulsed || prompt == Prompt::RaiseSlowly ||
           prompt == Prompt::RaiseByRemote;
}

} // namespace

TEST_CASE("practice has every step of the session, in its order, and none of it takes minutes")
{
    REQUIRE(everyRequest().size() > 20);
    for (const auto& q : everyRequest()) {
        const auto session = scriptFor(q).value();
        const auto practice = practiceOf(session);
        REQUIRE(practice.steps.size() == session.steps.size());
        for (std::size_t i = 0; i < session.steps.size(); ++i) {
            auto step = practice.steps[i];
            CHECK((!step.timed || step.length <= kPracticeStep));
            step.length = session.steps[i].length;
            step.prompt = session.steps[i].prompt;
            CHECK(step == session.steps[i]);
        }
        CHECK(practice.request == session.request);
        CHECK(firstdew::protocol::isPractice(practice));
        CHECK_FALSE(firstdew::protocol::isPractice(session));
    }
}

TEST_CASE("practice runs by the engine of the session to its end in a few minutes")
{
    for (const auto& q : everyRequest()) {
        auto run = runOf(practiceOf(scriptFor(q).value()));
        const int seconds = throughTo(run);
        CHECK(run.state.phase == Phase::Finished);
        CHECK(run.count(EffectKind::Completed) == 1);
        CHECK(seconds <= 4 * 60);
        auto session = runOf(scriptFor(q).value());
        throughTo(session);
        CHECK(session.count(EffectKind::StepChanged) == run.count(EffectKind::StepChanged));
    }
}

TEST_CASE("nobody is asked in practice to switch the machine on or to turn the current up")
{
    for (const auto& q : everyRequest()) {
        auto run = runOf(practiceOf(scriptFor(q).value()));
        (void)run.send(BathEventKind::Begin);
        (void)run.send(BathEventKind::SwitchedOn);
        run.passTo(StepKind::Raise);
        (void)run.send(BathEventKind::Raised);
        (void)run.send(BathEventKind::Discomfort);
        (void)run.send(BathEventKind::Lowered);
        (void)run.send(BathEventKind::Raised);
        (void)run.read(run.state.script.request.limit.mA + 1);
        (void)run.read(5);
        (void)run.send(BathEventKind::OutOfWater); // it starts again
        throughTo(run);
        CHECK(run.state.phase != Phase::Running);
        int said = 0;
        for (const Effect& effect : run.effects) {
            if (!effect.prompt)
                continue;
            ++said;
            CHECK_FALSE(asksForCurrent(*effect.prompt));
        }
        CHECK(said > 10);
    }
}

TEST_CASE("practice knows what a step takes in a real session, where that is longer")
{
    const auto practice = practiceOf(scriptFor(request(Site::Feet)).value());
    for (std::size_t i = 0; i < practice.steps.size(); ++i) {
        const auto real = realLength(practice, i);
        if (practice.steps[i].kind == StepKind::Hold)
            CHECK(real == Seconds{15 * 60}); // both feet, 15 minutes a phase: common practice, no source
        else
            CHECK_FALSE(real);
    }
    const auto under = practiceOf(scriptFor(request(Site::Hands, WayOfWorking::HandsUnder)).value());
    for (std::size_t i = 0; i < under.steps.size(); ++i)
        if (under.steps[i].kind == StepKind::Announce)
            CHECK_FALSE(realLength(under, i)); // these fifteen seconds are what they are
    CHECK_FALSE(realLength(practice, practice.steps.size()));
}
