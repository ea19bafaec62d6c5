#include "situation/Reminders.h"

#include "core/Build.h"

#include <catch2/catch.hpp>
#include <map>
#include <set>

using namespace firstdew::situation;
using build::day;
using build::Facts;

namespace {

const LocalDate kStart = day("2026-01-05");

LocalTime at(LocalDate date, int hour, int minute = 0) { return {date, {hour * 60 + minute}}; }

Facts person() { return Facts().adult().screened(day("2026-01-01")).add(Hdss{DiarySite::Hands, 2}, kStart, 0); }

std::vector<Reminder> dueAt(const Facts& d, LocalTime now) { return dueReminders(d.on(now.date), now.at); }
std::vector<Reminder> upcomingAt(const Facts& d, LocalTime now) { return upcomingReminders(d.on(now.date), now.at); }
TodaysReminders todaysAt(const Facts& d, LocalTime now) { return todaysReminders(d.on(now.date), now.at); }

bool holds(const std::vector<Reminder>& list, ReminderKind kind)
{
    return std::any_of(list.begin(), list.end(), [&](const Reminder& r) { return r.kind == kind; });
}

int count(const std::vector<Reminder>& list, ReminderKind kind)
{
    return static_cast<int>(std::ranges::count(list, kind, &Reminder::kind));
}

/// Days after `from` on which that is due at nine in the evening.
std::vector<int> namedOn(const Facts& d, LocalDate from, int days, ReminderKind kind)
{
    std::vector<int> out;
    for (int i = 0; i < days; ++i)
        if (holds(dueAt(d, at(from + i, 21)), kind))
            out.push_back(i);
    return out;
}

Course course(LocalDate start)
{
    Course c;
    c.site = Site::Hands;
    c.start = start;
    return c;
}

} // namespace

TEST_CASE("the check-in reminder comes at the person's hour and stops once the check-in is given")
{
    auto d = person().session(Site::Hands, kStart);
    CHECK_FALSE(holds(dueAt(d, at(kStart + 2, 19, 59)), ReminderKind::CheckIn));
    CHECK(holds(dueAt(d, at(kStart + 2, 20)), ReminderKind::CheckIn));
    d.checkIn(DiarySite::Hands, kStart + 2, Level::Dry);
    CHECK_FALSE(holds(dueAt(d, at(kStart + 2, 21)), ReminderKind::CheckIn));
    CHECK(holds(dueAt(d, at(kStart + 3, 20)), ReminderKind::CheckIn));
}

TEST_CASE("no reminder comes in quiet hours, and those that would are moved")
{
    auto d = person().session(Site::Hands, kStart);
    ReminderSettings s;
    s.checkIn = {23 * 60};
    d.add(s, kStart);
    CHECK(dueAt(d, at(kStart + 2, 22)).empty());
    CHECK(dueAt(d, at(kStart + 2, 6, 59)).empty());
    CHECK(holds(dueAt(d, at(kStart + 2, 21, 59)), ReminderKind::CheckIn));
    for (const int hour : {0, 5, 6, 22, 23}) {
        s.checkIn = {hour * 60};
        d.add(s, kStart + 1);
        const auto next = upcomingAt(d, at(kStart + 1, 12));
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
        const auto next = upcomingAt(d, at(kStart + 1, 8));
        const auto checkIn = std::ranges::find(next, ReminderKind::CheckIn, &Reminder::kind);
        REQUIRE(checkIn != next.end());
        CHECK(checkIn->at.at.minute == shown);
    }
    CHECK(dueAt(d, at(kStart + 2, 12)).empty());
    CHECK(dueAt(d, at(kStart + 2, 14, 59)).empty());
    CHECK_FALSE(dueAt(d, at(kStart + 2, 15)).empty());
}

