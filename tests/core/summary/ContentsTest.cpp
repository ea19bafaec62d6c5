#include "summary/Contents.h"

#include "../Build.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace firstdew;
using namespace firstdew::summary;
using build::day;
using build::Facts;

namespace {

Session bath(Site site, double comfortable, std::optional<double> charge, bool completed = true)
{
    Session s;
    s.site = site;
    s.comfortable = Milliamps{comfortable};
    if (charge)
        s.charge = MilliampMinutes{*charge};
    s.completed = completed;
    return s;
}

const SiteContents& of(const Contents& c, DiarySite site)
{
    return *std::find_if(c.sites.begin(), c.sites.end(), [&](const auto& s) { return s.site == site; });
}

} // namespace

TEST_CASE("the page counts its days including the first and the last")
{
    Facts d;
    d.adult().screened(day("2026-01-01"));
    for (const char* site : {"2026-01-31", "2026-02-01", "2026-02-28", "2026-03-01"})
        d.add(bath(Site::Hands, 10, 100), day(site));
    d.checkIn(DiarySite::Hands, day("2026-01-31"), Level::Wet)
        .checkIn(DiarySite::Hands, day("2026-02-01"), Level::Dry)
        .checkIn(DiarySite::Hands, day("2026-02-10"), Level::Clammy, {Circumstance::Heat, Circumstance::Stress})
        .checkIn(DiarySite::Hands, day("2026-02-28"), Level::Clammy, {Circumstance::Heat})
        .checkIn(DiarySite::Hands, day("2026-03-01"), Level::Dripping);
    d.add(Question{"before"}, day("2026-01-31")).add(Question{"within"}, day("2026-02-14"));
    d.add(SideEffect{DiarySite::Hands, {SkinFinding::Redness}, "gone by noon"}, day("2026-02-02"))
        .add(SideEffect{}, day("2026-03-01"));
    const auto c = contentsFor(d.on(day("2026-02-28")), day("2026-02-01"));

    CHECK(c.name == "Ada");
    CHECK(c.sessions.size() == 2);
    CHECK(c.questions == std::vector<std::string>{"within"});
    CHECK(c.sideEffects.size() == 1);
    const auto& hands = of(c, DiarySite::Hands);
    CHECK(hands.checkIns == 3);
    CHECK(hands.byLevel[Level::Dry] == 1);
    CHECK(hands.byLevel[Level::Clammy] == 2);
    CHECK(hands.byLevel[Level::Wet] + hands.byLevel[Level::Dripping] == 0);
    CHECK(hands.stirred[Circumstance::Heat] == 2);
    CHECK(hands.stirred[Circumstance::Stress] == 1);
    CHECK(hands.stirred[Circumstance::Illness] == 0);
    CHECK(hands.sessions == std::vector<LocalDate>{day("2026-02-01"), day("2026-02-28")});
    CHECK(hands.line.front() == std::pair{day("2026-02-01"), Level::Dry});
}

TEST_CASE("highest current and mean charge cover all sessions that state them, completed or stopped early")
{
    Facts d;
    d.adult();
    d.add(bath(Site::Hands, 9, 90), day("2026-02-03"))
        .add(bath(Site::Hands, 12, std::nullopt, false), day("2026-02-05"));
    d.add(bath(Site::Hands, 11, 110), day("2026-02-07")).add(bath(Site::Feet, 20, 400), day("2026-02-08"));
    const auto c = contentsFor(d.on(day("2026-02-28")), day("2026-02-01"));
    const auto& hands = of(c, DiarySite::Hands);
    CHECK(hands.sessionsDone == 2);
    CHECK(hands.sessionsInterrupted == 1);
    REQUIRE(hands.levels.size() == 1);
    CHECK(hands.levels.front().level == Milliamps{12});
    CHECK(hands.meanCharge->mAmin == Approx(100)); // (90 + 110) / 2
    CHECK(of(c, DiarySite::Feet).meanCharge->mAmin == Approx(400));

    Facts silent;
    silent.adult().session(Site::Hands, day("2026-02-03"));
    const auto bare = contentsFor(silent.on(day("2026-02-28")), day("2026-02-01"));
    CHECK(bare.sites.front().levels.empty());
    CHECK_FALSE(bare.sites.front().meanCharge);
}

TEST_CASE("sessions are listed by the day they happened, not by the day they were recorded")
{
    Facts d;
    d.adult().session(Site::Hands, day("2026-02-20")).session(Site::Feet, day("2026-02-10"));
    const auto c = contentsFor(d.on(day("2026-02-28")), day("2026-02-01"));
    REQUIRE(c.sessions.size() == 2);
    CHECK(c.sessions[0].payload.site == Site::Feet);
}

