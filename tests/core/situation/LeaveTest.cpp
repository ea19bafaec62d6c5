#include "situation/Leave.h"
#include "situation/Reminders.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

using namespace firstdew::situation;
using build::day;
using build::Facts;

namespace {

const LocalDate kStart = day("2026-01-05");

Facts treated() { return Facts().adult().screened(kStart).session(Site::Hands, kStart); }

SiteSituation on(const Facts& d, LocalDate today) { return assess(d.on(today)).sites.at(0); }

const Reason* reasonOf(const SiteSituation& s, ReasonKind kind)
{
    const auto found = std::ranges::find(s.reasons, kind, &Reason::kind);
    return found == s.reasons.end() ? nullptr : &*found;
}

/// Days from kStart on which a reminder of that kind comes, as planned on the first day.
std::vector<int> plannedOn(const Facts& d, ReminderKind kind, LocalDate from = kStart)
{
    std::vector<int> out;
    for (const Reminder& r : upcomingReminders(d.on(from), {6 * 60}))
        if (r.kind == kind)
            out.push_back(r.at.date - kStart);
    return out;
}

} // namespace

TEST_CASE("a top-up that would fall due on days away is offered before leaving")
{
    const LocalDate due = on(treated(), kStart).nextSession.value();
    const auto d = treated().add(Away{due - 1, due + 5}, kStart);
    const LocalDate offered = due - 3; // two days before the first day away: our own choice
    CHECK(on(d, kStart).nextSession == offered);
    CHECK(on(d, offered - 1).advice == Advice::None);
    for (const LocalDate today : {offered, offered + 1}) {
        const auto s = on(d, today);
        CHECK(s.advice == Advice::TopUpDue);
        CHECK(s.nextSession == today);
        REQUIRE(s.reasons.front().kind == ReasonKind::BeforeLeaving);
        CHECK(s.reasons.front().date == due - 1);
        CHECK(s.reasons.front().days == 7);
    }
    // Treated before leaving, nothing is left to be offered.
    CHECK(on(Facts(d).session(Site::Hands, offered), offered + 1).advice == Advice::None);
    // An answer is heeded as ever.
    CHECK(on(Facts(d).add(CallAnswered{DiarySite::Hands, CallAnswer::NotThisTime, ""}, offered), offered + 1).advice ==
          Advice::Watch);
}

TEST_CASE("no call for a top-up is made on a day away, and it comes on the first day back")
{
    const LocalDate due = on(treated(), kStart).nextSession.value();
    const auto d = treated().add(Away{due - 1, due + 2}, kStart).add(Away{due + 3, due + 5}, kStart);
    for (LocalDate today = due - 1; today <= due + 5; today = today + 1) {
        const auto s = on(d, today);
        CHECK(s.advice != Advice::TopUpDue);
        CHECK(s.nextSession == due + 6);
        CHECK(s.heldByAway == (today >= due));
        CHECK((reasonOf(s, ReasonKind::AwayNow) != nullptr) == (today >= due));
    }
    CHECK(on(d, due + 6).advice == Advice::TopUpDue);
    // The reminders, all planned on the first day: before leaving, and from the first day back.
    const int first = due - kStart - 3;
    const auto days = plannedOn(d, ReminderKind::TopUpDue);
    REQUIRE(days.size() >= 3);
    CHECK(std::vector(days.begin(), days.begin() + 3) == std::vector{first, first + 1, first + 9});
    const auto held = plannedOn(d, ReminderKind::TopUpDue, due + 1);
    REQUIRE_FALSE(held.empty());
    CHECK(held.front() == first + 9);
}

TEST_CASE("first dew is told on a day away, without a call, and calls on the first day back")
{
    const LocalDate due = on(treated(), kStart).nextSession.value();
    auto d = treated().add(Away{due - 1, due + 5}, kStart);
    d.checkIn(DiarySite::Hands, due, Level::Clammy).checkIn(DiarySite::Hands, due + 1, Level::Clammy);
    const auto s = on(d, due + 1);
    CHECK(s.stage == Stage::FirstDew);
    CHECK(s.advice == Advice::Watch);
    CHECK(s.reasons.front().kind == ReasonKind::ClammyTwice);
    CHECK(reasonOf(s, ReasonKind::AwayNow) != nullptr);
    CHECK(reasonOf(s, ReasonKind::AwayNow)->date == due + 5);
    const auto days = plannedOn(d, ReminderKind::FirstDew, due + 1);
    REQUIRE_FALSE(days.empty());
    CHECK(days.front() == due - kStart + 6);
    CHECK(on(d, due + 6).advice == Advice::FirstDewTopUp);
}

TEST_CASE("right after a session nothing is offered before leaving")
{
    // Not within three days of the last session: our own choice.
    auto d = treated().add(Away{kStart + 3, kStart + 24}, kStart);
    for (int i = 0; i < 3; ++i)
        CHECK(on(d, kStart + i).advice == Advice::None);
    CHECK(on(d, kStart).nextSession == kStart + 25);
    d = treated().add(Away{kStart + 4, kStart + 24}, kStart);
    CHECK(on(d, kStart + 2).advice == Advice::None);
    CHECK(on(d, kStart + 3).advice == Advice::TopUpDue);
}

TEST_CASE("days away elsewhere in the calendar change nothing")
{
    const LocalDate due = on(treated(), kStart).nextSession.value();
    const auto d = treated().add(Away{due + 1, due + 5}, kStart).add(Away{kStart - 9, kStart - 2}, kStart);
    CHECK(on(d, kStart).nextSession == due);
    CHECK_FALSE(leaveAround(d.on(kStart), kStart, due));
    CHECK(aroundDaysAway(d.on(kStart), kStart, due) == due);
    CHECK(on(d, due).reasons.front().kind == ReasonKind::DueByForecast);
}