TEST_CASE("while nobody opens the app, a missed session of a course has its reminder on the day it moves to")
{
    auto d = person();
    Course c = course(kStart);
    c.free = {Weekday::Mon, Weekday::Wed, Weekday::Fri};
    d.add(c, kStart, 0);
    d.session(Site::Hands, kStart);
    SECTION("as it was said") {}
    SECTION("with days away") { d.add(Away{kStart + 4, kStart + 11}, kStart + 1); }
    SECTION("with one session moved by hand") { d.add(CourseMove{Site::Hands, 2, kStart + 7}, kStart + 1); }
    const LocalDate closed = kStart + 1;
    std::vector<LocalDate> planned;
    for (const Reminder& r : upcomingAt(d, at(closed, 21)))
        if (r.kind == ReminderKind::CourseSession)
            planned.push_back(r.at.date);
    std::vector<LocalDate> asked;
    for (int i = 1; i < 28; ++i)
        if (holds(dueAt(d, at(closed + i, 21)), ReminderKind::CourseSession))
            asked.push_back(closed + i);
    CHECK(planned == asked);
    CHECK(planned.size() > 5); // more than the sessions that one plan would still name before the first is missed
}

TEST_CASE("sessions of a course have a reminder on their day until they are done")
{
    auto d = person();
    d.add(course(kStart), kStart, 0); // days 1, 2, 4, 7, 10, 15 and 22
    std::vector<int> days;
    for (const int day : {1, 2, 4, 7, 10, 15, 22}) {
        for (const Reminder& r : upcomingAt(d, day == 1 ? at(kStart, 6) : at(kStart + day - 2, 22)))
            if (r.kind == ReminderKind::CourseSession) {
                days.push_back(r.at.date - kStart + 1);
                CHECK(r.at.at.minute == 18 * 60);
                break;
            }
        if (day < 22)
            d.session(Site::Hands, kStart + day - 1);
    }
    CHECK(days == std::vector{1, 2, 4, 7, 10, 15, 22});
    d = person();
    d.add(course(kStart), kStart, 0);
    CHECK_FALSE(holds(dueAt(d, at(kStart, 17, 59)), ReminderKind::CourseSession));
    CHECK(holds(dueAt(d, at(kStart, 18)), ReminderKind::CourseSession));
    d.session(Site::Hands, kStart);
    CHECK_FALSE(holds(dueAt(d, at(kStart, 21)), ReminderKind::CourseSession));
    CHECK(holds(dueAt(d, at(kStart + 1, 18)), ReminderKind::CourseSession));
    CHECK_FALSE(holds(dueAt(d, at(kStart + 1, 18)), ReminderKind::TopUpDue));
}

TEST_CASE("a stale screening has a reminder on the day of a session")
{
    auto d = person();
    Course c;
    c.site = Site::Hands;
    c.start = kStart;
    d.add(c, kStart, 0);
    CHECK_FALSE(holds(dueAt(d, at(kStart, 20)), ReminderKind::Screening));
    CHECK(holds(dueAt(d, at(kStart + 40, 20)), ReminderKind::Screening));
}

TEST_CASE("the skin check has a reminder on the day after a session until it is done")
{
    auto d = person().session(Site::Hands, kStart);
    CHECK_FALSE(holds(dueAt(d, at(kStart, 21)), ReminderKind::SkinCheck));
    CHECK(holds(dueAt(d, at(kStart + 1, 12)), ReminderKind::SkinCheck));
    d.add(SideEffect{DiarySite::Hands, {SkinFinding::Fine}, ""}, kStart + 1);
    CHECK_FALSE(holds(dueAt(d, at(kStart + 1, 12)), ReminderKind::SkinCheck));
}

TEST_CASE("a due top-up has a reminder on its day, then ever more rarely, until a session")
{
    auto d = person().session(Site::Hands, kStart);
    const LocalDate due = *assess(d.on(kStart)).sites.at(0).nextSession;
    std::vector<int> named;
    for (int i = 0; i < 25; ++i)
        if (holds(dueAt(d, at(due + i, 21)), ReminderKind::TopUpDue))
            named.push_back(i);
    CHECK(named == std::vector{0, 1, 3, 7, 14, 21});
    d.session(Site::Hands, due);
    CHECK_FALSE(holds(dueAt(d, at(due, 21)), ReminderKind::TopUpDue));
}

