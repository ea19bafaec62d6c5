#include "protocol/Drawings.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <functional>
#include <set>

using namespace firstdew::protocol;

namespace {

bool has(const Drawings& drawings, Drawing wanted)
{
    return std::find(drawings.begin(), drawings.end(), wanted) != drawings.end();
}

const std::set<Drawing>& ofTrays()
{
    static const std::set<Drawing> set{Drawing::WaterLevel,     Drawing::TraysOnTable, Drawing::TraysOnFloor,
                                       Drawing::PlateUnderGrid, Drawing::HandsInTrays, Drawing::FeetInTrays,
                                       Drawing::HandFootRight,  Drawing::HandFootLeft, Drawing::HandsOut};
    return set;
}

const std::set<Drawing>& ofPads()
{
    static const std::set<Drawing> set{Drawing::SoakPads, Drawing::PadsFitted, Drawing::ExchangePads, Drawing::PadsOff,
                                       Drawing::LookAtArmpits};
    return set;
}

/// Every step of every kind of session that may be.
void everyStep(const std::function<void(const Step&, const ScriptRequest&)>& see)
{
    for (const auto site : allOf<Site>())
        for (const auto way : allOf<WayOfWorking>())
            for (const auto swap : allOf<PolaritySwap>())
                for (const auto side : allOf<Side>()) {
                    ScriptRequest q;
                    q.site = site;
                    q.waveform = Waveform::Pulsed;
                    q.swap = swap;
                    q.way = way;
                    q.firstSide = side;
                    q.limit = {12};
                    const auto script = scriptFor(q);
                    if (!script)
                        continue; // both hands under is for hands alone
                    for (const Step& step : script->steps)
                        see(step, q);
                }
}

/// Every line of every preparation that may be.
void everyLine(const std::function<void(PrepItem, Site)>& see)
{
    Machine machine;
    machine.power = PowerSource::Cells;
    for (const auto site : allOf<Site>())
        for (const auto way : allOf<WayOfWorking>())
            for (const PrepItem item : preparationFor(site, machine, way, true))
                see(item, site);
}

void fits(const Drawings& drawings, Site site)
{
    for (const Drawing d : drawings) {
        INFO(token(d));
        CHECK_FALSE((site == Site::Armpits ? ofTrays() : ofPads()).contains(d));
    }
}

} // namespace

TEST_CASE("every step that hands do and every line of the preparation has a drawing that fits its site")
{
    int steps = 0;
    everyStep([&](const Step& step, const ScriptRequest& q) {
        INFO(token(q.site) << " " << token(q.way) << " " << token(step.kind));
        const auto drawings = drawingsOf(step, q);
        CHECK_FALSE(drawings.empty());
        fits(drawings, q.site);
        ++steps;
    });
    CHECK(steps > 100);
    std::set<PrepItem> seen;
    everyLine([&](PrepItem item, Site site) {
        INFO(token(site) << " " << token(item));
        const auto drawings = drawingsOf(item, site);
        CHECK_FALSE(drawings.empty());
        fits(drawings, site);
        seen.insert(item);
    });
    for (const auto item : allOf<PrepItem>())
        CHECK(seen.contains(item));
}

TEST_CASE("no drawing is without a use")
{
    std::set<Drawing> used;
    const auto note = [&](const Drawings& drawings) {
        for (const Drawing d : drawings)
            used.insert(d);
    };
    everyStep([&](const Step& step, const ScriptRequest& q) { note(drawingsOf(step, q)); });
    everyLine([&](PrepItem item, Site site) { note(drawingsOf(item, site)); });
    for (const auto d : allOf<Drawing>()) {
        INFO(token(d));
        CHECK(used.contains(d));
    }
}

TEST_CASE("polarity is shown reversed as this machine and site have it")
{
    everyStep([](const Step& step, const ScriptRequest& q) {
        const auto drawings = drawingsOf(step, q);
        const bool swap = step.kind == StepKind::Swap;
        const bool pads = q.site == Site::Armpits;
        INFO(token(q.site) << " " << token(q.swap) << " " << token(step.kind));
        CHECK(has(drawings, Drawing::FlipSwitch) == (swap && q.swap == PolaritySwap::Switch));
        CHECK(has(drawings, Drawing::ExchangePads) == (swap && pads && q.swap == PolaritySwap::Pads));
        CHECK(has(drawings, Drawing::SwapLeads) ==
              (swap && (q.swap == PolaritySwap::Leads || (!pads && q.swap == PolaritySwap::Pads))));
        CHECK(has(drawings, Drawing::SoakPads) == (swap && pads));
    });
}

