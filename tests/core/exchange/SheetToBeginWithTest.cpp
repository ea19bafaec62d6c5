#include "core/Build.h"
#include "exchange/CareSheetFile.h"
#include "exchange/Caseload.h"

#include <catch2/catch.hpp>

using namespace firstdew;
using namespace firstdew::exchange;
using build::Facts;

namespace {

const LocalDate kToday = LocalDate(20500);

Taught taughtAtHands(double level)
{
    Taught taught;
    taught.site = Site::Hands;
    taught.who = "Nurse Invented";
    taught.ticks = {TaughtTick::TurnedUpSlowly};
    taught.waveform = Waveform::Direct;
    taught.level = Milliamps{level};
    return taught;
}

} // namespace

TEST_CASE("a new sheet begins with the level agreed when the one site was taught")
{
    Facts d;
    d.add(SiteUse{Site::Hands, true}, kToday - 9).add(taughtAtHands(11), kToday - 1);
    const auto sheet = sheetToBeginWith(d.on(kToday));
    CHECK(sheet.waveform == Waveform::Direct);
    CHECK(sheet.level == Milliamps{11});
    d.add(SiteUse{Site::Armpits, true}, kToday); // direct current is not for these, so the sheet leaves it open
    CHECK_FALSE(sheetToBeginWith(d.on(kToday)).level);
    CHECK_FALSE(sheetToBeginWith(d.on(kToday)).waveform);
}