TEST_CASE("first dew has a reminder of its own in the morning")
{
    auto d = person().session(Site::Hands, kStart);
    for (int i = 8; i <= 9; ++i)
        d.checkIn(DiarySite::Hands, kStart + i, Level::Clammy);
    CHECK(holds(dueAt(d, at(kStart + 10, 7)), ReminderKind::FirstDew));
    CHECK_FALSE(holds(dueAt(d, at(kStart + 10, 21)), ReminderKind::TopUpDue));
}

TEST_CASE("one cause gives one reminder a day, and a dismissed reminder does not return")
{
    auto d = person().session(Site::Hands, kStart).session(Site::Feet, kStart);
    std::set<std::string> keys;
    for (const Reminder& r : upcomingAt(d, at(kStart, 21)))
        CHECK(keys.insert(r.key).second);
    const auto due = dueAt(d, at(kStart + 1, 21));
    REQUIRE_FALSE(due.empty());
    d.add(ReminderHandled{due.front().key, ReminderAction::Dismissed, {}}, kStart + 1, 21 * 60);
    const auto left = dueAt(d, at(kStart + 1, 21));
    CHECK(left.size() + 1 == due.size());
}

TEST_CASE("a snoozed reminder comes back at its hour")
{
    auto d = person().session(Site::Hands, kStart);
    const auto due = dueAt(d, at(kStart + 1, 12));
    REQUIRE(holds(due, ReminderKind::SkinCheck));
    d.add(ReminderHandled{due.front().key, ReminderAction::Snoozed, at(kStart + 1, 15)}, kStart + 1, 12 * 60);
    CHECK_FALSE(holds(dueAt(d, at(kStart + 1, 14, 59)), ReminderKind::SkinCheck));
    CHECK(holds(dueAt(d, at(kStart + 1, 15)), ReminderKind::SkinCheck));
}

TEST_CASE("there are no reminders during a session or with reminders off")
{
    auto d = person().session(Site::Hands, kStart);
    CHECK_FALSE(dueAt(d, at(kStart + 1, 20)).empty());
    auto running = d;
    BathPrepared prepared;
    prepared.bath = "b1";
    BathEvent event;
    event.bath = "b1";
    running.add(prepared, kStart + 1, 19 * 60).add(event, kStart + 1, 19 * 60);
    CHECK(dueAt(running, at(kStart + 1, 20)).empty());
    ReminderSettings off;
    off.on = false;
    CHECK(dueAt(d.add(off, kStart), at(kStart + 1, 20)).empty());
}

TEST_CASE("each open site has a check-in reminder of its own")
{
    auto d = person().session(Site::Hands, kStart).session(Site::Feet, kStart);
    const auto keys = [&] {
        std::vector<std::string> out;
        for (const Reminder& r : dueAt(d, at(kStart + 2, 21)))
            if (r.kind == ReminderKind::CheckIn)
                out.push_back(r.key);
        return out;
    };
    CHECK(keys() == std::vector<std::string>{"check-in:hands:2026-01-07", "check-in:feet:2026-01-07"});
    d.checkIn(DiarySite::Hands, kStart + 2, Level::Dripping);
    CHECK(keys() == std::vector<std::string>{"check-in:feet:2026-01-07"});
    d.checkIn(DiarySite::Feet, kStart + 2, Level::Dry);
    CHECK(keys().empty());
}

TEST_CASE("where there is no room for every reminder, the latest check-ins are left out first")
{
    auto d = person();
    for (const Site site : {Site::Hands, Site::Feet, Site::Armpits})
        d.session(site, kStart);
    const auto next = upcomingAt(d, at(kStart, 6));
    CHECK(next.size() == 60);
    CHECK(std::ranges::is_sorted(next, {}, &Reminder::at));
    std::map<ReminderKind, LocalDate> last;
    for (const Reminder& r : next)
        last[r.kind] = r.at.date;
    CHECK(last[ReminderKind::CheckIn] < kStart + 20);
    CHECK(last[ReminderKind::TopUpDue] > kStart + 20);
}

