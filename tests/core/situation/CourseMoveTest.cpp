#include "situation/Assess.h"

#include "core/Build.h"
#include "situation/Reminders.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace firstdew::situation;
using build::day;
using build::Facts;

namespace {

Facts onCourse()
{
    Course c;
    c.site = Site::Hands;
    c.start = day("2026-03-02");
    return Facts()
        .adult()
        .screened(day("2026-03-02"))
        .add(SiteUse{Site::Hands, true}, day("2026-03-02"), 1)
        .add(c, day("2026-03-02"), 2);
}

std::string dateOf(const Facts& d, int number, const char* today)
{
    const auto s = assess(d.on(day(today)));
    return s.sites.at(0).course.value().sessions.at(static_cast<std::size_t>(number - 1)).date.iso();
}

} // namespace

TEST_CASE("a session moved by hand stays on its day")
{
    auto d = onCourse();
    d.add(CourseMove{Site::Hands, 3, day("2026-03-06")}, day("2026-03-02"));
    CHECK(dateOf(d, 3, "2026-03-02") == "2026-03-06");
    d.add(CourseMove{Site::Hands, 3, day("2026-03-05")}, day("2026-03-02"));
    CHECK(dateOf(d, 3, "2026-03-02") == "2026-03-05"); // the later word counts
}

TEST_CASE("a moved session that is done does not undo the other moves")
{
    auto d = onCourse();
    d.add(CourseMove{Site::Hands, 1, day("2026-03-03")}, day("2026-03-02"));
    d.add(CourseMove{Site::Hands, 4, day("2026-03-12")}, day("2026-03-02"));
    d.session(Site::Hands, day("2026-03-03"));
    CHECK(dateOf(d, 4, "2026-03-03") == "2026-03-12");
}

TEST_CASE("a session of the course that was not done on its day is named with that day until it is done or moved")
{
    auto d = onCourse().session(Site::Hands, day("2026-03-02")).session(Site::Hands, day("2026-03-03"));
    const auto on = [](const Facts& f, const char* today) { return assess(f.on(day(today))).sites.at(0); };
    const auto missed = [&](const Facts& f, const char* today) {
        const auto m = on(f, today).missed;
        return m ? std::to_string(m->number) + " " + m->planned.iso() : std::string("none");
    };
    CHECK(missed(d, "2026-03-05") == "none");
    CHECK(missed(d, "2026-03-06") == "3 2026-03-05");
    CHECK(missed(d, "2026-03-09") == "3 2026-03-05"); // the day it was planned for, not the days it moved to
    const auto site = on(d, "2026-03-06");
    const auto reason = std::ranges::find(site.reasons, ReasonKind::CourseSessionMissed, &Reason::kind);
    REQUIRE(reason != site.reasons.end());
    CHECK(reason->number == 3);
    CHECK(reason->days == 1); // it is now today
    CHECK(site.nextSession == day("2026-03-06"));
    CHECK(site.advice == Advice::DoCourseSession);

    CHECK(missed(Facts(d).session(Site::Hands, day("2026-03-06")), "2026-03-07") == "none");
    CHECK(missed(Facts(d).add(Away{day("2026-03-05"), day("2026-03-05")}, day("2026-03-06")), "2026-03-06") == "none");
    const auto before = Facts(d).add(CourseMove{Site::Hands, 3, day("2026-03-07")}, day("2026-03-04"));
    CHECK(missed(before, "2026-03-06") == "none");
    CHECK(missed(before, "2026-03-08") == "3 2026-03-07");
    const auto after = Facts(d).add(CourseMove{Site::Hands, 3, day("2026-03-09")}, day("2026-03-06"));
    CHECK(missed(after, "2026-03-06") == "none"); // somebody who moved it knows
    CHECK(missed(after, "2026-03-10") == "3 2026-03-09");
    // Nobody misses a session of a time before the course was set up.
    Course late;
    late.site = Site::Feet;
    late.start = day("2026-03-02");
    CHECK(missed(Facts().adult().add(late, day("2026-03-08")), "2026-03-08") == "none");
    CHECK(missed(Facts().adult().add(late, day("2026-03-08")), "2026-03-09") == "1 2026-03-08");
}

