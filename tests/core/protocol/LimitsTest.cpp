#include "protocol/Limits.h"

#include "core/Build.h"

#include <catch2/catch.hpp>
#include <limits>
#include <rapidcheck.h>

using namespace firstdew::protocol;
using build::day;

namespace {

LimitQuery ask(Site site, Waveform waveform, AgeGroup age)
{
    LimitQuery q;
    q.site = site;
    q.waveform = waveform;
    q.age = age;
    return q;
}

} // namespace

TEST_CASE("the four limits of current")
{
    // Common practice; NHS hospital leaflet WPR26540: adults 20 mA, children 15 mA
    CHECK(limitFor(ask(Site::Hands, Waveform::Direct, AgeGroup::Adult)).limit.mA == 20);
    CHECK(limitFor(ask(Site::Hands, Waveform::Direct, AgeGroup::Child)).limit.mA == 15);
    // common practice, no source
    CHECK(limitFor(ask(Site::Feet, Waveform::Pulsed, AgeGroup::Adult)).limit.mA == 30);
    // our own choice, cautious
    CHECK(limitFor(ask(Site::Armpits, Waveform::Pulsed, AgeGroup::Child)).limit.mA == 20);
}

TEST_CASE("armpits are never treated with direct current, whatever the machine")
{
    // common practice, no source
    const auto answer = limitFor(ask(Site::Armpits, Waveform::Direct, AgeGroup::Adult));
    CHECK_FALSE(answer.allowed);
    CHECK(answer.limit.mA == 0);
    CHECK(answer.binding == LimitRow::ArmpitsPulsedOnly);
}

TEST_CASE("a waveform the machine lacks is refused")
{
    auto q = ask(Site::Armpits, Waveform::Pulsed, AgeGroup::Adult);
    q.machine = Machine{};
    q.machine->direct = true;
    q.machine->pulsed = false;
    CHECK(limitFor(q).binding == LimitRow::MachineLacksWaveform);
    CHECK_FALSE(limitFor(q).allowed);
}

TEST_CASE("a care sheet can lower a limit and never raise it")
{
    auto q = ask(Site::Hands, Waveform::Direct, AgeGroup::Adult);
    q.sheets = {CareSheet{}};
    q.sheets[0].directLimit = Milliamps{12};
    CHECK(limitFor(q).limit.mA == 12);
    CHECK(limitFor(q).binding == LimitRow::CareSheet);
    q.sheets[0].directLimit = Milliamps{25};
    CHECK(limitFor(q).limit.mA == 20);
    CHECK(limitFor(q).binding == LimitRow::AdultDirect);
    q.sheets.push_back(CareSheet{}); // hand + foot: that of the feet binds too
    q.sheets[1].directLimit = Milliamps{8};
    CHECK(limitFor(q).limit.mA == 8);
}

TEST_CASE("a small contact area lowers the limit, and a medium one gives a warning")
{
    auto q = ask(Site::Armpits, Waveform::Pulsed, AgeGroup::Adult);
    q.contact = SquareCentimetres{50};
    CHECK(limitFor(q).limit.mA == 25); // 0.5 mA/cm²
    CHECK(limitFor(q).binding == LimitRow::Density);
    REQUIRE(limitFor(q).warnAbove);
    CHECK(limitFor(q).warnAbove->mA == 10); // 0.2 mA/cm²
    q.contact = SquareCentimetres{200};
    CHECK(limitFor(q).limit.mA == 30);
    CHECK_FALSE(limitFor(q).warnAbove);
}

TEST_CASE("a person is a child until the eighteenth birthday or if the birth date is unknown")
{
    CHECK(ageGroupOn(day("2008-03-02"), day("2026-03-01")) == AgeGroup::Child);
    CHECK(ageGroupOn(day("2008-03-02"), day("2026-03-02")) == AgeGroup::Adult);
    CHECK(ageGroupOn(std::nullopt, day("2026-03-02")) == AgeGroup::Child);
}

TEST_CASE("no input raises a limit above the table")
{
    CHECK(rc::check([](double sheet, double area) {
        for (const auto site : allOf<Site>())
            for (const auto waveform : allOf<Waveform>())
                for (const auto age : allOf<AgeGroup>()) {
                    auto q = ask(site, waveform, age);
                    const double trade = limitFor(q).limit.mA;
                    q.sheets = {CareSheet{}};
                    q.sheets[0].directLimit = q.sheets[0].pulsedLimit = Milliamps{sheet};
                    q.contact = SquareCentimetres{area};
                    RC_ASSERT(limitFor(q).limit.mA <= trade);
                    RC_ASSERT(limitFor(q).limit.mA >= 0);
                }
    }));
}
