#include "diary/Diary.h"

#include "core/Build.h"
#include "diary/Reader.h"

#include <catch2/catch.hpp>

using namespace firstdew::diary;
using build::day;
using build::Facts;

namespace {

const LocalDate kDay = day("2026-03-01");

std::vector<DiarySite> inUse(const Facts& d)
{
    std::vector<DiarySite> out;
    for (const SiteInUse& s : d.on(kEndOfTime).sitesInUse())
        out.push_back(s.site);
    return out;
}

} // namespace

TEST_CASE("one hand + foot session treats two diary sites")
{
    const auto used = Facts().add(SiteUse{Site::HandFoot, true}, kDay).on(kEndOfTime).sitesInUse();
    REQUIRE(used.size() == 2);
    CHECK(used[0].site == DiarySite::Hands);
    CHECK(used[1].site == DiarySite::Feet);
    CHECK(used[1].treatedAs == Site::HandFoot);
}

TEST_CASE("a site never chosen is in use once something is recorded about it, and a dropped site is not")
{
    CHECK(inUse(Facts()).empty());
    CHECK(inUse(Facts().checkIn(DiarySite::Armpits, kDay, Level::Dry)) == std::vector{DiarySite::Armpits});
    CHECK(inUse(Facts().session(Site::Feet, kDay)) == std::vector{DiarySite::Feet});
    CHECK(inUse(Facts().session(Site::Feet, kDay).add(SiteUse{Site::Feet, false}, kDay + 1)).empty());
    CHECK(inUse(Facts().add(SiteUse{Site::Feet, false}, kDay).add(SiteUse{Site::Feet, true}, kDay + 1)).size() == 1);
}

TEST_CASE("of two chosen kinds of session for a site, the one used last counts")
{
    Facts d;
    d.add(SiteUse{Site::Hands, true}, kDay).add(SiteUse{Site::HandFoot, true}, kDay).session(Site::Hands, kDay + 1);
    CHECK(d.on(kEndOfTime).sitesInUse().at(0).treatedAs == Site::Hands);
    d.session(Site::HandFoot, kDay + 9);
    CHECK(d.on(kEndOfTime).sitesInUse().at(0).treatedAs == Site::HandFoot);
}

TEST_CASE("days away that follow each other are one absence")
{
    const auto d = Facts()
                       .add(Away{kDay + 4, kDay + 6}, kDay)
                       .add(Away{kDay, kDay + 1}, kDay)
                       .add(Away{kDay + 2, kDay + 3}, kDay)
                       .add(Away{kDay + 8, kDay + 8}, kDay)
                       .on(kDay);
    for (int i = 0; i <= 6; ++i)
        CHECK(d.awayAround(kDay + i) == std::pair(kDay, kDay + 6));
    CHECK_FALSE(d.awayAround(kDay + 7));
    CHECK_FALSE(d.awayAround(kDay - 1));
    CHECK(d.awayAround(kDay + 8) == std::pair(kDay + 8, kDay + 8));
}

TEST_CASE("another treatment works at its sites and on its days")
{
    const auto d = Facts()
                       .add(OtherTreatment{OtherKind::Botulinum, "", {DiarySite::Hands}, kDay, kDay + 9}, kDay)
                       .add(OtherTreatment{OtherKind::Tablets, "invented", {}, kDay + 20, {}}, kDay)
                       .on(kDay);
    CHECK(d.otherTreatments.size() == 2);
    const auto& hands = d.at(DiarySite::Hands);
    CHECK(hands.otherwiseTreated(kDay - 5, kDay));
    CHECK(hands.otherwiseTreated(kDay + 9, kDay + 12));
    CHECK_FALSE(hands.otherwiseTreated(kDay - 5, kDay - 1));
    CHECK_FALSE(hands.otherwiseTreated(kDay + 10, kDay + 19));
    CHECK_FALSE(d.at(DiarySite::Feet).otherwiseTreated(kDay, kDay + 19));
    CHECK(d.at(DiarySite::Feet).otherwiseTreated(kDay + 400, kDay + 400)); // it goes on
}

TEST_CASE("a pause holds until it is lifted")
{
    Facts d;
    d.add(SiteUse{Site::Hands, true}, kDay).add(Pause{Site::Hands, true}, kDay + 1);
    CHECK(d.on(kEndOfTime).sitesInUse().at(0).paused);
    d.add(Pause{Site::Hands, false}, kDay + 2);
    CHECK_FALSE(d.on(kEndOfTime).sitesInUse().at(0).paused);
}

