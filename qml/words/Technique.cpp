#include "words/Technique.h"

#include <QCoreApplication>

namespace firstdew::words {

namespace {

/// Marks and translates in one; the tool that gathers texts reads the class name here.
struct Technique {
    Q_DECLARE_TR_FUNCTIONS(Technique)
};

} // namespace

QString techniqueText(protocol::TechniqueCheck check, facts::Site site)
{
    using protocol::TechniqueCheck;
    const bool pads = site == facts::Site::Armpits;
    switch (check) {
    case TechniqueCheck::LevelReached:
        return Technique::tr("Was the current as high as is comfortable, and never above your limit? A weak current "
                             "does little.");
    case TechniqueCheck::PolaritySwapped: return Technique::tr("Was the polarity swapped half-way, each time?");
    case TechniqueCheck::NoCream:
        return Technique::tr("Was the skin free of cream? Cream keeps the current off. Petroleum jelly goes on cuts "
                             "only.");
    case TechniqueCheck::UnderWater:
        return Technique::tr("Was everything under water, flat on the grid and without pressing?");
    case TechniqueCheck::Contacts:
        return pads ? Technique::tr("With the machine off: is each lead in fully? Are the pads soaked through and "
                                    "tight?")
                    : Technique::tr("With the machine off: is each lead in fully? Does each plate lie under its grid?");
    case TechniqueCheck::FreshCells:
        return Technique::tr("Are the batteries fresh? Four alkaline cells last about three sessions.");
    case TechniqueCheck::SoftWater:
        return Technique::tr("Is your water very soft? It conducts badly. Ask your nurse or prescriber what to do, and "
                             "add nothing by yourself, not even salt.");
    }
    return {};
}

} // namespace firstdew::words
