#include "situation/Assess.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

// What is advised where, told so that a nurse can agree or object. The people are invented.

using namespace firstdew::situation;
using build::day;
using build::Facts;

namespace {

const LocalDate kStart = day("2026-01-05");
constexpr auto kHands = DiarySite::Hands;

Facts person() { return Facts().adult().screened(day("2026-01-01")); }

/// A screened adult who has had `rounds` spells: dry for `dry` days after each session, clammy at rest the next, and
/// treated then. The last session is the first day of the present spell.
struct Regular {
    Facts diary = person();
    LocalDate last = kStart;

    Regular(int rounds, int dry, DiarySite site = kHands)
    {
        const Site as = site == DiarySite::Feet ? Site::Feet : Site::Hands;
        diary.session(as, last);
        for (int r = 0; r < rounds; ++r)
            spell(dry, site, as);
    }
    void spell(int dry, DiarySite site = kHands, Site as = Site::Hands)
    {
        for (int i = 1; i <= dry; ++i)
            diary.checkIn(site, last + i, Level::Dry);
        diary.checkIn(site, last + dry + 1, Level::Clammy);
        last = last + dry + 1;
        diary.session(as, last);
    }
    void dryUntil(int days)
    {
        for (int i = 1; i <= days; ++i)
            diary.checkIn(kHands, last + i, Level::Dry);
    }
    [[nodiscard]] SiteSituation on(int days, std::size_t index = 0) const
    {
        return assess(diary.on(last + days)).sites.at(index);
    }
};

bool gives(const SiteSituation& s, ReasonKind kind)
{
    return std::any_of(s.reasons.begin(), s.reasons.end(), [&](const Reason& r) { return r.kind == kind; });
}

} // namespace

TEST_CASE("a new user is not told to top up")
{
    const auto s = assess(person().add(SiteUse{Site::Hands, true}, kStart).on(kStart)).sites.at(0);
    CHECK(s.stage == Stage::NotStarted);
    CHECK(s.advice == Advice::None);
    CHECK_FALSE(s.forecast.due);
}

TEST_CASE("one clammy day before any course leads only to the first course")
{
    const auto s = assess(person().checkIn(kHands, kStart, Level::Dripping).on(kStart)).sites.at(0);
    CHECK(s.stage == Stage::NotStarted);
}

TEST_CASE("day 9 of a usual 14, clammy at rest: top up today")
{
    Regular r(6, 13);
    r.dryUntil(8);
    r.diary.checkIn(kHands, r.last + 9, Level::Clammy);
    const auto s = r.on(9);
    CHECK(s.stage == Stage::FirstDew);
    CHECK(s.advice == Advice::FirstDewTopUp);
    CHECK(gives(s, ReasonKind::ClammyAtRest));
    CHECK(s.nextSession == r.last + 9);
}

TEST_CASE("day 6 of a usual 14, clammy in the heat: watch until tomorrow")
{
    Regular r(6, 13);
    r.dryUntil(5);
    r.diary.checkIn(kHands, r.last + 6, Level::Clammy, {Circumstance::Heat});
    const auto s = r.on(6);
    CHECK(s.stage == Stage::KeepingDry);
    CHECK(s.advice == Advice::Watch);
    CHECK(s.reasons.front().kind == ReasonKind::ClammyStirred);
    r.diary.checkIn(kHands, r.last + 7, Level::Dry);
    CHECK(r.on(7).stage == Stage::KeepingDry);
    CHECK(r.on(7).advice == Advice::None);
    CHECK(r.on(7).forecast.today.dry > 0.9);
}

TEST_CASE("two hot clammy days in a row call for a top-up")
{
    Regular r(6, 13);
    r.dryUntil(8);
    for (int d : {9, 10})
        r.diary.checkIn(kHands, r.last + d, Level::Clammy, {Circumstance::Heat});
    const auto s = r.on(10);
    CHECK(s.advice == Advice::FirstDewTopUp);
    CHECK(s.reasons.front().kind == ReasonKind::ClammyTwice);
}

