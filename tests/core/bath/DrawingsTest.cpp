#include "Run.h"

#include <catch2/catch.hpp>

using namespace build;
using firstdew::protocol::Drawing;
using firstdew::protocol::Drawings;

namespace {

State at(Site site, WayOfWorking way, StepKind kind, Current current, bool alarm = false)
{
    State s = Run(request(site, way)).state;
    const auto found =
        std::find_if(s.script.steps.begin(), s.script.steps.end(), [&](const auto& step) { return step.kind == kind; });
    REQUIRE(found != s.script.steps.end());
    s.step = static_cast<std::size_t>(found - s.script.steps.begin());
    s.current = current;
    s.alarm = alarm;
    return s;
}

constexpr auto kFree = WayOfWorking::FreeHand;
constexpr auto kUnder = WayOfWorking::HandsUnder;

} // namespace

TEST_CASE("while current flows that has to come down, turning down is drawn and nothing else")
{
    CHECK(drawingsNow(at(Site::Feet, kFree, StepKind::Hold, Current::Flowing, true)) == Drawings{Drawing::TurnDown});
    CHECK(drawingsNow(at(Site::Hands, kUnder, StepKind::Hold, Current::Flowing, true)) ==
          Drawings{Drawing::RemoteDown});
    for (const auto current : {Current::Flowing, Current::Unknown}) {
        CHECK(drawingsNow(at(Site::Feet, kFree, StepKind::Swap, current)) == Drawings{Drawing::TurnDown});
        CHECK(drawingsNow(at(Site::HandFoot, kFree, StepKind::MoveSide, current)) == Drawings{Drawing::TurnDown});
        CHECK(drawingsNow(at(Site::Feet, kFree, StepKind::SwitchOn, current)) == Drawings{Drawing::TurnDown});
    }
}

TEST_CASE("where nothing has to come down first, the step's own work is drawn")
{
    CHECK(drawingsNow(at(Site::Feet, kFree, StepKind::Swap, Current::Zero)) ==
          Drawings{Drawing::AtZero, Drawing::SwapLeads});
    CHECK(drawingsNow(at(Site::Feet, kFree, StepKind::SwitchOn, Current::Zero)) ==
          Drawings{Drawing::SwitchOn, Drawing::AtZero});
    CHECK(drawingsNow(at(Site::Hands, kUnder, StepKind::HandsOut, Current::Flowing)) ==
          Drawings{Drawing::AtZero, Drawing::HandsOut, Drawing::DryHands});
    CHECK(drawingsNow(at(Site::Feet, kFree, StepKind::Hold, Current::Flowing)) == Drawings{Drawing::FeetInTrays});
}

TEST_CASE("a phase that waits at zero is drawn as raised again, with both hands under only once they are in")
{
    CHECK(drawingsNow(at(Site::Feet, kFree, StepKind::Hold, Current::Zero)) == Drawings{Drawing::TurnUp});
    CHECK(drawingsNow(at(Site::Hands, kUnder, StepKind::Hold, Current::Zero)) ==
          Drawings{Drawing::AtZero, Drawing::HandsInTrays});
}

TEST_CASE("every state of a running session has its drawing, and no other state has one")
{
    for (const auto& [site, way] : {std::pair{Site::Hands, kUnder},
                                    {Site::Hands, WayOfWorking::Helper},
                                    {Site::Feet, kFree},
                                    {Site::HandFoot, kFree},
                                    {Site::Armpits, kFree}}) {
        State s = Run(request(site, way)).state;
        for (s.step = 0; s.step < s.script.steps.size(); ++s.step)
            for (const auto current : {Current::Zero, Current::Flowing, Current::Unknown})
                for (const bool alarm : {false, true})
                    for (const auto phase :
                         {Phase::Running, Phase::AwaitingMeanwhile, Phase::Finished, Phase::Stopped}) {
                        s.current = current;
                        s.alarm = alarm;
                        s.phase = phase;
                        CHECK(drawingsNow(s).empty() == (phase != Phase::Running));
                    }
    }
}
