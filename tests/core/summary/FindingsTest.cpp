#include "summary/Findings.h"

#include "core/Build.h"
#include "protocol/Script.h"

#include <catch2/catch.hpp>

using namespace firstdew;
using namespace firstdew::summary;
using build::day;
using build::Facts;

namespace {

const LocalDate kToday = day("2026-03-02");

Session logged(Site site, double peak, double comfortable, Waveform waveform = Waveform::Direct)
{
    Session s;
    s.site = site;
    s.waveform = waveform;
    s.peak = Milliamps{peak};
    s.comfortable = Milliamps{comfortable};
    return s;
}

BathEvent event(int sequence, BathEventKind kind, long long second, std::optional<double> mA = {})
{
    BathEvent e;
    e.bath = "b";
    e.sequence = sequence;
    e.event = kind;
    e.wallMs = e.monotonicMs = second * 1000;
    if (mA)
        e.reading = Milliamps{*mA};
    return e;
}

Facts person() { return Facts().adult().screened(kToday); }

/// Feet at 15 mA at most: 14, then 17 for half a minute, then 13.
Facts ledAbove()
{
    BathPrepared p;
    p.bath = "b";
    p.site = Site::Feet;
    p.limit = {15};
    p.steps = protocol::kSteps;
    p.way = WayOfWorking::FreeHand;
    Facts d = person();
    using enum BathEventKind;
    d.add(p, kToday);
    int n = 0;
    for (const auto& e :
         {event(0, Begin, 0), event(1, SwitchedOn, 10), event(2, Raised, 60), event(3, Reading, 90, 14.0),
          event(4, Reading, 120, 17.0), event(5, Reading, 150, 13.0), event(6, Stop, 160)})
        d.add(e, kToday, 500 + n++);
    return d;
}

} // namespace

TEST_CASE("a session above its limit stands on the page with peak, limit and time, wherever it was recorded")
{
    const auto led = overLimitFrom(ledAbove().on(kToday), kToday - 30);
    REQUIRE(led.size() == 1);
    CHECK(led[0].peak.mA == 17);
    CHECK(led[0].limit.mA == 15);
    // From 14 to 17 mA in 30 s the line is above 15 for 20 s, and from 17 to 13 mA for 15 s.
    CHECK(led[0].seconds == Seconds{35});
    CHECK(overLimitFrom(ledAbove().on(kToday), kToday + 1).empty());

    Facts d = person();
    d.add(logged(Site::Hands, 22, 18), kToday - 5).add(logged(Site::Hands, 20, 18), kToday - 4);
    const auto told = overLimitFrom(d.on(kToday), kToday - 30);
    REQUIRE(told.size() == 1); // 20 mA direct for adults (NHS hospital leaflet WPR26540)
    CHECK(told[0].date == kToday - 5);
    CHECK_FALSE(told[0].seconds);
    Session both = logged(Site::Feet, 17, 13);
    both.bath = "b";
    CHECK(overLimitFrom(ledAbove().add(both, kToday).on(kToday), kToday - 30).size() == 1); // once
}

TEST_CASE("a peak that only the log tells of counts, though the session was led or its current is not open any more")
{
    // Nobody could touch the phone while it was led, so the reading was given afterwards.
    BathPrepared p;
    p.bath = "b";
    p.limit = {15};
    Session led = logged(Site::Hands, 18, 12);
    led.bath = "b";
    const auto after = overLimitFrom(person().add(p, kToday).add(led, kToday).on(kToday), kToday);
    REQUIRE(after.size() == 1);
    CHECK(after[0].limit.mA == 15);

    CareSheet pulsed;
    pulsed.who = "Dr Vance";
    pulsed.given = kToday;
    pulsed.sites = {Site::Hands};
    pulsed.waveform = Waveform::Pulsed;
    auto closed = person().add(logged(Site::Hands, 22, 12), kToday - 3).add(pulsed, kToday);
    closed.add(logged(Site::Armpits, 5, 5), kToday - 2); // armpits with pulsed current only: common practice, no source
    const auto found = overLimitFrom(closed.on(kToday), kToday - 9);
    REQUIRE(found.size() == 2);
    CHECK(found[0].limit.mA == 20);
    CHECK(found[1].limit.mA == 0);
}

TEST_CASE("limits are listed for what is in use, with who set them")
{
    Facts d = person();
    Machine m;
    m.pulsed = true;
    m.pad = SquareCentimetres{45};
    d.add(SiteUse{Site::Hands, true}, kToday).add(SiteUse{Site::Armpits, true}, kToday).add(m, kToday);
    CareSheet sheet;
    sheet.who = "Dr Vance";
    sheet.given = kToday;
    sheet.sites = {Site::Hands};
    sheet.directLimit = Milliamps{12};
    d.add(sheet, kToday);
    const auto limits = limitsInForce(d.on(kToday));
    REQUIRE(limits.size() == 3);
    CHECK(limits[0].site == Site::Hands);
    CHECK(limits[0].answer.limit.mA == 12);
    CHECK(limits[0].setBy == "Dr Vance");
    CHECK(limits[1].waveform == Waveform::Pulsed);
    CHECK(limits[1].setBy.empty());
    CHECK(limits[2].site == Site::Armpits);           // pulsed alone
    CHECK(limits[2].answer.limit.mA == Approx(22.5)); // 0.5 mA/cm²
}