TEST_CASE("wet at rest once, early in the spell: top up; wet again: restart the course")
{
    Regular r(6, 13);
    r.dryUntil(5);
    r.diary.checkIn(kHands, r.last + 6, Level::Wet);
    const auto once = r.on(6);
    CHECK(once.stage == Stage::FirstDew);
    CHECK(once.advice == Advice::FirstDewTopUp);
    CHECK(once.reasons.front().kind == ReasonKind::WetOnce);
    r.diary.checkIn(kHands, r.last + 7, Level::Wet);
    const auto twice = r.on(7);
    CHECK(twice.stage == Stage::SweatingAgain);
    CHECK(twice.advice == Advice::RestartCourse);
    CHECK(twice.reasons.front().kind == ReasonKind::WetAtRest);
}

TEST_CASE("wet at rest once, when sweating is likely: restart the course")
{
    Regular r(6, 13);
    r.dryUntil(8);
    r.diary.checkIn(kHands, r.last + 26, Level::Wet); // nothing was said for weeks
    const auto s = r.on(26);
    CHECK(s.forecast.today.sweating > 0.5);
    CHECK(s.advice == Advice::RestartCourse);
}

TEST_CASE("wet after sport is not a relapse: watch until tomorrow")
{
    Regular r(6, 13);
    r.dryUntil(5);
    r.diary.checkIn(kHands, r.last + 6, Level::Wet, {Circumstance::Exertion});
    CHECK(r.on(6).stage == Stage::KeepingDry);
    CHECK(r.on(6).advice == Advice::Watch);
}

TEST_CASE("ten days past due without a report: the top-up is due")
{
    Regular r(6, 13);
    const auto due = *r.on(0).forecast.due;
    const auto s = r.on(due - r.last + 10);
    CHECK(s.advice == Advice::TopUpDue);
    CHECK(gives(s, ReasonKind::DueByForecast));
    CHECK(gives(s, ReasonKind::NoCheckInFor));
    CHECK(*s.forecast.due <= due);
    CHECK(s.reasons.front().date == s.forecast.due);
    CHECK(s.forecast.today.dry < 0.2);
}

TEST_CASE("clammy on the day after a session on damp skin: the second of one or two sessions")
{
    Regular r(6, 13);
    r.diary.checkIn(kHands, r.last + 1, Level::Clammy);
    CHECK(r.on(1).advice == Advice::FirstDewTopUp);
    Regular hot(6, 13);
    hot.diary.checkIn(kHands, hot.last + 1, Level::Clammy, {Circumstance::Heat});
    CHECK(hot.on(1).advice == Advice::Watch);
}

TEST_CASE("clammy on the day after a session on dry skin: watch; clammy again: top up")
{
    Regular r(6, 13);
    r.dryUntil(9);
    r.last = r.last + 9;
    r.diary.session(Site::Hands, r.last);
    r.diary.checkIn(kHands, r.last + 1, Level::Clammy);
    CHECK(r.on(1).advice == Advice::Watch);
    r.diary.checkIn(kHands, r.last + 2, Level::Clammy);
    CHECK(r.on(2).advice == Advice::FirstDewTopUp);
}

TEST_CASE("hands clammy, feet dry: treat only the hands")
{
    Regular r(6, 13);
    r.diary.session(Site::Feet, r.last);
    r.dryUntil(13);
    r.diary.checkIn(kHands, r.last + 14, Level::Clammy).checkIn(DiarySite::Feet, r.last + 14, Level::Dry);
    const auto all = assess(r.diary.on(r.last + 14));
    REQUIRE(all.sites.size() == 2);
    CHECK(all.sites[0].advice == Advice::FirstDewTopUp);
    CHECK(all.sites[1].stage == Stage::KeepingDry);
    CHECK(all.first == std::size_t{0});
}

TEST_CASE("a person with spells of a week is due within the week, not after the usual ten days")
{
    const Regular r(10, 6);
    const int due = *r.on(0).forecast.due - r.last;
    CHECK(due >= 4);
    CHECK(due <= 6);
    CHECK(r.on(2).advice == Advice::None);
    CHECK(*r.on(0).nextSession <= r.last + due);
    CHECK(r.on(due).advice == Advice::TopUpDue);
}