TEST_CASE("the latest answer up to the last day counts for a health question")
{
    Facts d;
    CHECK_FALSE(contentsFor(d.on(day("2026-02-28")), day("2026-02-01")).screened);
    d.adult().screened(day("2026-01-01"), {ScreeningRow::EczemaAtSite, ScreeningRow::Pregnancy});
    d.screened(day("2026-02-10"), {ScreeningRow::Pregnancy});
    d.screened(day("2026-03-10"), {});
    d.add(Clearance{ScreeningRow::Pregnancy, "a clinician", day("2026-02-11"), {}}, day("2026-02-11"));
    d.add(Clearance{ScreeningRow::Pregnancy, "a clinician", day("2026-03-11"), {}}, day("2026-03-11"));
    const auto c = contentsFor(d.on(day("2026-02-28")), day("2026-02-01"));
    CHECK(c.screened);
    CHECK(c.screeningYes == std::vector{ScreeningRow::Pregnancy});
    CHECK(c.clearances.size() == 1);
    CHECK(contentsFor(d.on(day("2026-01-31")), day("2026-01-01")).screeningYes.size() == 2);
    CHECK(contentsFor(d.on(day("2026-03-31")), day("2026-03-01")).screeningYes.empty());
    CHECK_FALSE(contentsFor(d.on(day("2025-12-31")), day("2025-01-01")).screened);
}

TEST_CASE("the page holds course, machine and weighings")
{
    Facts d;
    d.adult().screened(day("2026-02-01"));
    Machine machine;
    machine.name = "the one in the cupboard";
    d.add(machine, day("2026-02-01"));
    Course course;
    course.site = Site::Hands;
    course.start = day("2026-02-02");
    d.add(course, day("2026-02-01"));
    d.session(Site::Hands, day("2026-02-02"));
    d.add(Weighing{DiarySite::Hands, Milligrams{1000}, Milligrams{1150}, 5}, day("2026-02-03"));
    d.add(Weighing{DiarySite::Feet, Milligrams{1000}, Milligrams{1300}, 5}, day("2026-02-03"));
    d.add(Weighing{DiarySite::Hands, Milligrams{1000}, Milligrams{1050}, 5}, day("2026-01-03"));
    const auto c = contentsFor(d.on(day("2026-02-28")), day("2026-02-01"));
    CHECK(c.machine->name == "the one in the cupboard");
    const auto& hands = of(c, DiarySite::Hands);
    CHECK(hands.sessionsPlanned == 7); // in four weeks
    CHECK(hands.courseDone == 1);
    REQUIRE(hands.weighings.size() == 1);
    CHECK(hands.weighings.front().first == day("2026-02-03"));
    CHECK(hands.weighings.front().second == Approx(30)); // 150 mg in five minutes
}

TEST_CASE("other treatments that worked in the period stand on the page")
{
    Facts d;
    d.adult().session(Site::Hands, day("2026-02-02"));
    const auto add = [&](const char* from, std::optional<LocalDate> until) {
        d.add(OtherTreatment{OtherKind::Tablets, from, {}, day(from), until}, day("2026-02-02"));
    };
    add("2026-01-01", day("2026-01-31"));
    add("2026-01-02", day("2026-02-01"));
    add("2026-01-03", {});
    add("2026-02-28", {});
    add("2026-03-01", {});
    const auto c = contentsFor(d.on(day("2026-02-28")), day("2026-02-01"));
    std::vector<std::string> names;
    for (const auto& e : c.otherTreatments)
        names.push_back(e.payload.name);
    CHECK(names == std::vector<std::string>{"2026-01-02", "2026-01-03", "2026-02-28"});
}

TEST_CASE("the taught session of each site stands on the page, whatever the period, until it is withdrawn")
{
    Facts d;
    d.adult().session(Site::Hands, day("2026-02-02"));
    const Taught first{Site::Hands, "a colleague", {TaughtTick::OutOfWater}, Waveform::Direct, {}};
    const Taught last{Site::Hands, "the nurse", {TaughtTick::WhenToStop}, Waveform::Direct, Milliamps{8}};
    d.add(first, day("2026-01-02")).add(last, day("2026-01-05"));
    const auto page = [&] { return contentsFor(d.on(day("2026-02-28")), day("2026-02-01")); };
    REQUIRE(page().taught.size() == 1);
    CHECK(page().taught.front().payload == last);
    CHECK(page().taught.front().happened.date == day("2026-01-05"));
    auto facts = d.facts();
    facts.push_back({"gone", "p1", {day("2026-02-03"), {}}, 9, facts.back().id, Retraction{"a slip"}});
    const auto without = contentsFor(diary::readDiary(facts, "p1", day("2026-02-28")), day("2026-02-01"));
    REQUIRE(without.taught.size() == 1);
    CHECK(without.taught.front().payload == first);
}

TEST_CASE("what was found of the skin after a session stands on the page, and so does an older burn that still bars")
{
    Facts d;
    Session burned = bath(Site::HandFoot, 10, 100);
    burned.skin = {SkinFinding::Burn, SkinFinding::Fine};
    d.adult().add(burned, day("2026-02-03"));
    d.add(SideEffect{DiarySite::Armpits, {SkinFinding::Blister}, ""}, day("2025-12-01"));
    d.add(SideEffect{DiarySite::Armpits, {SkinFinding::Redness}, ""}, day("2025-12-02"));
    const auto c = contentsFor(d.on(day("2026-02-28")), day("2026-02-01"));
    REQUIRE(c.sideEffects.size() == 3);
    CHECK(c.sideEffects[0].payload.site == DiarySite::Armpits);
    CHECK(c.sideEffects[1].payload == SideEffect{DiarySite::Hands, {SkinFinding::Burn}, ""});
    CHECK(c.sideEffects[2].payload.site == DiarySite::Feet);
}
