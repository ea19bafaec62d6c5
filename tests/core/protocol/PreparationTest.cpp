#include "protocol/Preparation.h"

#include "core/Build.h"
#include "protocol/CurrentAdvice.h"
#include "protocol/Kit.h"
#include "protocol/Practice.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <rapidcheck.h>
#include <tuple>

using namespace firstdew::protocol;
using build::day;

namespace {

bool has(const std::vector<PrepItem>& list, PrepItem item)
{
    return std::find(list.begin(), list.end(), item) != list.end();
}

Session at(Site site, Waveform waveform, double comfortable, Comfort comfort = Comfort::Comfortable)
{
    Session s;
    s.site = site;
    s.waveform = waveform;
    s.comfortable = Milliamps{comfortable};
    s.comfort = comfort;
    return s;
}

} // namespace

TEST_CASE("the list holds exactly what the site, the machine and the way of working need")
{
    // common practice, no source
    Machine m;
    m.power = PowerSource::Cells;
    const auto hands = preparationFor(Site::Hands, m, WayOfWorking::HandsUnder, false);
    CHECK(has(hands, PrepItem::BathsOnTable));
    CHECK(has(hands, PrepItem::RemoteInReach));
    CHECK(has(hands, PrepItem::CellsIn));
    CHECK_FALSE(has(hands, PrepItem::HelperStays));
    CHECK(has(preparationFor(Site::Hands, m, WayOfWorking::Helper, false), PrepItem::HelperStays));
    CHECK_FALSE(has(hands, PrepItem::BathsOnFloor));
    CHECK_FALSE(has(hands, PrepItem::PadsSoaked));
    CHECK_FALSE(has(hands, PrepItem::WoundsCovered));
    m.power = PowerSource::Mains;
    const auto armpits = preparationFor(Site::Armpits, m, WayOfWorking::FreeHand, true);
    CHECK(has(armpits, PrepItem::PadsSoaked));
    CHECK(has(armpits, PrepItem::NotShaved));
    CHECK(has(armpits, PrepItem::WoundsCovered));
    CHECK_FALSE(has(armpits, PrepItem::WarmWater));
    CHECK_FALSE(has(armpits, PrepItem::CellsIn));
    const auto both = preparationFor(Site::HandFoot, m, WayOfWorking::FreeHand, false);
    CHECK(has(both, PrepItem::BathsOnTable));
    CHECK(has(both, PrepItem::BathsOnFloor));
    CHECK(kWaterPerBathMl == 350);
}

TEST_CASE("waits follow from the answers")
{
    // 24 h after antiperspirant, three days after shaving: common practice, no source
    const LocalTime now{day("2026-03-05"), {8 * 60}};
    Preparation p;
    CHECK(waitsFor(p, now).empty());
    p.antiperspirant = LocalTime{day("2026-03-04"), {18 * 60 + 40}};
    REQUIRE(waitsFor(p, now).size() == 1);
    CHECK(waitsFor(p, now)[0].until == LocalTime{day("2026-03-05"), {18 * 60 + 40}});
    p.shaved = LocalTime{day("2026-03-03"), {7 * 60}};
    CHECK(waitsFor(p, now).front().until == LocalTime{day("2026-03-06"), {7 * 60}});
    CHECK(waitsFor(p, {day("2026-03-06"), {7 * 60}}).empty());
    p.shaved = LocalTime{day("2026-04-01"), {0}}; // a slip: in the future
    CHECK(waitsFor(p, now).front().until == now.plusMinutes(3 * 24 * 60));
}

TEST_CASE("the level advised steps up after comfort, down after discomfort, never above the limit")
{
    // armpits 2-3 mA a session at most: common practice, no source; the other steps are our own choice
    const LocalDate today = day("2026-03-05");
    const auto advise = [&](const build::Facts& d, Site site, Waveform w, double limit) {
        return currentAdviceFor(d.on(today), site, w, {limit});
    };
    build::Facts d;
    CHECK(advise(d, Site::Hands, Waveform::Direct, 20).target.mA == 10);
    d.add(at(Site::Hands, Waveform::Direct, 14), today - 3);
    CHECK(advise(d, Site::Hands, Waveform::Direct, 20).target.mA == 15);
    CHECK(advise(d, Site::Hands, Waveform::Direct, 14).target.mA == 14);
    CHECK(advise(d, Site::Hands, Waveform::Direct, 14).reasons.front() == CurrentReason::AtLimit);
    CHECK(advise(d, Site::Feet, Waveform::Direct, 20).reasons.front() == CurrentReason::FirstTime);
    d.add(at(Site::Hands, Waveform::Direct, 10, Comfort::Unpleasant), today - 1);
    const auto down = advise(d, Site::Hands, Waveform::Direct, 20);
    CHECK(down.target.mA == 9);
    CHECK(down.reasons == std::vector{CurrentReason::AfterDiscomfort, CurrentReason::TryPulsed});
    d.add(at(Site::Armpits, Waveform::Pulsed, 8), today - 1);
    CHECK(advise(d, Site::Armpits, Waveform::Pulsed, 30).target.mA == 10);
}

