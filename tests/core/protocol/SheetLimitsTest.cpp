#include "protocol/SheetLimits.h"

#include <catch2/catch.hpp>

using namespace firstdew::protocol;

namespace {

CareSheet sheetFor(SetOf<Site> sites)
{
    CareSheet s;
    s.who = "Dr Vance";
    s.given = *LocalDate::parse("2026-03-02");
    s.sites = sites;
    return s;
}

} // namespace

TEST_CASE("a sheet's limits are told for every current that it allows, and never above the table")
{
    // Common practice, no source; the child's pulsed limit is our own choice (Limits.cpp).
    CareSheet s = sheetFor({Site::Hands});
    CHECK(limitsOf(s, AgeGroup::Adult) == std::vector<SheetLimit>{{Site::Hands, Waveform::Direct, Milliamps{20}},
                                                                  {Site::Hands, Waveform::Pulsed, Milliamps{30}}});
    CHECK(limitsOf(s, AgeGroup::Child) == std::vector<SheetLimit>{{Site::Hands, Waveform::Direct, Milliamps{15}},
                                                                  {Site::Hands, Waveform::Pulsed, Milliamps{20}}});
    s.directLimit = Milliamps{12};
    s.pulsedLimit = Milliamps{25}; // above a child's
    s.waveform = Waveform::Direct;
    CHECK(limitsOf(s, AgeGroup::Adult) == std::vector<SheetLimit>{{Site::Hands, Waveform::Direct, Milliamps{12}}});
    s.waveform = Waveform::Pulsed;
    CHECK(limitsOf(s, AgeGroup::Child) == std::vector<SheetLimit>{{Site::Hands, Waveform::Pulsed, Milliamps{20}}});
}

TEST_CASE("armpits on a sheet get pulsed current alone, and no more than their pads bear")
{
    CareSheet s = sheetFor({Site::Armpits});
    // Unknown pads count as 24 cm², half a milliamp a square centimetre (our own choice).
    CHECK(limitsOf(s, AgeGroup::Adult) == std::vector<SheetLimit>{{Site::Armpits, Waveform::Pulsed, Milliamps{12}}});
    s.pad = SquareCentimetres{16};
    CHECK(limitsOf(s, AgeGroup::Adult) == std::vector<SheetLimit>{{Site::Armpits, Waveform::Pulsed, Milliamps{8}}});
}

TEST_CASE("the level that a sheet names is within every limit of it, and its choice begins with the lowest first aim")
{
    CareSheet s = sheetFor({Site::Hands, Site::Armpits});
    CHECK(mostLevel(s, Waveform::Pulsed, AgeGroup::Adult) == Milliamps{12}); // unknown pads
    CHECK(levelToStart(s, Waveform::Pulsed, AgeGroup::Adult) == Milliamps{4});
    CHECK(mostLevel(s, Waveform::Direct, AgeGroup::Adult) == Milliamps{20}); // hands alone
    s.sites = {Site::Armpits};
    CHECK_FALSE(mostLevel(s, Waveform::Direct, AgeGroup::Adult));
    CHECK_FALSE(levelToStart(s, Waveform::Direct, AgeGroup::Adult));
}