TEST_CASE("a reminder is standing from the start of its day until it is done, also in quiet hours")
{
    auto d = person().session(Site::Hands, kStart);
    const auto stands = [&](int hour) {
        return holds(todaysAt(d, at(kStart + 2, hour)).standing, ReminderKind::CheckIn);
    };
    CHECK(stands(0));
    CHECK(stands(20));
    CHECK(stands(23));
    CHECK_FALSE(holds(todaysAt(d, at(kStart + 2, 23)).due, ReminderKind::CheckIn));
    d.checkIn(DiarySite::Hands, kStart + 2, Level::Dry);
    CHECK_FALSE(stands(23));
}

TEST_CASE("skin that had enough for today has no reminder of a session before tomorrow, and one tomorrow")
{
    Session s;
    s.completed = false;
    const auto enough = [&](Facts d, LocalDate on) { return d.add(s, on, 600).add(s, on, 660).add(s, on, 720); };
    const auto untouched = person().session(Site::Hands, kStart);
    const LocalDate due = *assess(untouched.on(kStart + 40)).sites.at(0).nextSession;
    for (const auto& [kind, d] : {std::pair{ReminderKind::TopUpDue, person().session(Site::Hands, kStart)},
                                  {ReminderKind::FirstDew, person()
                                                               .session(Site::Hands, kStart)
                                                               .checkIn(DiarySite::Hands, due - 1, Level::Clammy)
                                                               .checkIn(DiarySite::Hands, due, Level::Clammy)}}) {
        REQUIRE(holds(dueAt(d, at(due, 21)), kind));
        const auto spared = enough(d, due);
        CHECK_FALSE(holds(dueAt(spared, at(due, 21)), kind));
        const auto ahead = upcomingAt(spared, at(due, 21));
        CHECK(std::ranges::any_of(
            ahead, [&, kind = kind](const Reminder& r) { return r.kind == kind && r.at.date == due + 1; }));
    }
}

TEST_CASE("a paused site has no reminders, and other sites keep theirs")
{
    auto d = person().session(Site::Hands, kStart).add(Pause{Site::Hands, true}, kStart + 1);
    CHECK(upcomingAt(d, at(kStart + 1, 6)).empty());
    d.session(Site::Feet, kStart);
    const auto next = upcomingAt(d, at(kStart + 1, 6));
    REQUIRE_FALSE(next.empty());
    for (const Reminder& r : next)
        CHECK(r.site == DiarySite::Feet);
}

TEST_CASE("there are no quiet hours if they end when they begin")
{
    auto d = person().session(Site::Hands, kStart);
    ReminderSettings s;
    s.checkIn = {3 * 60};
    s.quietFrom = s.quietUntil = {22 * 60};
    d.add(s, kStart);
    CHECK(holds(dueAt(d, at(kStart + 2, 3)), ReminderKind::CheckIn));
    CHECK_FALSE(holds(dueAt(d, at(kStart + 2, 2, 59)), ReminderKind::CheckIn));
    CHECK(holds(dueAt(d, at(kStart + 2, 22)), ReminderKind::CheckIn));
}

TEST_CASE("a blocked session has no reminder")
{
    auto d = person().add(course(kStart), kStart, 0);
    CHECK(holds(dueAt(d, at(kStart, 21)), ReminderKind::CourseSession));
    d.screened(kStart, {ScreeningRow::Pregnancy});
    const auto next = upcomingAt(d, at(kStart, 6));
    CHECK_FALSE(holds(next, ReminderKind::CourseSession));
    CHECK(holds(next, ReminderKind::CheckIn));
}

TEST_CASE("a course with unreadable days has no session reminder")
{
    Course c = course(kStart);
    c.plan = CourseTemplate::Prescribed;
    c.days = {3, 2};
    const auto d = person().add(c, kStart, 0);
    const auto next = upcomingAt(d, at(kStart, 6));
    CHECK_FALSE(holds(next, ReminderKind::CourseSession));
    CHECK(holds(next, ReminderKind::CheckIn));
}