TEST_CASE("an older child comfortable at 20 mA pulsed is advised to try direct current")
{
    // common practice, no source
    const LocalDate today = day("2026-03-05");
    build::Facts d;
    d.add(Person{"Kim", day("2012-03-03"), {}, {}, {}}, day("2025-01-01"))
        .add(at(Site::Feet, Waveform::Pulsed, 20), today - 2);
    const auto advice = currentAdviceFor(d.on(today), Site::Feet, Waveform::Pulsed, {20});
    CHECK(advice.target.mA == 20);
    CHECK(advice.reasons.back() == CurrentReason::TryDirect);
}

TEST_CASE("the current is not stepped up after a session that hurt, was strong or was not called comfortable")
{
    // our own choice, cautious
    const LocalDate today = day("2026-03-05");
    const auto advise = [&](const build::Facts& d) {
        return currentAdviceFor(d.on(today), Site::Hands, Waveform::Direct, {20});
    };
    build::Facts strong;
    strong.add(at(Site::Hands, Waveform::Direct, 12, Comfort::Strong), today - 1);
    CHECK(advise(strong).target.mA == 12);
    CHECK(advise(strong).reasons == std::vector{CurrentReason::SameAgain});

    build::Facts peakOnly;
    auto s = at(Site::Hands, Waveform::Direct, 12);
    s.peak = s.comfortable;
    s.comfortable.reset();
    s.comfort.reset();
    peakOnly.add(s, today - 1);
    CHECK(advise(peakOnly).target.mA == 12);

    build::Facts hurtUnread; // the session that hurt has no reading: the one before has
    hurtUnread.add(at(Site::Hands, Waveform::Direct, 12), today - 3);
    s.peak.reset();
    s.comfort = Comfort::Painful;
    hurtUnread.add(s, today - 1);
    CHECK(advise(hurtUnread).target.mA == 11);
    CHECK(advise(hurtUnread).reasons.front() == CurrentReason::AfterDiscomfort);

    build::Facts blister;
    blister.add(at(Site::Hands, Waveform::Direct, 12), today - 2);
    CHECK(advise(blister).target.mA == 13);
    blister.add(SideEffect{DiarySite::Hands, {SkinFinding::Blister}, ""}, today - 3); // before it: it healed
    CHECK(advise(blister).target.mA == 13);
    blister.add(SideEffect{DiarySite::Feet, {SkinFinding::Blister}, ""}, today - 1);
    CHECK(advise(blister).target.mA == 13);
    blister.add(SideEffect{DiarySite::Hands, {SkinFinding::Blister}, ""}, today - 1);
    CHECK(advise(blister).target.mA == 10);
}

TEST_CASE("the advised level is never above the limit or below zero, for any record")
{
    CHECK(rc::check([](const std::vector<std::tuple<double, int, bool>>& past, unsigned char limit) {
        build::Facts d;
        int n = 0;
        for (const auto& [level, comfort, done] : past) {
            auto s = at(Site::Armpits, Waveform::Pulsed, std::abs(level), static_cast<Comfort>(std::abs(comfort % 5)));
            s.completed = done;
            d.add(s, day("2026-01-01") + n++);
        }
        const Milliamps most{limit / 10.0};
        const auto advice = currentAdviceFor(d.on(day("2027-01-01")), Site::Armpits, Waveform::Pulsed, most);
        RC_ASSERT(advice.target <= most);
        RC_ASSERT(advice.target.mA >= 0);
        RC_ASSERT(!advice.reasons.empty());
        // armpits 2-3 mA from one session to the next at most: common practice, no source
        if (advice.last)
            RC_ASSERT(advice.target.mA <= advice.last->mA + 3);
    }));
}

TEST_CASE("sessions and changes of cells of another machine use up no cells of this one")
{
    const LocalDate start = day("2026-03-02");
    Machine m;
    m.name = "Invented";
    m.power = PowerSource::Cells;
    build::Facts d;
    d.add(CellsChanged{"Invented"}, start).add(CellsChanged{"Older"}, start + 3);
    Session s;
    for (const char* machine : {"", "Invented", "Older"}) {
        s.machine = machine;
        d.add(s, start + 1);
    }
    CHECK(cellSessionsLeft(d.on(start + 5), m) == kSessionsPerCellSet - 2);
    m.name = "Newer";
    CHECK_FALSE(cellSessionsLeft(d.on(start + 5), m));
}

TEST_CASE("a practice of no session that could be has no real lengths")
{
    ScriptRequest q;
    q.site = Site::Feet;
    q.waveform = Waveform::Direct;
    q.limit = {15};
    const Script practice = practiceOf(scriptFor(q).value());
    CHECK(realLength(practice, 3) == scriptFor(q)->steps[3].length);
    Script impossible = practice;
    impossible.request.site = Site::Armpits; // with direct current
    CHECK_FALSE(realLength(impossible, 3));
    CHECK_FALSE(realLength(practice, practice.steps.size()));
}

TEST_CASE("two waits that end at the same minute stand in the order of the list")
{
    const LocalTime now{day("2026-03-05"), {12 * 60}};
    Preparation p;
    p.antiperspirant = now.plusMinutes(60 - kAntiperspirantHours * 60);
    p.shaved = now.plusMinutes(60 - kShavingDays * 24 * 60);
    const auto waits = waitsFor(p, now);
    REQUIRE(waits.size() == 2);
    CHECK(waits[0].until == waits[1].until);
    CHECK(waits[0].item == PrepItem::NoAntiperspirant);
}
