#include "situation/Assess.h"

#include "core/Build.h"
#include "outlook/Learned.h"

#include <catch2/catch.hpp>
#include <random>

using namespace firstdew::situation;
using build::day;
using build::Diary;

namespace
{

const LocalDate kStart = day("2026-01-05");

Diary person()
{
    return Diary().adult().screened(day("2026-01-01"));
}

SiteSituation hands(const Diary& d, LocalDate today)
{
    return assess(d.record(), today).sites.at(0);
}

/// The seven sessions of the default course, each on its day, and HDSS before and after.
Diary courseDone(int hdssBefore, int hdssAfter)
{
    auto d = person();
    Course c;
    c.site = Site::Hands;
    c.start = kStart;
    d.add(Hdss{DiarySite::Hands, hdssBefore}, kStart, 0).add(c, kStart);
    for (const int n : {1, 2, 4, 7, 10, 15, 22})
        d.session(Site::Hands, kStart + n - 1);
    return d.add(Hdss{DiarySite::Hands, hdssAfter}, kStart + 22);
}

} // namespace

TEST_CASE("a course is gone through day by day, judged at its end and then kept dry")
{
    auto d = person();
    Course c;
    c.site = Site::Hands;
    c.start = kStart;
    d.add(c, kStart);
    CHECK(hands(d, kStart).advice == Advice::DoCourseSession);
    d.session(Site::Hands, kStart);
    CHECK(hands(d, kStart).advice == Advice::None);
    CHECK(hands(d, kStart + 1).advice == Advice::DoCourseSession);

    auto done = courseDone(4, 2);
    CHECK(hands(done, kStart + 22).stage == Stage::Review);
    CHECK(hands(done, kStart + 22).advice == Advice::Review);
    CHECK(hands(done, kStart + 22).response == firstdew::protocol::Response::Strong);
    done.add(ReviewDone{Site::Hands, true}, kStart + 23);
    CHECK(hands(done, kStart + 23).stage == Stage::KeepingDry);
    CHECK(hands(done, kStart + 23).lastSession == kStart + 21);
}

TEST_CASE("without a response the way leads to the prescriber")
{
    auto d = courseDone(3, 3);
    CHECK(hands(d, kStart + 22).advice == Advice::AskPrescriber);
    CHECK(hands(d, kStart + 22).reasons.front().kind == ReasonKind::NoResponse);
    d.add(ReviewDone{Site::Hands, false}, kStart + 23);
    CHECK(hands(d, kStart + 23).advice == Advice::AskPrescriber);
}

TEST_CASE("who does not go on after the course is sent to the prescriber, and told why")
{
    auto done = courseDone(4, 3);
    done.add(ReviewDone{Site::Hands, false}, kStart + 23);
    const auto s = hands(done, kStart + 24);
    CHECK(s.stage == Stage::Review);
    CHECK(s.advice == Advice::AskPrescriber);
    REQUIRE_FALSE(s.reasons.empty());
    CHECK(s.reasons.front().kind == ReasonKind::NoResponse);
}

TEST_CASE("a site says how it is treated")
{
    auto d = person();
    d.session(Site::HandFoot, kStart).session(Site::Armpits, kStart, Waveform::Pulsed);
    const auto sites = assess(d.record(), kStart + 1).sites;
    REQUIRE(sites.size() == 3);
    CHECK(sites.at(0).treatedAs == Site::HandFoot);
    CHECK(sites.at(1).treatedAs == Site::HandFoot);
    CHECK(sites.at(2).treatedAs == Site::Armpits);
}

TEST_CASE("no call to treat stands against a stop answer, and a clinician's word lifts it")
{
    auto d = person().session(Site::Hands, kStart);
    const LocalDate late = kStart + 40;
    CHECK(hands(d, late).advice == Advice::TopUpDue);
    d.screened(kStart + 1, {ScreeningRow::MetalImplant});
    CHECK(hands(d, late).advice == Advice::Blocked);
    CHECK(hands(d, late).reasons.front().kind == ReasonKind::ScreeningStops);
    d.add(Clearance{ScreeningRow::MetalImplant, "Dr. Invented", kStart + 2, {}}, kStart + 2);
    CHECK(hands(d, late).advice == Advice::TopUpDue);
}