TEST_CASE("a call put off until tomorrow comes at the hour for sessions, and a declined call does not return")
{
    auto d = person().session(Site::Hands, kStart);
    const LocalDate due = *assess(d.on(kStart)).sites.at(0).nextSession;
    auto tomorrow = Facts(d).add(CallAnswered{DiarySite::Hands, CallAnswer::Tomorrow, ""}, due + 1);
    CHECK_FALSE(holds(dueAt(tomorrow, at(due + 1, 21)), ReminderKind::TopUpDue));
    // The second day after is none of those it would be named on.
    CHECK(holds(dueAt(tomorrow, at(due + 2, 18)), ReminderKind::TopUpDue));
    CHECK_FALSE(holds(dueAt(tomorrow, at(due + 2, 17, 59)), ReminderKind::TopUpDue));
    CHECK(holds(upcomingAt(tomorrow, at(due + 1, 21)), ReminderKind::TopUpDue));
    // Somebody else's feet are no answer for the hands.
    auto feet = Facts(d).add(CallAnswered{DiarySite::Feet, CallAnswer::Tomorrow, ""}, due + 1);
    CHECK_FALSE(holds(dueAt(feet, at(due + 2, 21)), ReminderKind::TopUpDue));
    auto never = Facts(d).add(CallAnswered{DiarySite::Hands, CallAnswer::NotThisTime, ""}, due);
    CHECK(namedOn(never, due, 25, ReminderKind::TopUpDue).empty());
}

TEST_CASE("reminders of first dew become rarer, come in the evening if chosen and wait if put off")
{
    auto d = person().session(Site::Hands, kStart);
    for (int i = 8; i <= 9; ++i)
        d.checkIn(DiarySite::Hands, kStart + i, Level::Clammy);
    const LocalDate called = kStart + 9;
    CHECK(namedOn(d, called, 25, ReminderKind::FirstDew) == std::vector{0, 1, 2, 3, 5, 7, 14, 21});
    auto evening = Facts(d).add(CallAnswered{DiarySite::Hands, CallAnswer::ThisEvening, ""}, called + 1);
    CHECK_FALSE(holds(dueAt(evening, at(called + 1, 17, 59)), ReminderKind::FirstDew));
    CHECK(holds(dueAt(evening, at(called + 1, 18)), ReminderKind::FirstDew));
    auto tomorrow = Facts(d).add(CallAnswered{DiarySite::Hands, CallAnswer::Tomorrow, ""}, called + 3);
    CHECK_FALSE(holds(dueAt(tomorrow, at(called + 3, 21)), ReminderKind::FirstDew));
    // Chosen for the fourth day, on which it would not be named.
    CHECK_FALSE(holds(dueAt(tomorrow, at(called + 4, 17, 59)), ReminderKind::FirstDew));
    CHECK(holds(dueAt(tomorrow, at(called + 4, 18)), ReminderKind::FirstDew));
}

TEST_CASE("a skin check of another site does not count")
{
    auto d = person().session(Site::Hands, kStart);
    d.add(SideEffect{DiarySite::Feet, {SkinFinding::Fine}, ""}, kStart + 1);
    d.add(SideEffect{DiarySite::Hands, {SkinFinding::Fine}, ""}, kStart);
    CHECK(holds(dueAt(d, at(kStart + 1, 12)), ReminderKind::SkinCheck));
}

TEST_CASE("the score is due a week after the last in a course, a month later when keeping dry, and weekly until given")
{
    const auto inCourse = person().add(course(kStart), kStart, 0);
    CHECK(namedOn(inCourse, kStart, 16, ReminderKind::HdssDue) == std::vector{7, 14});
    auto dry = person().session(Site::Hands, kStart);
    CHECK(namedOn(dry, kStart, 40, ReminderKind::HdssDue) == std::vector{30, 37});
    // Feet have none yet: asked at once. A score of tomorrow, by a clock that was ahead, is none yet either.
    dry.session(Site::Feet, kStart);
    CHECK(namedOn(dry, kStart, 3, ReminderKind::HdssDue) == std::vector{0, 1, 2});
    dry.add(Hdss{DiarySite::Feet, 2}, kStart + 1);
    CHECK(namedOn(dry, kStart, 3, ReminderKind::HdssDue) == std::vector{0});
    // A site that was chosen and has not begun is asked nothing.
    const auto chosen = Facts().adult().screened(kStart).add(SiteUse{Site::Hands, true}, kStart);
    CHECK(namedOn(chosen, kStart, 3, ReminderKind::HdssDue).empty());
}

