#include "core/Build.h"
#include "protocol/MayBegin.h"
#include "situation/Assess.h"
#include "situation/Reminders.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <random>
#include <set>

// The phone's calendar is set, crosses zones and stands still while nobody looks. Dates are the person's own days, so
// that a zone is a day had twice or left out, and a clock set back is a record with facts of days to come.

using namespace firstdew::situation;
using build::day;
using build::Facts;
using firstdew::protocol::mayBegin;
using firstdew::protocol::ScreeningDue;

namespace {

std::vector<Reminder> dueAt(const Facts& d, LocalTime now) { return dueReminders(d.on(now.date), now.at); }

constexpr DiarySite kHands = DiarySite::Hands;
const LocalDate kStart = day("2026-01-05");

Facts person() { return Facts().adult().screened(day("2026-01-01")); }

/// All that an answer says, in words.
std::string told(const Situation& s)
{
    std::string out = fmt::format("{} screening {}", s.today.iso(), static_cast<int>(s.screeningDue));
    for (const SiteSituation& site : s.sites) {
        out += fmt::format("; {} {} {} next {} last {} in {} spells {} dry {:.9f}", token(site.site), token(site.stage),
                           token(site.advice), site.nextSession ? site.nextSession->iso() : "-",
                           site.lastSession ? site.lastSession->iso() : "-", site.checkedInToday,
                           site.forecast.spells.size(), site.forecast.today.dry);
        for (const Reason& r : site.reasons)
            out += fmt::format(", {} {} {}", token(r.kind), r.days, r.date ? r.date->iso() : "-");
    }
    return out;
}

} // namespace

TEST_CASE("after the clock is set back, facts dated ahead count from their day on")
{
    std::mt19937 random(29);
    for (int round = 0; round < 20; ++round) {
        Facts all = person();
        Facts until = person();
        const LocalDate now = kStart + 40;
        const auto both = [&](auto add, LocalDate on) {
            add(all);
            if (on <= now)
                add(until);
        };
        for (int i = 0; i < 60; ++i) {
            const LocalDate on = kStart + i;
            if (i % 12 == 0)
                both([&](Facts& d) { d.session(Site::Hands, on); }, on);
            if (i % 20 == 7)
                both([&](Facts& d) { d.add(Hdss{kHands, 1 + static_cast<int>(random() % 4)}, on); }, on);
            const auto level = static_cast<Level>(random() % 2);
            both([&](Facts& d) { d.checkIn(kHands, on, level); }, on);
            if (i % 17 == 3)
                both([&](Facts& d) { d.add(CallAnswered{kHands, CallAnswer::NotThisTime, ""}, on); }, on);
        }
        CHECK(told(assess(all.on(now))) == told(assess(until.on(now))));
        CHECK(assess(all.on(kStart + 60)).sites.at(0).lastSession == kStart + 48);
    }
}

TEST_CASE("after the clock is set back, a stop answer and the rest of the skin still hold")
{
    const auto code = [](const Facts& d, LocalDate on) {
        const auto may = mayBegin(d.on(on), Site::Hands, Waveform::Direct);
        return may ? "" : may.error().code;
    };
    const Screening pregnant{false, {ScreeningRow::Pregnancy}, {ScreeningRow::Pregnancy}};
    auto d = person().add(pregnant, kStart + 1).add(Screening{false, {}, {}}, kStart);
    CHECK(code(d, kStart + 1) == "screening-stops");
    CHECK(code(d, kStart) == "screening-stops");
    // a no that is dated ahead does not take the yes of today away
    const Screening noLonger{false, {ScreeningRow::Pregnancy}, {}};
    auto back = person().add(pregnant, kStart).add(noLonger, kStart + 5);
    CHECK(code(back, kStart) == "screening-stops");
    CHECK(code(back, kStart + 5) == "screening-stops"); // and alone it does not end it either
    back.add(Clearance{ScreeningRow::Pregnancy, "Dr Vance", kStart + 2, kStart + 3}, kStart + 2);
    CHECK(code(back, kStart + 5).empty());

    // flown west over the date line: the session of the fifth was two hours ago, and it is the fourth
    auto west = person().session(Site::Hands, kStart + 1).add(Screening{false, {}, {}}, kStart);
    CHECK(code(west, kStart) == "session-today");
    CHECK(code(west, kStart - 1) != "session-today");
    west.add(Screening{false, {}, {}}, kStart + 2);
    CHECK(code(west, kStart + 2).empty());
}

TEST_CASE("a screening dated ahead has to be answered again")
{
    auto d = Facts().adult().screened(kStart + 3);
    CHECK(assess(d.on(kStart)).screeningDue == ScreeningDue::Full);
    CHECK(assess(d.on(kStart + 3)).screeningDue == ScreeningDue::None);
}

