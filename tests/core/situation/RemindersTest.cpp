#include "situation/Reminders.h"

#include "core/Build.h"

#include <catch2/catch.hpp>
#include <set>

using namespace firstdew::situation;
using build::day;
using build::Diary;

namespace
{

const LocalDate kStart = day("2026-01-05");

LocalTime at(LocalDate date, int hour, int minute = 0)
{
    return {date, {hour * 60 + minute}};
}

Diary person()
{
    return Diary().adult().screened(day("2026-01-01")).add(Hdss{DiarySite::Hands, 2}, kStart, 0);
}

bool holds(const std::vector<Reminder>& list, ReminderKind kind)
{
    return std::any_of(list.begin(), list.end(), [&](const Reminder& r) { return r.kind == kind; });
}

} // namespace

TEST_CASE("the check-in is asked at the person's hour and no more once it is given")
{
    auto d = person().session(Site::Hands, kStart);
    CHECK_FALSE(holds(dueReminders(d.record(), at(kStart + 2, 19, 59)), ReminderKind::CheckIn));
    CHECK(holds(dueReminders(d.record(), at(kStart + 2, 20)), ReminderKind::CheckIn));
    d.checkIn(DiarySite::Hands, kStart + 2, Level::Dry);
    CHECK_FALSE(holds(dueReminders(d.record(), at(kStart + 2, 21)), ReminderKind::CheckIn));
    CHECK(holds(dueReminders(d.record(), at(kStart + 3, 20)), ReminderKind::CheckIn));
}

TEST_CASE("quiet hours are kept, and what falls into them moves out of them")
{
    auto d = person().session(Site::Hands, kStart);
    ReminderSettings s;
    s.checkIn = {23 * 60};
    d.add(s, kStart);
    CHECK(dueReminders(d.record(), at(kStart + 2, 22)).empty());
    CHECK(dueReminders(d.record(), at(kStart + 2, 6, 59)).empty());
    CHECK(holds(dueReminders(d.record(), at(kStart + 2, 21, 59)), ReminderKind::CheckIn));
    for (const int hour : {0, 5, 6, 22, 23}) {
        s.checkIn = {hour * 60};
        d.add(s, kStart + 1);
        const auto next = upcomingReminders(d.record(), at(kStart + 1, 12));
        CHECK(holds(next, ReminderKind::CheckIn));
        for (const Reminder& r : next) {
            CHECK(r.at.at.minute >= 7 * 60);
            CHECK(r.at.at.minute < 22 * 60);
        }
    }
}

TEST_CASE("quiet hours in the middle of the day begin and end on their minutes")
{
    auto d = person().session(Site::Hands, kStart);
    for (const auto& [asked, shown] :
         {std::pair{12 * 60, 15 * 60}, {12 * 60 - 1, 12 * 60 - 1}, {15 * 60 - 1, 15 * 60}, {15 * 60, 15 * 60}}) {
        ReminderSettings s;
        s.checkIn = {asked};
        s.quietFrom = {12 * 60};
        s.quietUntil = {15 * 60};
        d.add(s, kStart + 1);
        const auto next = upcomingReminders(d.record(), at(kStart + 1, 8));
        const auto checkIn = std::ranges::find(next, ReminderKind::CheckIn, &Reminder::kind);
        REQUIRE(checkIn != next.end());
        CHECK(checkIn->at.at.minute == shown);
    }
    CHECK(dueReminders(d.record(), at(kStart + 2, 12)).empty());
    CHECK(dueReminders(d.record(), at(kStart + 2, 14, 59)).empty());
    CHECK_FALSE(dueReminders(d.record(), at(kStart + 2, 15)).empty());
}

TEST_CASE("a course's sessions are named on their days at the person's hour, and not once they are done")
{
    auto d = person();
    Course c;
    c.site = Site::Hands;
    c.start = kStart;
    d.add(c, kStart, 0); // days 1, 2, 4, 7, 10, 15 and 22
    std::vector<int> days;
    for (const Reminder& r : upcomingReminders(d.record(), at(kStart, 6)))
        if (r.kind == ReminderKind::CourseSession) {
            days.push_back(r.at.date - kStart + 1);
            CHECK(r.at.at.minute == 18 * 60);
        }
    CHECK(days == std::vector{1, 2, 4, 7, 10, 15, 22});
    CHECK_FALSE(holds(dueReminders(d.record(), at(kStart, 17, 59)), ReminderKind::CourseSession));
    CHECK(holds(dueReminders(d.record(), at(kStart, 18)), ReminderKind::CourseSession));
    d.session(Site::Hands, kStart);
    CHECK_FALSE(holds(dueReminders(d.record(), at(kStart, 21)), ReminderKind::CourseSession));
    CHECK(holds(dueReminders(d.record(), at(kStart + 1, 18)), ReminderKind::CourseSession));
    CHECK_FALSE(holds(dueReminders(d.record(), at(kStart + 1, 18)), ReminderKind::TopUpDue));
}

TEST_CASE("with a session to come, a screening gone stale is named as well")
{
    auto d = person();
    Course c;
    c.site = Site::Hands;
    c.start = kStart;
    d.add(c, kStart, 0);
    CHECK_FALSE(holds(dueReminders(d.record(), at(kStart, 20)), ReminderKind::Screening));
    CHECK(holds(dueReminders(d.record(), at(kStart + 40, 20)), ReminderKind::Screening));
}