TEST_CASE("a finished course has a review reminder from the day after its last session, weekly until reviewed")
{
    auto d = person().add(course(kStart), kStart, 0);
    for (const int n : {1, 2, 4, 7, 10, 15})
        d.session(Site::Hands, kStart + n - 1);
    CHECK(count(upcomingAt(d, at(kStart + 20, 6)), ReminderKind::PrescriberReview) == 0);
    d.session(Site::Hands, kStart + 21);
    CHECK(namedOn(d, kStart + 21, 16, ReminderKind::PrescriberReview) == std::vector{1, 8, 15});
    d.add(ReviewDone{Site::Hands, true}, kStart + 23);
    CHECK(namedOn(d, kStart + 23, 16, ReminderKind::PrescriberReview).empty());
}

TEST_CASE("the prescriber's review day has a reminder on that day only")
{
    auto d = person().session(Site::Hands, kStart);
    CareSheet sheet;
    d.add(sheet, kStart);
    CHECK(namedOn(d, kStart, 10, ReminderKind::PrescriberReview).empty());
    sheet.review = kStart + 4;
    d.add(sheet, kStart + 1);
    CHECK(namedOn(d, kStart, 10, ReminderKind::PrescriberReview) == std::vector{4});
    CHECK(count(upcomingAt(d, at(kStart, 6)), ReminderKind::PrescriberReview) == 1);
}

TEST_CASE("cells that last at most one more session have a reminder on session days")
{
    auto d = person().add(course(kStart), kStart, 0);
    Machine m;
    m.name = "invented";
    m.power = PowerSource::Cells;
    d.add(m, kStart, 0);
    CHECK(namedOn(d, kStart, 2, ReminderKind::Cells).empty()); // when they were changed is not known
    d.add(CellsChanged{"invented"}, kStart, 0);
    CHECK(namedOn(d, kStart, 1, ReminderKind::Cells).empty()); // three left
    d.session(Site::Hands, kStart);
    CHECK_FALSE(holds(dueAt(d, at(kStart + 1, 21)), ReminderKind::Cells)); // two
    d.session(Site::Hands, kStart + 1);
    CHECK_FALSE(holds(dueAt(d, at(kStart + 2, 21)), ReminderKind::Cells)); // no session that day
    CHECK(holds(dueAt(d, at(kStart + 3, 21)), ReminderKind::Cells));       // one left
    d.add(CellsChanged{"invented"}, kStart + 3, 0);
    CHECK_FALSE(holds(dueAt(d, at(kStart + 3, 21)), ReminderKind::Cells));
}

TEST_CASE("the back-up has a reminder on the first of each month if the person wants it")
{
    auto d = person().session(Site::Hands, kStart);
    CHECK(count(upcomingAt(d, at(day("2026-01-20"), 6)), ReminderKind::BackUp) == 0);
    ReminderSettings s;
    s.backupMonthly = true;
    d.add(s, kStart);
    const auto next = upcomingAt(d, at(day("2026-01-20"), 6));
    REQUIRE(count(next, ReminderKind::BackUp) == 1);
    const auto r = std::ranges::find(next, ReminderKind::BackUp, &Reminder::kind);
    CHECK(r->at == at(day("2026-02-01"), 20));
    CHECK(r->key == "back-up:2026-02-01");
}