TEST_CASE("armpits are never treated with a machine that has direct current alone")
{
    auto d = person().session(Site::Armpits, kStart, Waveform::Pulsed);
    Machine m;
    m.name = "invented";
    d.add(m, kStart);
    const auto s = assess(d.record(), kStart + 40).sites.at(0);
    CHECK(s.advice == Advice::Blocked);
    CHECK(s.reasons.front().kind == ReasonKind::MachineUnsuited);
}

TEST_CASE("a call is put off for a day, or until something new is reported")
{
    auto d = person().session(Site::Hands, kStart);
    const LocalDate due = *hands(d, kStart).nextSession;
    CHECK(hands(d, due).advice == Advice::TopUpDue);
    auto tomorrow = d;
    tomorrow.add(CallAnswered{DiarySite::Hands, CallAnswer::Tomorrow, ""}, due);
    CHECK(hands(tomorrow, due).advice == Advice::Watch);
    CHECK(hands(tomorrow, due + 1).advice == Advice::TopUpDue);
    d.add(CallAnswered{DiarySite::Hands, CallAnswer::NotThisTime, ""}, due);
    CHECK(hands(d, due + 5).advice == Advice::Watch);
    d.checkIn(DiarySite::Hands, due + 6, Level::Clammy);
    CHECK(hands(d, due + 6).advice == Advice::FirstDewTopUp);
}

TEST_CASE("a paused site says nothing")
{
    auto d = person().session(Site::Hands, kStart).add(Pause{Site::Hands, true}, kStart + 1);
    CHECK(hands(d, kStart + 60).stage == Stage::Paused);
    CHECK(hands(d, kStart + 60).advice == Advice::None);
}

TEST_CASE("the person's own risk moves the due day")
{
    auto d = person().session(Site::Hands, kStart);
    const auto usual = *hands(d, kStart).forecast.due;
    CHECK(*hands(Diary(d).add(Preference{"risk", "0.05"}, kStart), kStart).forecast.due < usual);
    CHECK(*hands(Diary(d).add(Preference{"risk", "0.5"}, kStart), kStart).forecast.due > usual);
    CHECK(*hands(Diary(d).add(Preference{"risk", "seven"}, kStart), kStart).forecast.due == usual);
}

TEST_CASE("dearer waiting never calls later, and dearer top-ups never sooner")
{
    auto d = person().session(Site::Hands, kStart);
    for (int i = 1; i < 60; ++i) {
        const auto record = d.record();
        const auto calls = [&](double waiting, double needless) {
            return assess(record, kStart + i, {0.2, {waiting, needless}, {}}).sites.at(0).forecast.firstDew;
        };
        CHECK((!calls(1, 1) || calls(8, 1)));
        CHECK((!calls(1, 4) || calls(1, 1)));
    }
}

TEST_CASE("what was learned before changes no answer, whatever is added, filled in or put right meanwhile")
{
    std::mt19937 random(11);
    const auto below = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
    for (int round = 0; round < 15; ++round) {
        firstdew::outlook::Learned learned;
        auto d = person();
        for (int day = 0; day < 150; ++day) {
            const int when = below(3) == 0 ? below(day + 1) : day; // now and then filled in afterwards
            if (below(9) == 0)
                d.session(allOf<Site>()[static_cast<std::size_t>(below(4))], kStart + when);
            if (below(4) != 0)
                d.checkIn(allOf<DiarySite>()[static_cast<std::size_t>(below(3))], kStart + when,
                          static_cast<Level>(below(4) == 0 ? 1 + below(3) : 0),
                          below(5) == 0 ? SetOf<Circumstance>{Circumstance::Heat} : SetOf<Circumstance>{});
            const auto record = d.record();
            const auto with = assess(record, kStart + day, {}, &learned);
            const auto without = assess(record, kStart + day);
            REQUIRE(with.sites.size() == without.sites.size());
            for (std::size_t i = 0; i < with.sites.size(); ++i) {
                REQUIRE(with.sites[i].advice == without.sites[i].advice);
                REQUIRE(with.sites[i].forecast.today.dry == without.sites[i].forecast.today.dry);
                REQUIRE(with.sites[i].forecast.usualTo == without.sites[i].forecast.usualTo);
                REQUIRE(with.sites[i].forecast.quantiles == without.sites[i].forecast.quantiles);
            }
        }
    }
}