TEST_CASE("the skin is looked at the day after a session, and not once it was")
{
    auto d = person().session(Site::Hands, kStart);
    CHECK_FALSE(holds(dueReminders(d.record(), at(kStart, 21)), ReminderKind::SkinCheck));
    CHECK(holds(dueReminders(d.record(), at(kStart + 1, 12)), ReminderKind::SkinCheck));
    d.add(SideEffect{DiarySite::Hands, {SkinFinding::Fine}, ""}, kStart + 1);
    CHECK_FALSE(holds(dueReminders(d.record(), at(kStart + 1, 12)), ReminderKind::SkinCheck));
}

TEST_CASE("a due top-up is named on its day, ever more rarely after, and withdrawn by a session")
{
    auto d = person().session(Site::Hands, kStart);
    const LocalDate due = *assess(d.record(), kStart).sites.at(0).nextSession;
    std::vector<int> named;
    for (int i = 0; i < 25; ++i)
        if (holds(dueReminders(d.record(), at(due + i, 21)), ReminderKind::TopUpDue))
            named.push_back(i);
    CHECK(named == std::vector{0, 1, 3, 7, 14, 21});
    d.session(Site::Hands, due);
    CHECK_FALSE(holds(dueReminders(d.record(), at(due, 21)), ReminderKind::TopUpDue));
}

TEST_CASE("clamminess noticed is a reminder of its own, in the morning")
{
    auto d = person().session(Site::Hands, kStart);
    for (int i = 8; i <= 9; ++i)
        d.checkIn(DiarySite::Hands, kStart + i, Level::Clammy);
    CHECK(holds(dueReminders(d.record(), at(kStart + 10, 7)), ReminderKind::FirstDew));
    CHECK_FALSE(holds(dueReminders(d.record(), at(kStart + 10, 21)), ReminderKind::TopUpDue));
}

TEST_CASE("nothing is said twice of one cause on one day, and what was dismissed stays away")
{
    auto d = person().session(Site::Hands, kStart).session(Site::Feet, kStart);
    std::set<std::string> keys;
    for (const Reminder& r : upcomingReminders(d.record(), at(kStart, 21)))
        CHECK(keys.insert(r.key).second);
    const auto due = dueReminders(d.record(), at(kStart + 1, 21));
    REQUIRE_FALSE(due.empty());
    d.add(ReminderHandled{due.front().key, ReminderAction::Dismissed, {}}, kStart + 1, 21 * 60);
    const auto left = dueReminders(d.record(), at(kStart + 1, 21));
    CHECK(left.size() + 1 == due.size());
}

TEST_CASE("a snoozed reminder comes back at its hour")
{
    auto d = person().session(Site::Hands, kStart);
    const auto due = dueReminders(d.record(), at(kStart + 1, 12));
    REQUIRE(holds(due, ReminderKind::SkinCheck));
    d.add(ReminderHandled{due.front().key, ReminderAction::Snoozed, at(kStart + 1, 15)}, kStart + 1, 12 * 60);
    CHECK_FALSE(holds(dueReminders(d.record(), at(kStart + 1, 14, 59)), ReminderKind::SkinCheck));
    CHECK(holds(dueReminders(d.record(), at(kStart + 1, 15)), ReminderKind::SkinCheck));
}

TEST_CASE("during a session, and with reminders off, nothing is said")
{
    auto d = person().session(Site::Hands, kStart);
    CHECK_FALSE(dueReminders(d.record(), at(kStart + 1, 20)).empty());
    auto running = d;
    BathPrepared prepared;
    prepared.bath = "b1";
    BathEvent event;
    event.bath = "b1";
    running.add(prepared, kStart + 1).add(event, kStart + 1);
    CHECK(dueReminders(running.record(), at(kStart + 1, 20)).empty());
    ReminderSettings off;
    off.on = false;
    CHECK(dueReminders(d.add(off, kStart).record(), at(kStart + 1, 20)).empty());
}

TEST_CASE("the check-in of a day is one reminder, however many sites are still open")
{
    auto d = person().session(Site::Hands, kStart).session(Site::Feet, kStart);
    const auto key = [&] {
        for (const Reminder& r : dueReminders(d.record(), at(kStart + 2, 21)))
            if (r.kind == ReminderKind::CheckIn)
                return r.key;
        return std::string("none");
    };
    CHECK(key() == "check-in:2026-01-07");
    d.checkIn(DiarySite::Hands, kStart + 2, Level::Dry);
    CHECK(key() == "check-in:2026-01-07");
    d.checkIn(DiarySite::Feet, kStart + 2, Level::Dry);
    CHECK(key() == "none");
}

TEST_CASE("a reminder stands from the beginning of its day until it is done, in quiet hours too")
{
    auto d = person().session(Site::Hands, kStart);
    const auto stands = [&](int hour) {
        return holds(todaysReminders(d.record(), at(kStart + 2, hour)).standing, ReminderKind::CheckIn);
    };
    CHECK(stands(0));
    CHECK(stands(20));
    CHECK(stands(23));
    CHECK_FALSE(holds(todaysReminders(d.record(), at(kStart + 2, 23)).due, ReminderKind::CheckIn));
    d.checkIn(DiarySite::Hands, kStart + 2, Level::Dry);
    CHECK_FALSE(stands(23));
}