TEST_CASE("a reminder snoozed into quiet hours waits for their end, and the others do not move")
{
    auto d = person().session(Site::Hands, kStart);
    const auto due = dueAt(d, at(kStart + 1, 21));
    REQUIRE(due.size() == 2);
    const std::string skin = due.at(0).kind == ReminderKind::SkinCheck ? due.at(0).key : due.at(1).key;
    d.add(ReminderHandled{skin, ReminderAction::Snoozed, {{kStart + 1, {23 * 60}}}}, kStart + 1, 21 * 60);
    const auto standing = todaysAt(d, at(kStart + 1, 21)).standing;
    for (const Reminder& r : standing)
        CHECK(r.at.at.minute == (r.kind == ReminderKind::SkinCheck ? 22 * 60 - 1 : 20 * 60));
    CHECK(holds(standing, ReminderKind::SkinCheck));
    // Snoozed without a time: as if nothing had been said.
    const auto kept =
        person().session(Site::Hands, kStart).add(ReminderHandled{skin, ReminderAction::Snoozed, {}}, kStart + 1);
    CHECK(dueAt(kept, at(kStart + 1, 21)).size() == 2);
}

TEST_CASE("the list of future reminders ends after sixty")
{
    auto d = person();
    for (const Site site : {Site::Hands, Site::Feet, Site::Armpits}) {
        Course c = course(kStart);
        c.site = site;
        c.plan = CourseTemplate::Prescribed;
        for (int i = 1; i <= 28; ++i)
            c.days.push_back(i);
        d.add(c, kStart, 0);
    }
    const auto next = upcomingAt(d, at(kStart, 6));
    REQUIRE(next.size() == 60);
    CHECK(std::ranges::is_sorted(next, {}, &Reminder::at));
    CHECK(next.front().at.date == kStart);
    CHECK(next.back().at.date < kStart + 20);
}

TEST_CASE("without any session there is no top-up reminder")
{
    const auto d = person().add(course(kStart), kStart, 0).add(ReviewDone{Site::Hands, true}, kStart + 1);
    const auto next = upcomingAt(d, at(kStart + 2, 6));
    CHECK(holds(next, ReminderKind::CheckIn));
    CHECK_FALSE(holds(next, ReminderKind::TopUpDue));
    CHECK_FALSE(holds(next, ReminderKind::SkinCheck));
}

TEST_CASE("wet at rest has the same reminder as first dew")
{
    auto d = person().session(Site::Hands, kStart).checkIn(DiarySite::Hands, kStart + 9, Level::Wet);
    CHECK(holds(dueAt(d, at(kStart + 10, 7)), ReminderKind::FirstDew));
    CHECK_FALSE(holds(dueAt(d, at(kStart + 10, 21)), ReminderKind::TopUpDue));
}

TEST_CASE("a session that was stopped early is followed by the look at the skin like a finished one")
{
    Session stopped;
    stopped.site = Site::Hands;
    stopped.completed = false;
    const auto d = person().session(Site::Hands, kStart - 9).add(stopped, kStart, 19 * 60);
    CHECK(holds(dueAt(d, at(kStart + 1, 12)), ReminderKind::SkinCheck));
    CHECK_FALSE(holds(dueAt(d, at(kStart + 2, 12)), ReminderKind::SkinCheck));
}

TEST_CASE("at its very minute a reminder is due and no longer ahead")
{
    const auto d = person().session(Site::Hands, kStart);
    const auto ahead = [&](int hour, int minute) {
        const auto list = upcomingAt(d, at(kStart + 2, hour, minute));
        return std::ranges::any_of(
            list, [](const Reminder& r) { return r.kind == ReminderKind::CheckIn && r.at.date == kStart + 2; });
    };
    CHECK(ahead(19, 59));
    CHECK_FALSE(ahead(20, 0));
    CHECK(holds(dueAt(d, at(kStart + 2, 20)), ReminderKind::CheckIn));
}

TEST_CASE("the question for the score is asked again after a week, as due since its first day")
{
    const auto d = person().session(Site::Hands, kStart);
    for (const int day : {30, 37}) {
        const auto due = dueAt(d, at(kStart + day, 21));
        const auto asked = std::ranges::find(due, ReminderKind::HdssDue, &Reminder::kind);
        REQUIRE(asked != due.end());
        CHECK(asked->since == kStart + 30);
    }
}
