#include "protocol/Drawings.h"

namespace firstdew::protocol {

namespace {

Drawing positionAt(Site site, std::optional<Side> side)
{
    switch (site) {
    case Site::Hands: return Drawing::HandsInTrays;
    case Site::Feet: return Drawing::FeetInTrays;
    case Site::HandFoot: return side == Side::Left ? Drawing::HandFootLeft : Drawing::HandFootRight;
    case Site::Armpits: return Drawing::PadsFitted;
    }
    return {};
}

Drawings lookAt(Site site)
{
    switch (site) {
    case Site::Hands: return {Drawing::LookAtHands};
    case Site::Feet: return {Drawing::LookAtFeet};
    case Site::HandFoot: return {Drawing::LookAtHands, Drawing::LookAtFeet};
    case Site::Armpits: return {Drawing::LookAtArmpits};
    }
    return {};
}

/// How the polarity is reversed there; pads are exchanged only where pads are.
Drawings swapOf(const ScriptRequest& q)
{
    const bool pads = q.site == Site::Armpits;
    Drawings out{Drawing::AtZero};
    if (pads)
        out.push_back(Drawing::SoakPads);
    out.push_back(q.swap == PolaritySwap::Switch         ? Drawing::FlipSwitch
                  : q.swap == PolaritySwap::Pads && pads ? Drawing::ExchangePads
                                                         : Drawing::SwapLeads);
    return out;
}

Drawings finishOf(const ScriptRequest& q)
{
    if (q.way == WayOfWorking::HandsUnder)
        return {Drawing::DryHands, Drawing::KitDrying}; // the hands are out and the machine is off already
    switch (q.site) {
    case Site::Hands: return {Drawing::MachineOff, Drawing::HandsOut, Drawing::DryHands};
    case Site::Feet: return {Drawing::MachineOff, Drawing::DryFeet};
    case Site::HandFoot: return {Drawing::MachineOff, Drawing::DryHands, Drawing::DryFeet};
    case Site::Armpits: return {Drawing::MachineOff, Drawing::PadsOff};
    }
    return {};
}

Drawings handsOutOf(const Step& step)
{
    Drawings out{Drawing::AtZero, Drawing::HandsOut, Drawing::DryHands};
    if (step.prompt == Prompt::HandsOutLast)
        out.push_back(Drawing::MachineOff);
    return out;
}

} // namespace

Drawing raiseDrawing(const ScriptRequest& request)
{
    return request.way == WayOfWorking::HandsUnder ? Drawing::RemoteUp : Drawing::TurnUp;
}

Drawing lowerDrawing(const ScriptRequest& request)
{
    return request.way == WayOfWorking::HandsUnder ? Drawing::RemoteDown : Drawing::TurnDown;
}

Drawings drawingsOf(const Step& step, const ScriptRequest& request)
{
    switch (step.kind) {
    case StepKind::CheckList: return {Drawing::MachineOff};
    case StepKind::SwitchOn: return {Drawing::SwitchOn, Drawing::AtZero};
    case StepKind::Announce:
    case StepKind::Hold: return {positionAt(request.site, step.side)};
    case StepKind::Raise: return {raiseDrawing(request)};
    case StepKind::Lower: return {lowerDrawing(request)};
    case StepKind::HandsOut: return handsOutOf(step);
    case StepKind::Swap: return swapOf(request);
    case StepKind::MoveSide: return {Drawing::AtZero, positionAt(request.site, step.side)};
    case StepKind::Finish: return finishOf(request);
    }
    return {};
}

Drawings drawingsOf(TechniqueCheck check, Site site, PolaritySwap swap)
{
    ScriptRequest request;
    request.site = site;
    request.swap = swap;
    switch (check) {
    case TechniqueCheck::LevelReached: return {Drawing::TurnUp};
    case TechniqueCheck::PolaritySwapped: return swapOf(request);
    case TechniqueCheck::NoCream: return lookAt(site);
    case TechniqueCheck::UnderWater: return {Drawing::WaterLevel, Drawing::PlateUnderGrid};
    case TechniqueCheck::Contacts: return {Drawing::MachineOff, Drawing::LeadsIn};
    case TechniqueCheck::FreshCells: return {Drawing::CellsIn};
    case TechniqueCheck::SoftWater: return {};
    }
    return {};
}

Drawings drawingsOf(PrepItem item, Site site)
{
    switch (item) {
    case PrepItem::JewelleryOff: return {Drawing::JewelleryOff};
    case PrepItem::SkinChecked: return lookAt(site);
    case PrepItem::WoundsCovered: return {Drawing::JellyOnCut};
    case PrepItem::NoAntiperspirant: return {Drawing::NoAntiperspirant};
    case PrepItem::NotShaved: return {Drawing::NotShaved};
    case PrepItem::WarmWater: return {Drawing::WaterLevel};
    case PrepItem::BathsOnTable: return {Drawing::TraysOnTable};
    case PrepItem::BathsOnFloor: return {Drawing::TraysOnFloor};
    case PrepItem::PlateUnderGrid: return {Drawing::PlateUnderGrid};
    case PrepItem::PadsSoaked: return {Drawing::SoakPads, Drawing::PadsFitted};
    case PrepItem::LeadsIn: return {Drawing::MachineOff, Drawing::LeadsIn};
    case PrepItem::HelperStays: return {Drawing::HelperBeside};
    case PrepItem::RemoteInReach: return {Drawing::RemoteInReach};
    case PrepItem::CellsIn: return {Drawing::CellsIn};
    }
    return {};
}

} // namespace firstdew::protocol