TEST_CASE("where sessions crowd both plans are offered, and the pace chosen is kept to")
{
    auto d = onCourse().session(Site::Hands, day("2026-03-02")).session(Site::Hands, day("2026-03-03"));
    const auto on = [](const Facts& f, const char* today) { return assess(f.on(day(today))).sites.at(0); };
    const auto asks = [](const SiteSituation& s) {
        return std::ranges::find(s.reasons, ReasonKind::CourseCrowded, &Reason::kind) != s.reasons.end();
    };
    CHECK_FALSE(asks(on(d, "2026-03-06")));
    const auto open = on(d, "2026-03-24");
    CHECK(asks(open));
    REQUIRE(open.crowding);
    CHECK(open.crowding->inARow == 5);
    CHECK(open.crowding->dayBetween.overrunDays == 3);

    auto between = Facts(d).add(CoursePace{Site::Hands, Pace::DayBetween}, day("2026-03-24"));
    CHECK_FALSE(asks(on(between, "2026-03-24")));
    CHECK(on(between, "2026-03-24").pace == Pace::DayBetween);
    CHECK(dateOf(between, 4, "2026-03-24") == "2026-03-26");
    CHECK(dateOf(between, 7, "2026-03-24") == "2026-04-01");
    between.session(Site::Hands, day("2026-03-24"));
    CHECK(on(between, "2026-03-25").advice == Advice::None);
    CHECK(on(between, "2026-03-26").advice == Advice::DoCourseSession);
    // A later word counts, and another course begins without one.
    CHECK(dateOf(Facts(between).add(CoursePace{Site::Hands, Pace::KeepWindow}, day("2026-03-25")), 4, "2026-03-25") ==
          "2026-03-25");
    Course again;
    again.site = Site::Hands;
    again.start = day("2026-04-13");
    CHECK(dateOf(Facts(between).add(again, day("2026-04-13")), 2, "2026-04-13") == "2026-04-14");

    auto kept = Facts(d).add(CoursePace{Site::Hands, Pace::KeepWindow}, day("2026-03-24"));
    CHECK_FALSE(asks(on(kept, "2026-03-24")));
    kept.session(Site::Hands, day("2026-03-24"));
    CHECK_FALSE(asks(on(kept, "2026-03-25")));
    CHECK(asks(on(kept, "2026-03-26"))); // one more was missed, on the 25th: four are left for four days
}

TEST_CASE("a move of an earlier course does not affect the next course")
{
    auto d = onCourse();
    d.add(CourseMove{Site::Hands, 2, day("2026-04-20")}, day("2026-03-02"));
    Course again;
    again.site = Site::Hands;
    again.start = day("2026-04-13");
    d.add(again, day("2026-04-13"));
    CHECK(dateOf(d, 2, "2026-04-13") == "2026-04-14");
}

TEST_CASE("what was said by a clock that was ahead is no day on which a session was missed")
{
    auto d = onCourse().session(Site::Hands, day("2026-03-02"));
    d.add(CoursePace{Site::Hands, Pace::KeepWindow}, day("2026-03-09"));
    const auto missed = assess(d.on(day("2026-03-05"))).sites.at(0).missed;
    REQUIRE(missed);
    CHECK(missed->planned == day("2026-03-03"));
}