TEST_CASE("session days have a completed session, appear once and end with the diary's day")
{
    Facts d;
    d.session(Site::Hands, kDay).session(Site::HandFoot, kDay).session(Site::Hands, kDay + 3);
    Session broken;
    broken.site = Site::Hands;
    broken.completed = false;
    d.add(broken, kDay + 2);
    CHECK(d.on(kDay + 9).at(DiarySite::Hands).sessionDays == std::vector{kDay, kDay + 3});
    CHECK(d.on(kDay + 2).at(DiarySite::Hands).sessionDays == std::vector{kDay});
    CHECK(d.on(kDay + 9).at(DiarySite::Feet).sessionDays == std::vector{kDay});
}

TEST_CASE("the wettest of several reports on a day counts, with its circumstances")
{
    Facts d;
    d.checkIn(DiarySite::Hands, kDay, Level::Clammy, {Circumstance::Heat}).checkIn(DiarySite::Hands, kDay, Level::Dry);
    const auto reports = d.on(kDay).at(DiarySite::Hands).reports;
    REQUIRE(reports.size() == 1);
    CHECK(reports[0].level == Level::Clammy);
    CHECK(reports[0].with.contains(Circumstance::Heat));
    CHECK(d.on(kDay).at(DiarySite::Feet).reports.empty());
}

TEST_CASE("what is reported after a session of its day says nothing about the spell before it")
{
    Facts d;
    const auto clammyAt = [](int minute) { return std::pair(CheckIn{DiarySite::Hands, Level::Clammy, {}}, minute); };
    const auto [clammy, morning] = clammyAt(8 * 60);
    d.add(clammy, kDay, morning).session(Site::HandFoot, kDay, Waveform::Direct, 18 * 60);
    d.checkIn(DiarySite::Hands, kDay, Level::Wet).checkIn(DiarySite::Feet, kDay, Level::Dry);
    d.checkIn(DiarySite::Hands, kDay + 1, Level::Dry);
    const auto levels = [](const Diary& diary, DiarySite site) {
        std::vector<std::pair<LocalDate, Level>> out;
        for (const auto& r : diary.at(site).spellReports)
            out.emplace_back(r.date, r.level);
        return out;
    };
    const std::vector expected{std::pair(kDay, Level::Clammy), std::pair(kDay + 1, Level::Dry)};
    CHECK(levels(d.on(kDay + 1), DiarySite::Hands) == expected);
    CHECK(levels(d.on(kDay + 1), DiarySite::Feet).empty());
    CHECK(d.on(kDay + 1).at(DiarySite::Hands).reports[0].level == Level::Wet);
    // A session that was broken off orders nothing; one filled in later does.
    Session broken;
    broken.site = Site::Hands;
    broken.completed = false;
    d.add(broken, kDay + 1, 12 * 60);
    CHECK(levels(d.on(kDay + 1), DiarySite::Hands) == expected);
    firstdew::diary::Reader reader(d.facts(), "p1", kDay + 1);
    d.session(Site::Hands, kDay + 1, Waveform::Direct, 13 * 60);
    reader.add(d.facts().back());
    CHECK(levels(reader.diary(), DiarySite::Hands) == std::vector{expected[0]});
    CHECK(reader.diary() == d.on(kDay + 1));
}

TEST_CASE("a check-in corrects the earlier one of its day unless a session came between them")
{
    Facts d;
    d.checkIn(DiarySite::Hands, kDay, Level::Clammy).session(Site::Hands, kDay);
    const auto diary = d.on(kDay);
    REQUIRE(diary.checkInCorrectedAt(DiarySite::Hands, {kDay, {20 * 60 + 15}}) != nullptr);
    CHECK(diary.checkInCorrectedAt(DiarySite::Hands, {kDay, {21 * 60}}) == nullptr);
    CHECK(diary.checkInCorrectedAt(DiarySite::Feet, {kDay, {21 * 60}}) == nullptr);
    CHECK(Facts(d)
              .checkIn(DiarySite::Feet, kDay, Level::Dry)
              .on(kDay)
              .checkInCorrectedAt(DiarySite::Feet, {kDay, {21 * 60}}) != nullptr);
}

TEST_CASE("a led session runs from its first event until it is stopped or logged")
{
    Facts d;
    BathPrepared prepared;
    prepared.bath = "b1";
    d.add(prepared, kDay);
    CHECK(d.on(kDay).running({9 * 60}) == nullptr);
    BathEvent e;
    e.bath = "b1";
    d.add(e, kDay);
    CHECK(d.on(kDay).running({9 * 60}) != nullptr);
    Facts stopped = d;
    e.sequence = 1;
    e.event = BathEventKind::Stop;
    CHECK(stopped.add(e, kDay).on(kDay).running({9 * 60}) == nullptr);
    Session s;
    s.bath = "b1";
    CHECK(d.add(s, kDay).on(kDay).running({9 * 60}) == nullptr);
}