TEST_CASE("the meter at zero or the machine off is shown before anything that carried current is touched")
{
    const std::set<Drawing> touches{Drawing::SwapLeads, Drawing::FlipSwitch, Drawing::ExchangePads, Drawing::SoakPads,
                                    Drawing::PadsOff,   Drawing::HandsOut,   Drawing::DryFeet,      Drawing::LeadsIn};
    const auto check = [&](const Drawings& drawings, bool moves) {
        const bool any =
            moves || std::any_of(drawings.begin(), drawings.end(), [&](Drawing d) { return touches.contains(d); });
        if (any)
            CHECK((drawings.front() == Drawing::AtZero || drawings.front() == Drawing::MachineOff));
    };
    everyStep([&](const Step& step, const ScriptRequest& q) {
        INFO(token(q.site) << " " << token(step.kind));
        check(drawingsOf(step, q), step.kind == StepKind::MoveSide);
    });
    check(drawingsOf(PrepItem::LeadsIn, Site::Hands), false);
}

TEST_CASE("hand and foot are shown on the side that the step treats, and the remote only where it is used")
{
    everyStep([](const Step& step, const ScriptRequest& q) {
        const auto drawings = drawingsOf(step, q);
        const bool shown = q.site == Site::HandFoot && (step.kind == StepKind::Hold || step.kind == StepKind::MoveSide);
        CHECK(has(drawings, Drawing::HandFootRight) == (shown && step.side == Side::Right));
        CHECK(has(drawings, Drawing::HandFootLeft) == (shown && step.side == Side::Left));
        const bool under = q.way == WayOfWorking::HandsUnder;
        CHECK(has(drawings, Drawing::RemoteUp) == (under && step.kind == StepKind::Raise));
        CHECK(has(drawings, Drawing::RemoteDown) == (under && step.kind == StepKind::Lower));
    });
}

TEST_CASE("at the end the machine is switched off first, but with hands under it is off already")
{
    bool seen = false;
    everyStep([&](const Step& step, const ScriptRequest& q) {
        if (step.kind != StepKind::Finish)
            return;
        const bool under = q.way == WayOfWorking::HandsUnder;
        seen = seen || under;
        INFO(token(q.site) << " " << token(q.way));
        CHECK(has(drawingsOf(step, q), Drawing::MachineOff) == !under);
        CHECK(has(drawingsOf(step, q), Drawing::KitDrying) == under);
    });
    CHECK(seen);
}

TEST_CASE("what to check when a course brings nothing is drawn as it is at that site")
{
    const auto shown = [](TechniqueCheck check, Site site = Site::Hands, PolaritySwap swap = PolaritySwap::Leads) {
        return drawingsOf(check, site, swap);
    };
    CHECK(shown(TechniqueCheck::LevelReached) == Drawings{Drawing::TurnUp});
    CHECK(shown(TechniqueCheck::PolaritySwapped) == Drawings{Drawing::AtZero, Drawing::SwapLeads});
    CHECK(shown(TechniqueCheck::PolaritySwapped, Site::Armpits, PolaritySwap::Pads) ==
          Drawings{Drawing::AtZero, Drawing::SoakPads, Drawing::ExchangePads});
    CHECK(shown(TechniqueCheck::NoCream, Site::Feet) == Drawings{Drawing::LookAtFeet});
    CHECK(shown(TechniqueCheck::UnderWater) == Drawings{Drawing::WaterLevel, Drawing::PlateUnderGrid});
    CHECK(shown(TechniqueCheck::Contacts) == Drawings{Drawing::MachineOff, Drawing::LeadsIn});
    CHECK(shown(TechniqueCheck::FreshCells) == Drawings{Drawing::CellsIn});
    CHECK(shown(TechniqueCheck::SoftWater).empty());
}

TEST_CASE("the hands come out of the water last with the machine switched off")
{
    everyStep([](const Step& step, const ScriptRequest& q) {
        if (step.kind == StepKind::HandsOut)
            CHECK(has(drawingsOf(step, q), Drawing::MachineOff) == (step.prompt == Prompt::HandsOutLast));
    });
}
