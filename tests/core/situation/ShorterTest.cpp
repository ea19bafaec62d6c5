#include "core/Build.h"
#include "outlook/UsualDays.h"
#include "situation/Assess.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace firstdew;
using namespace firstdew::facts;
using build::day;
using build::Facts;

namespace {

const LocalDate kStart = day("2026-01-05");

situation::SiteSituation handsOn(const Facts& d, LocalDate today)
{
    return situation::assess(d.on(today)).sites.front();
}

} // namespace

TEST_CASE("dry spells that halve are told with their date, and how long those since last")
{
    Facts d;
    d.adult().screened(kStart);
    LocalDate session = kStart;
    LocalDate changed;
    const auto spell = [&](int lasts) {
        d.session(Site::Hands, session);
        for (int age = 1; age <= lasts; ++age)
            d.checkIn(DiarySite::Hands, session + age, age < lasts ? Level::Dry : Level::Clammy);
        session = session + lasts;
    };
    for (int i = 0; i < 16; ++i)
        spell(11 + i % 4);
    CHECK_FALSE(outlook::shorterToTell(handsOn(d, session).forecast));
    changed = session;
    int after = 0;
    for (; after < 12 && !outlook::shorterToTell(handsOn(d, session).forecast); ++after) {
        spell(5 + after % 3);
        d.session(Site::Hands, session);
    }
    const auto f = handsOn(d, session).forecast;
    const auto told = outlook::shorterToTell(f);
    REQUIRE(told);
    CAPTURE(after, told->before, told->now, told->since.iso());
    CHECK(after <= 8);
    CHECK(std::abs(told->since - changed) <= 14);
    CHECK(told->before >= 11);
    CHECK(told->before <= 15);
    CHECK(told->now >= 5);
    CHECK(told->now <= 8);
    CHECK(f.learned == static_cast<int>(f.spells.size())); // the forecast still goes by all of them
    // What is usual over all spells would contradict it.
    const auto tellsUsual = [&](LocalDate today) {
        return std::ranges::any_of(handsOn(d, today).reasons, [](const situation::Reason& r) {
            return r.kind == situation::ReasonKind::DrySpellUsual;
        });
    };
    CHECK(tellsUsual(changed));
    CHECK_FALSE(tellsUsual(session));
    // It is told for a while, and not for ever.
    CHECK(outlook::shorterToTell(handsOn(d, session + 100).forecast));
    CHECK_FALSE(outlook::shorterToTell(handsOn(d, session + 200).forecast));
}