TEST_CASE("a session for which there was no day until one was chosen by hand was not missed")
{
    Course c;
    c.site = Site::Hands;
    c.start = day("2026-03-02");
    c.plan = CourseTemplate::Prescribed;
    c.days = {1};
    auto d = Facts().adult().screened(c.start).add(c, c.start);
    d.add(Away{c.start, c.start + 5000}, c.start, 600);
    CHECK_FALSE(assess(d.on(c.start + 3)).sites.at(0).course);
    d.add(CoursePace{Site::Hands, Pace::KeepWindow}, c.start + 2);
    d.add(CourseMove{Site::Hands, 1, c.start + 3}, c.start + 2, 700);
    const auto s = assess(d.on(c.start + 3)).sites.at(0);
    REQUIRE(s.course);
    CHECK(s.nextSession == c.start + 3);
    CHECK_FALSE(s.missed);
}

TEST_CASE("a score that the scale does not have gives no response")
{
    auto d = onCourse().add(Hdss{DiarySite::Hands, 3}, day("2026-03-02"), 0);
    d.session(Site::Hands, day("2026-03-02")).add(Hdss{DiarySite::Hands, 2}, day("2026-03-04"));
    CHECK(assess(d.on(day("2026-03-05"))).sites.at(0).response);
    d.add(Hdss{DiarySite::Hands, 9}, day("2026-03-05"));
    CHECK_FALSE(assess(d.on(day("2026-03-05"))).sites.at(0).response);
}

TEST_CASE("a sheet without a course leaves it to the person to try further")
{
    CareSheet sheet;
    sheet.who = "Dr Vance";
    sheet.given = day("2026-03-02");
    sheet.atNoResponse = "Call the clinic.";
    auto d = onCourse().add(sheet, day("2026-03-02")).add(Hdss{DiarySite::Hands, 3}, day("2026-03-02"), 0);
    for (const int n : {1, 2, 4, 7, 10, 15, 22})
        d.session(Site::Hands, day("2026-03-01") + n);
    d.add(Hdss{DiarySite::Hands, 3}, day("2026-03-24"));
    const auto s = assess(d.on(day("2026-03-24"))).sites.at(0);
    CHECK(s.advice == Advice::TryFurther);
    CHECK(s.atNoResponse == "Call the clinic.");
}

TEST_CASE("a person without a birth date is told that one is needed, whatever else is known")
{
    auto d = onCourse().add(Person{"Ada", {}, {}, {}, {}}, day("2026-03-02"));
    const auto s = assess(d.on(day("2026-03-02"))).sites.at(0);
    CHECK(s.advice == Advice::Blocked);
    CHECK(std::ranges::find(s.reasons, ReasonKind::BirthDateMissing, &Reason::kind) != s.reasons.end());
}

TEST_CASE("of two sites the one that needs the prescriber comes before the one with nothing to do")
{
    auto d = Facts().adult().screened(day("2026-03-02")).session(Site::Hands, day("2026-03-02"));
    Course c;
    c.site = Site::Feet;
    c.start = day("2026-03-02");
    d.add(c, day("2026-03-02")).add(ReviewDone{Site::Feet, false}, day("2026-03-03"));
    const auto situation = assess(d.on(day("2026-03-03")));
    REQUIRE(situation.sites.size() == 2);
    REQUIRE(situation.sites[1].advice == Advice::AskPrescriber);
    CHECK(situation.first == 1);
}

TEST_CASE("skin that had enough for today is told so in place of the dampness, also where the app only watches")
{
    const LocalDate start = day("2026-03-02");
    const auto spared = [&](Level level, SetOf<Circumstance> with, int on, Advice before) {
        auto d = Facts().adult().screened(start).session(Site::Hands, start);
        for (int i = 1; i < on; ++i)
            d.checkIn(DiarySite::Hands, start + i, Level::Dry);
        d.checkIn(DiarySite::Hands, start + on, level, with);
        CHECK(assess(d.on(start + on)).sites.at(0).advice == before);
        Session s;
        s.completed = false;
        for (int i = 0; i < 3; ++i)
            d.add(s, start + on, 600 + i);
        const auto after = assess(d.on(start + on)).sites.at(0);
        CHECK(after.advice == Advice::None);
        CHECK(after.nextSession == start + on + 1);
        REQUIRE_FALSE(after.reasons.empty());
        CHECK(after.reasons.front().kind == ReasonKind::EnoughToday);
        CHECK(std::ranges::none_of(after.reasons, [](const Reason& r) {
            return r.kind == ReasonKind::ClammyAtRest || r.kind == ReasonKind::WetOnce;
        }));
    };
    spared(Level::Clammy, {}, 12, Advice::FirstDewTopUp);
    spared(Level::Wet, {}, 9, Advice::FirstDewTopUp);
    spared(Level::Clammy, {Circumstance::Heat}, 3, Advice::Watch);
}