TEST_CASE("a day lived twice keeps its wettest report, and a skipped day does not separate two reports")
{
    auto d = person().session(Site::Hands, kStart);
    for (int i = 1; i < 9; ++i)
        d.checkIn(kHands, kStart + i, Level::Dry);
    auto twice = d;
    twice.checkIn(kHands, kStart + 9, Level::Wet)
        .checkIn(kHands, kStart + 9, Level::Dry); // after landing, the same date
    CHECK(assess(twice.on(kStart + 9)).sites.at(0).reasons.front().kind == ReasonKind::WetOnce);

    auto east = d; // the ninth never was
    east.checkIn(kHands, kStart + 8, Level::Clammy).checkIn(kHands, kStart + 10, Level::Clammy);
    const auto s = assess(east.on(kStart + 10)).sites.at(0);
    CHECK(s.stage == Stage::FirstDew);
    CHECK(s.reasons.front().kind == ReasonKind::ClammyTwice);
}

TEST_CASE("a reminder dismissed on a day lived twice does not return the second time")
{
    auto d = person().add(Hdss{kHands, 2}, kStart, 0).session(Site::Hands, kStart);
    const LocalTime evening{kStart + 2, {20 * 60}};
    auto due = dueAt(d, evening);
    REQUIRE(due.size() == 1);
    d.add(ReminderHandled{due.front().key, ReminderAction::Dismissed, {}}, kStart + 2, 20 * 60);
    for (int minute = 7 * 60; minute < 22 * 60; minute += 30)
        for (const Reminder& r : dueReminders(d.on(kStart + 2), {minute}))
            CHECK(r.key != due.front().key);
}

TEST_CASE("a course counts the leap day like any other day")
{
    // 2028 is a leap year: the seven sessions of days 1, 2, 4, 7, 10, 15 and 22, counted on the calendar by hand
    auto d = Facts().adult().screened(day("2028-02-20"));
    Course c;
    c.site = Site::Hands;
    c.start = day("2028-02-26");
    d.add(c, c.start);
    const auto plan = assess(d.on(c.start)).sites.at(0).course;
    REQUIRE(plan);
    std::vector<std::string> days;
    for (const auto& s : plan->sessions)
        days.push_back(s.date.iso());
    CHECK(days == std::vector<std::string>{"2028-02-26", "2028-02-27", "2028-02-29", "2028-03-03", "2028-03-06",
                                           "2028-03-11", "2028-03-18"});
    d.session(Site::Hands, c.start).session(Site::Hands, c.start + 1);
    CHECK(assess(d.on(day("2028-02-29"))).sites.at(0).advice == Advice::DoCourseSession);
    CHECK(assess(d.on(day("2028-03-01"))).sites.at(0).nextSession == day("2028-03-01")); // missed: moved by a day
    // born on a leap day, of age on the first of March of a common year: the later, cautious day
    auto young = Facts().add(Person{"Kim", day("2008-02-29"), {}, {}, {}}, day("2026-01-01"));
    CHECK(assess(young.on(day("2026-02-28"))).age == AgeGroup::Child);
    CHECK(assess(young.on(day("2026-03-01"))).age == AgeGroup::Adult);
}

TEST_CASE("after 29 days unopened, the screening is stale and each due reminder comes once")
{
    auto d = person().add(Hdss{kHands, 2}, kStart, 0).session(Site::Hands, kStart);
    d.checkIn(kHands, kStart, Level::Dry);
    const LocalDate back = kStart + 29;
    const auto s = assess(d.on(back));
    CHECK(s.screeningDue == ScreeningDue::Full);
    CHECK(s.sites.at(0).advice == Advice::TopUpDue);
    CHECK(std::ranges::any_of(s.sites.at(0).reasons,
                              [](const Reason& r) { return r.kind == ReasonKind::NoCheckInFor && r.days == 29; }));
    std::set<ReminderKind> kinds;
    for (const Reminder& r : dueReminders(d.on(back), {21 * 60}))
        CHECK(kinds.insert(r.kind).second);

    auto course = person();
    Course c;
    c.site = Site::Hands;
    c.start = kStart;
    course.add(c, kStart).session(Site::Hands, kStart).session(Site::Hands, kStart + 1);
    const auto late = assess(course.on(back)).sites.at(0);
    CHECK(late.stage == Stage::FirstCourse);
    CHECK(late.advice == Advice::DoCourseSession);
    CHECK(late.reasons.front().number == 3);
    CHECK(late.reasons.back().kind != ReasonKind::CourseFinished);
    CHECK_FALSE(late.course->fits);
}
