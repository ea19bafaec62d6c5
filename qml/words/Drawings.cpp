#include "words/Drawings.h"

#include "words/Quantity.h"

#include <QCoreApplication>

namespace firstdew::words {

using protocol::Drawing;

namespace {

/// Marks and translates in one; the tool that gathers texts reads the class name here.
struct Drawings {
    Q_DECLARE_TR_FUNCTIONS(Drawings)
};

} // namespace

QString drawingText(Drawing drawing)
{
    switch (drawing) {
    case Drawing::JewelleryOff: return Drawings::tr("A hand. The ring comes off, the watch lies beside it.");
    case Drawing::LookAtHands: return Drawings::tr("A hand. Under a magnifying glass: a cut and red spots.");
    case Drawing::LookAtFeet: return Drawings::tr("A foot. Under a magnifying glass: a cut and red spots.");
    case Drawing::LookAtArmpits:
        return Drawings::tr("One arm raised. Under a magnifying glass: red spots in the armpit.");
    case Drawing::JellyOnCut: return Drawings::tr("A fingertip puts a thin layer of jelly on a cut, and only there.");
    case Drawing::NoAntiperspirant:
        return Drawings::tr("An antiperspirant beside an armpit, struck out. Below it: 24 hours.");
    case Drawing::NotShaved: return Drawings::tr("A razor beside an armpit, struck out. Below it: three days.");
    case Drawing::WaterLevel:
        return Drawings::tr("A jug with %1 is poured into a low tray. A line across the tray marks the level.")
            .arg(quantity(protocol::kWaterPerBathMl, Unit::Millilitres));
    case Drawing::TraysOnTable: return Drawings::tr("Two trays are put on a wooden table.");
    case Drawing::TraysOnFloor: return Drawings::tr("Two trays are put on the floor in front of a chair.");
    case Drawing::PlateUnderGrid: return Drawings::tr("The plate goes into the tray, and the grid over the plate.");
    case Drawing::SoakPads: return Drawings::tr("Two pads go into a bowl of water.");
    case Drawing::CellsIn: return Drawings::tr("A battery goes into its place, plus and minus as marked.");
    case Drawing::LeadsIn: return Drawings::tr("The machine is off. Two leads are plugged in.");
    case Drawing::HelperBeside:
        return Drawings::tr("Somebody has both hands in trays. A helper stands close by, a finger on the knob.");
    case Drawing::RemoteInReach:
        return Drawings::tr("Two hands in two trays. Between them lies the remote, within their reach.");
    case Drawing::MachineOff: return Drawings::tr("A finger switches the machine off. The meter shows zero.");
    case Drawing::SwitchOn:
        return Drawings::tr("A finger switches the machine on. The light comes on, the meter shows zero.");
    case Drawing::AtZero: return Drawings::tr("The meter under a magnifying glass. It shows zero.");
    case Drawing::TurnUp: return Drawings::tr("Fingers turn the knob up in small steps. The meter rises.");
    case Drawing::TurnDown: return Drawings::tr("Fingers turn the knob down in small steps. The meter is at zero.");
    case Drawing::RemoteUp: return Drawings::tr("A finger on the upper button of the remote. Up in small steps.");
    case Drawing::RemoteDown: return Drawings::tr("A finger on the lower button of the remote. Down in small steps.");
    case Drawing::HandsInTrays: return Drawings::tr("Two hands flat in two trays, under water.");
    case Drawing::FeetInTrays: return Drawings::tr("Two feet flat in two trays, under water.");
    case Drawing::HandFootRight:
        return Drawings::tr(
            "Somebody seated: the right hand in one tray, the right foot in another. The left ones rest outside.");
    case Drawing::HandFootLeft:
        return Drawings::tr(
            "Somebody seated: the left hand in one tray, the left foot in another. The right ones rest outside.");
    case Drawing::PadsFitted: return Drawings::tr("A pad under each arm, each on a lead to the machine.");
    case Drawing::HandsOut: return Drawings::tr("Both hands come out of the trays.");
    case Drawing::SwapLeads: return Drawings::tr("The meter shows zero. Each lead goes to the place of the other.");
    case Drawing::FlipSwitch: return Drawings::tr("The meter shows zero. A finger flips the polarity switch.");
    case Drawing::ExchangePads: return Drawings::tr("The two pads change sides: right goes left, left goes right.");
    case Drawing::PadsOff: return Drawings::tr("The pads come off, away from both armpits.");
    case Drawing::DryHands: return Drawings::tr("Two hands are dried with a towel.");
    case Drawing::DryFeet: return Drawings::tr("Two feet are dried with a towel.");
    case Drawing::KitDrying: return Drawings::tr("Tray, plate and grid stand upright and drip dry.");
    }
    return {};
}

QString drawingFile(Drawing drawing, bool dark)
{
    const std::string_view name = facts::token(drawing);
    return QStringLiteral(":/assets/drawings/%1/%2.svg")
        .arg(dark ? QStringLiteral("dark") : QStringLiteral("light"),
             QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size())));
}

bool drawingMayTurn(Drawing drawing)
{
    switch (drawing) {
    case Drawing::JewelleryOff:
    case Drawing::LookAtHands:
    case Drawing::LookAtFeet:
    case Drawing::LookAtArmpits:
    case Drawing::JellyOnCut:
    case Drawing::NotShaved:
    case Drawing::TraysOnTable:
    case Drawing::TraysOnFloor:
    case Drawing::PlateUnderGrid:
    case Drawing::SoakPads:
    case Drawing::HelperBeside:
    case Drawing::PadsOff:
    case Drawing::KitDrying: return true;
    case Drawing::NoAntiperspirant:
    case Drawing::WaterLevel:
    case Drawing::CellsIn:
    case Drawing::LeadsIn:
    case Drawing::RemoteInReach:
    case Drawing::MachineOff:
    case Drawing::SwitchOn:
    case Drawing::AtZero:
    case Drawing::TurnUp:
    case Drawing::TurnDown:
    case Drawing::RemoteUp:
    case Drawing::RemoteDown:
    case Drawing::HandsInTrays:
    case Drawing::FeetInTrays:
    case Drawing::HandFootRight:
    case Drawing::HandFootLeft:
    case Drawing::PadsFitted:
    case Drawing::HandsOut:
    case Drawing::SwapLeads:
    case Drawing::FlipSwitch:
    case Drawing::ExchangePads:
    case Drawing::DryHands:
    case Drawing::DryFeet: return false;
    }
    return false;
}

} // namespace firstdew::words