TEST_CASE("a person with spells of a month is not called for two and a half weeks")
{
    Regular r(10, 29);
    const int due = *r.on(0).forecast.due - r.last;
    CHECK(due >= 18);
    CHECK(due <= 26);
    r.dryUntil(17);
    CHECK(r.on(17).advice == Advice::None);
    CHECK(r.on(17).nextSession == r.last + due);
}

TEST_CASE("the forecast follows short summer and long winter spells, and two clammy days call at once")
{
    Regular r(12, 20);
    const int winter = *r.on(0).forecast.due - r.last;
    CHECK(winter >= 13);
    for (int i = 0; i < 6; ++i) {
        Regular heard = r;
        heard.dryUntil(7);
        heard.diary.checkIn(kHands, heard.last + 8, Level::Clammy);
        CHECK((heard.on(8).advice == Advice::FirstDewTopUp || heard.on(8).advice == Advice::Watch));
        heard.diary.checkIn(kHands, heard.last + 9, Level::Clammy);
        CHECK(heard.on(9).advice == Advice::FirstDewTopUp);
        r.spell(7);
    }
    const int july = *r.on(0).forecast.due - r.last;
    CHECK(july < winter);
    for (int i = 0; i < 6; ++i)
        r.spell(7);
    const int september = *r.on(0).forecast.due - r.last;
    CHECK(september <= 10);
    for (int i = 0; i < 6; ++i)
        r.spell(20);
    CHECK(*r.on(0).forecast.due - r.last > september + 2);
}

TEST_CASE("a diary filled in later in any order gives the same situation as one kept daily")
{
    Regular r(6, 13);
    r.dryUntil(8);
    auto backwards = r.diary.facts();
    std::reverse(backwards.begin(), backwards.end());
    const auto kept = r.on(9);
    const auto filled = assess(firstdew::diary::readDiary(backwards, "p1", r.last + 9)).sites.at(0);
    CHECK(filled.advice == kept.advice);
    CHECK(filled.forecast.due == kept.forecast.due);
    CHECK(filled.forecast.spells == kept.forecast.spells);
    CHECK(filled.forecast.today.dry == kept.forecast.today.dry);
}

TEST_CASE("a corrected check-in gives the same situation as a right one")
{
    Regular r(6, 13);
    r.dryUntil(5);
    const auto before = r.on(6);
    r.diary.checkIn(kHands, r.last + 6, Level::Wet);
    CHECK(r.on(6).stage == Stage::FirstDew);
    auto facts = r.diary.facts();
    Fact right = facts.back();
    right.id = "right";
    right.corrects = facts.back().id;
    right.payload = CheckIn{kHands, Level::Dry, {}};
    facts.push_back(right);
    const auto after = assess(firstdew::diary::readDiary(facts, "p1", r.last + 6)).sites.at(0);
    CHECK(after.stage == Stage::KeepingDry);
    CHECK(after.advice == Advice::None);
    CHECK(*after.forecast.due >= *before.forecast.due);
}

TEST_CASE("during the first course the diary calls for no top-up")
{
    auto d = person();
    Course c;
    c.site = Site::Hands;
    c.start = kStart;
    d.add(c, kStart).session(Site::Hands, kStart);
    d.checkIn(kHands, kStart + 1, Level::Wet).checkIn(kHands, kStart + 2, Level::Clammy);
    const auto s = assess(d.on(kStart + 2)).sites.at(0);
    CHECK(s.stage == Stage::FirstCourse);
    CHECK((s.advice == Advice::None || s.advice == Advice::DoCourseSession));
}

TEST_CASE("one clammy report early in a long rhythm does not call for a session")
{
    Regular r(8, 29);
    r.dryUntil(3);
    r.diary.checkIn(kHands, r.last + 4, Level::Clammy);
    const auto s = r.on(4);
    CHECK(r.last + 4 < r.last + static_cast<int>(s.forecast.soonest));
    CHECK(s.advice == Advice::Watch);
}