TEST_CASE("the event with the highest number counts, and events of other led sessions do not")
{
    Facts d;
    BathPrepared prepared;
    prepared.bath = "b2";
    const auto event = [](const char* bath, int sequence, BathEventKind kind) {
        BathEvent e;
        e.bath = bath;
        e.sequence = sequence;
        e.event = kind;
        return e;
    };
    d.add(event("b1", 0, BathEventKind::Begin), kDay).add(prepared, kDay);
    CHECK(d.on(kDay).running({9 * 60}) == nullptr);
    d.add(event("b2", 1, BathEventKind::Stop), kDay).add(event("b2", 0, BathEventKind::Begin), kDay);
    CHECK(d.on(kDay).running({9 * 60}) == nullptr);
    d.add(event("b2", 2, BathEventKind::Tick), kDay).add(event("b1", 3, BathEventKind::Stop), kDay);
    CHECK(d.on(kDay).running({9 * 60}) != nullptr);
    Session s;
    s.bath = "b1";
    CHECK(d.add(s, kDay).on(kDay).running({9 * 60}) != nullptr);
}

TEST_CASE("a pause of one kind of session does not pause another")
{
    Facts d;
    d.add(SiteUse{Site::Hands, true}, kDay).add(Pause{Site::Feet, true}, kDay);
    CHECK_FALSE(d.on(kEndOfTime).sitesInUse().at(0).paused);
}

TEST_CASE("a session neither stopped nor logged can be continued, and holds reminders back for four hours")
{
    BathPrepared prepared;
    prepared.bath = "b";
    BathEvent begin;
    begin.bath = "b";
    BathEvent stop = begin;
    stop.sequence = 1;
    stop.event = BathEventKind::Stop;
    Facts d;
    d.add(prepared, kDay).add(begin, kDay);
    CHECK(d.on(kDay).running({8 * 60}) != nullptr); // the minute in which it was prepared
    CHECK(d.on(kDay).running({12 * 60}) != nullptr);
    CHECK(d.on(kDay).running({12 * 60 + 1}) == nullptr);
    CHECK(d.on(kDay).running({7 * 60}) != nullptr); // the clock was set back meanwhile
    CHECK(d.on(kDay).running({6 * 60}) == nullptr); // prepared by a clock that was wrong
    CHECK(d.on(kDay + 1).running({8 * 60}) == nullptr);
    Facts late;
    late.add(prepared, kDay, 23 * 60).add(begin, kDay, 23 * 60);
    CHECK(late.on(kDay + 1).running({2 * 60}) != nullptr); // over midnight
    CHECK(late.on(kDay + 1).running({4 * 60}) == nullptr);
    CHECK(d.on(kDay + 2).unwritten() != nullptr);
    d.add(stop, kDay);
    CHECK(d.on(kDay).running({9 * 60}) == nullptr);
    CHECK(d.on(kDay + 1).unwritten() != nullptr);
    CHECK(d.on(kDay + 2).unwritten() == nullptr);
    Session s;
    s.bath = "b";
    CHECK(d.add(s, kDay).on(kDay).unwritten() == nullptr);
}

TEST_CASE("a screening is full once it asked every question that age does not answer, and a yes was asked")
{
    Screening s;
    CHECK_FALSE(Facts().add(s, kDay).on(kDay).fullScreening);
    for (const auto row : allOf<ScreeningRow>())
        if (!knownByAge(row))
            s.asked.insert(row);
    CHECK(Facts().add(s, kDay).on(kDay).fullScreening == kDay);
    s.asked.erase(ScreeningRow::Pregnancy);
    const auto without = Facts().add(s, kDay).on(kDay);
    CHECK_FALSE(without.fullScreening);
    CHECK(without.anyScreening == kDay);
    s.yes.insert(ScreeningRow::Pregnancy);
    const auto told = Facts().add(s, kDay).on(kDay);
    CHECK(told.fullScreening == kDay);
    CHECK(told.answers[ScreeningRow::Pregnancy].back().yes);
}