TEST_CASE("skin that had enough in a course has no reminder of a session today, and one tomorrow")
{
    auto d = onCourse();
    Session s;
    s.completed = false;
    const auto due = [&] {
        const auto list = dueReminders(d.on(day("2026-03-02")), {21 * 60});
        return std::ranges::any_of(list, [](const Reminder& r) { return r.kind == ReminderKind::CourseSession; });
    };
    CHECK(due());
    for (int i = 0; i < 3; ++i)
        d.add(s, day("2026-03-02"), 600 + i);
    CHECK_FALSE(due());
    const auto ahead = upcomingReminders(d.on(day("2026-03-02")), {21 * 60});
    CHECK(std::ranges::any_of(ahead, [](const Reminder& r) {
        return r.kind == ReminderKind::CourseSession && r.at.date == day("2026-03-03");
    }));
}

TEST_CASE("a course given up before its first session has no reminder of a review after one")
{
    auto d = onCourse().add(ReviewDone{Site::Hands, false}, day("2026-03-03"));
    REQUIRE(assess(d.on(day("2026-03-05"))).sites.at(0).stage == Stage::Review);
    for (const Reminder& r : upcomingReminders(d.on(day("2026-03-05")), {6 * 60}))
        CHECK(r.kind != ReminderKind::PrescriberReview);
}

TEST_CASE("of two sites the one that sweats again comes before the one that is clammy")
{
    const LocalDate start = day("2026-03-02");
    auto d = Facts().adult().screened(start + 9).session(Site::Hands, start).session(Site::Feet, start);
    for (int i = 8; i <= 9; ++i)
        d.checkIn(DiarySite::Hands, start + i, Level::Clammy).checkIn(DiarySite::Feet, start + i, Level::Wet);
    const auto situation = assess(d.on(start + 9));
    REQUIRE(situation.sites.size() == 2);
    REQUIRE(situation.sites[0].advice == Advice::FirstDewTopUp);
    REQUIRE(situation.sites[1].advice == Advice::RestartCourse);
    CHECK(situation.first == 1);
}

// Control often comes only after ten to twelve sessions (Hölzle & Alberti, Dermatologica 1987;175:126-35).
TEST_CASE("exactly ten sessions without a response are enough to judge")
{
    auto d = onCourse().add(Hdss{DiarySite::Hands, 3}, day("2026-03-02"), 0);
    for (const int n : {1, 2, 4, 7, 10, 15, 22})
        d.session(Site::Hands, day("2026-03-01") + n);
    Course further;
    further.site = Site::Hands;
    further.plan = CourseTemplate::Prescribed;
    further.days = {1, 3, 5};
    further.start = day("2026-03-25");
    d.add(further, further.start);
    const auto advice = [&](int sessions) {
        Facts with = d;
        for (int i = 0; i < sessions; ++i)
            with.session(Site::Hands, further.start + 2 * i);
        with.add(Hdss{DiarySite::Hands, 3}, further.start + 6);
        return assess(with.on(further.start + 6)).sites.at(0).advice;
    };
    CHECK(advice(2) == Advice::DoCourseSession);
    CHECK(advice(3) == Advice::AskPrescriber);
}