TEST_CASE("the highest comfortable level is told for each waveform with its limit")
{
    Facts d = person();
    d.add(logged(Site::Hands, 15, 12), kToday - 9).add(logged(Site::Hands, 15, 14), kToday - 6);
    d.add(logged(Site::HandFoot, 26, 25, Waveform::Pulsed), kToday - 3).add(logged(Site::Feet, 19, 18), kToday - 2);
    const auto levels = highestLevels(d.on(kToday), DiarySite::Hands, kToday - 30);
    REQUIRE(levels.size() == 2);
    CHECK(levels[0] == HighestLevel{{14}, Waveform::Direct, kToday - 6, Milliamps{20}});
    CHECK(levels[1] == HighestLevel{{25}, Waveform::Pulsed, kToday - 3, Milliamps{30}});
    CHECK(highestLevels(d.on(kToday), DiarySite::Hands, kToday - 7).size() == 2);
    CHECK(highestLevels(d.on(kToday), DiarySite::Hands, kToday - 2).empty());
}

TEST_CASE("a level that burnt is no comfortable one, whenever the burn was noted")
{
    Facts d = person();
    Session burnt = logged(Site::Hands, 18, 17);
    burnt.skin = {SkinFinding::Burn};
    d.add(burnt, kToday - 9).add(logged(Site::Hands, 16, 15), kToday - 6).add(logged(Site::Hands, 12, 11), kToday - 3);
    d.add(SideEffect{DiarySite::Hands, {SkinFinding::Blister}, ""}, kToday - 5);
    const auto levels = highestLevels(d.on(kToday), DiarySite::Hands, kToday - 30);
    REQUIRE(levels.size() == 1);
    CHECK(levels[0].level.mA == 11);
}

TEST_CASE("while a health answer stands in the way, the page says so first")
{
    Facts d = person();
    d.screened(kToday, {ScreeningRow::MetalImplant});
    CHECK(verdictOf(d.on(kToday), situation::assess(d.on(kToday))) == Verdict::Blocked);
    d.session(Site::Hands, kToday - 3);
    CHECK(verdictOf(d.on(kToday), situation::assess(d.on(kToday))) == Verdict::Blocked);
}

TEST_CASE("scores have their dates, and the last one before the period is there to compare with")
{
    Facts d = person();
    d.add(Hdss{DiarySite::Hands, 4}, kToday - 60).add(Hdss{DiarySite::Hands, 3}, kToday - 40);
    d.add(Hdss{DiarySite::Hands, 2}, kToday - 10).add(Hdss{DiarySite::Feet, 1}, kToday - 9);
    CHECK(scoresFrom(d.on(kToday), DiarySite::Hands, kToday - 30) ==
          std::vector<ScoreOn>{{kToday - 40, 3}, {kToday - 10, 2}});
}

TEST_CASE("the reader is asked for what is open, the most urgent first")
{
    Facts d = ledAbove().add(Question{"How often?"}, kToday - 1).add(Question{"old"}, kToday - 90);
    CareSheet sheet;
    sheet.who = "Dr Vance";
    sheet.given = kToday - 30;
    sheet.sites = {Site::Feet};
    sheet.review = kToday;
    d.add(sheet, kToday - 30).session(Site::Feet, kToday - 3);
    d.add(SideEffect{DiarySite::Feet, {SkinFinding::Burn}, ""}, kToday - 2);
    d.screened(kToday, {ScreeningRow::MetalImplant});
    const auto diary = d.on(kToday);
    const auto situation = situation::assess(diary);
    const auto asks = asksOf(diary, situation, kToday - 30);
    REQUIRE(asks.size() == 5);
    CHECK(asks[0] == Ask{AskKind::LookAtSkin, DiarySite::Feet, {}, kToday - 2, 0, SkinFinding::Burn});
    CHECK(asks[1] == Ask{AskKind::OverLimit, {}, {}, kToday, 1});
    CHECK(asks[2] == Ask{AskKind::HealthAnswer, {}, ScreeningRow::MetalImplant, kToday, 0});
    CHECK(asks[3].kind == AskKind::Review);
    CHECK(asks[4] == Ask{AskKind::Questions, {}, {}, {}, 1});
    CHECK(verdictOf(diary, situation) == Verdict::StopAndLook);
    CHECK(asksOf(person().on(kToday), situation::assess(person().on(kToday)), kToday - 30).empty());
    CHECK(verdictOf(person().on(kToday), situation::assess(person().on(kToday))) == Verdict::NotStarted);
}

TEST_CASE("the verdict is that of the site that does least well")
{
    Facts d = person();
    const LocalDate start = kToday - 40;
    for (const DiarySite site : {DiarySite::Hands, DiarySite::Feet})
        for (int i = 1; i <= 14; ++i)
            d.checkIn(site, start - i, Level::Wet);
    for (int i = 0; i < 10; ++i)
        d.session(Site::Hands, start + 4 * i).session(Site::Feet, start + 4 * i);
    for (int i = 0; i < 28; ++i)
        d.checkIn(DiarySite::Hands, kToday - i, Level::Dry).checkIn(DiarySite::Feet, kToday - i, Level::Wet);
    const auto diary = d.on(kToday);
    CHECK(verdictOf(diary, situation::assess(diary)) == Verdict::NotYet);
}