TEST_CASE("a site that only has check-ins is treated by the kind of session that treats it alone")
{
    for (const auto& [site, kind] : {std::pair{DiarySite::Hands, Site::Hands},
                                     {DiarySite::Feet, Site::Feet},
                                     {DiarySite::Armpits, Site::Armpits}}) {
        const auto used = Facts().checkIn(site, kDay, Level::Dry).on(kEndOfTime).sitesInUse();
        REQUIRE(used.size() == 1);
        CHECK(used[0].treatedAs == kind);
    }
}

TEST_CASE("without a choice the latest session or course says how a site is treated, at the same minute the session")
{
    const auto hands = [](const Facts& d) { return d.on(kEndOfTime).sitesInUse().at(0).treatedAs; };
    Course both;
    both.site = Site::HandFoot;
    CHECK(hands(Facts().add(both, kDay)) == Site::HandFoot);
    CHECK(hands(Facts().session(Site::Hands, kDay).add(both, kDay + 1)) == Site::HandFoot);
    CHECK(hands(Facts().add(both, kDay).session(Site::Hands, kDay + 1)) == Site::Hands);
    CHECK(hands(Facts().add(both, kDay, 600).session(Site::Hands, kDay, Waveform::Direct, 600)) == Site::Hands);
}

TEST_CASE("a kind of session that was dropped does not come back because it was used last")
{
    const auto used = Facts()
                          .session(Site::HandFoot, kDay)
                          .add(SiteUse{Site::HandFoot, false}, kDay + 1)
                          .add(SiteUse{Site::Hands, true}, kDay + 1)
                          .on(kEndOfTime)
                          .sitesInUse();
    REQUIRE(used.size() == 1);
    CHECK(used[0].treatedAs == Site::Hands);
}

TEST_CASE("what was reported and done on a day is found on that day and at that site alone")
{
    Facts d;
    d.checkIn(DiarySite::Hands, kDay, Level::Dry).checkIn(DiarySite::Feet, kDay + 2, Level::Wet);
    d.session(Site::Feet, kDay + 2).session(Site::Hands, kDay + 4);
    const auto diary = d.on(kDay + 9);
    REQUIRE(diary.reportOn(DiarySite::Hands, kDay) != nullptr);
    CHECK(diary.reportOn(DiarySite::Hands, kDay)->level == Level::Dry);
    CHECK(diary.reportOn(DiarySite::Hands, kDay - 1) == nullptr);
    CHECK(diary.reportOn(DiarySite::Hands, kDay + 1) == nullptr);
    REQUIRE(diary.checkInOn(DiarySite::Hands, kDay) != nullptr);
    CHECK(diary.checkInOn(DiarySite::Hands, kDay)->payload.level == Level::Dry);
    CHECK(diary.checkInOn(DiarySite::Hands, kDay + 2) == nullptr);
    CHECK(diary.checkInOn(DiarySite::Hands, kDay - 1) == nullptr);
    REQUIRE(diary.firstSessionOn(DiarySite::Feet, kDay + 2) != nullptr);
    CHECK(diary.firstSessionOn(DiarySite::Hands, kDay + 2) == nullptr);
    CHECK(diary.firstSessionOn(DiarySite::Feet, kDay + 3) == nullptr);
    CHECK(diary.firstSessionOn(DiarySite::Hands, kDay + 5) == nullptr);
}

TEST_CASE("a session before the check-in leaves that open to correction")
{
    Facts d;
    d.session(Site::Hands, kDay, Waveform::Direct, 18 * 60).checkIn(DiarySite::Hands, kDay, Level::Clammy);
    CHECK(d.on(kDay).checkInCorrectedAt(DiarySite::Hands, {kDay, {21 * 60}}) != nullptr);
}

TEST_CASE("a session whose stop was pressed last no longer runs, and is still to be written down")
{
    BathPrepared prepared;
    prepared.bath = "b";
    BathEvent e;
    e.bath = "b";
    Facts d;
    d.add(prepared, kDay).add(e, kDay);
    e.sequence = 1;
    e.event = BathEventKind::StopPressed;
    d.add(e, kDay);
    CHECK(d.on(kDay).running({9 * 60}) == nullptr);
    CHECK(d.on(kDay + 1).unwritten() != nullptr);
    CHECK(d.on(kDay + 2).unwritten() == nullptr);
    e.sequence = 2;
    e.event = BathEventKind::StopTakenBack;
    CHECK(d.add(e, kDay).on(kDay).running({9 * 60}) != nullptr);
}

TEST_CASE("an event of no led session is none that runs or has to be written down")
{
    const auto d = Facts().add(BathEvent{}, kDay);
    CHECK(d.on(kDay).running({9 * 60}) == nullptr);
    CHECK(d.on(kDay).unwritten() == nullptr);
}
