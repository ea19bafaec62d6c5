#include "protocol/Course.h"

#include "core/Build.h"

#include <catch2/catch.hpp>
#include <functional>
#include <limits>
#include <random>

using namespace firstdew::protocol;
using build::day;

namespace {

CourseRequest sevenFrom(const char* start)
{
    CourseRequest q;
    q.start = q.today = day(start);
    return q;
}

std::vector<std::string> datesOf(const CoursePlan& plan)
{
    std::vector<std::string> out;
    for (const auto& s : plan.sessions)
        out.push_back(s.date.iso());
    return out;
}

/// Every choice of ascending open days, by trying them all.
std::pair<long, std::vector<LocalDate>> bruteForce(const CourseRequest& q, const std::vector<LocalDate>& wanted,
                                                   LocalDate last, int apart = 1)
{
    std::pair<long, std::vector<LocalDate>> best{std::numeric_limits<long>::max(), {}};
    std::vector<LocalDate> chosen;
    const auto open = [&](LocalDate d) {
        bool ok = q.free.empty() || q.free.contains(d.weekday());
        for (const auto& [from, to] : q.away)
            ok = ok && !(from <= d && d <= to);
        for (const auto* list : {&q.missed, &q.done})
            for (const LocalDate m : *list)
                ok = ok && m != d;
        return ok;
    };
    const auto allowed = [&](std::size_t session, LocalDate d) {
        for (const auto& [number, date] : q.fixed)
            if (number == static_cast<int>(q.done.size() + session) + 1)
                return date == d;
        return open(d);
    };
    const std::function<void(LocalDate, long)> go = [&](LocalDate from, long cost) {
        if (chosen.size() == wanted.size()) {
            if (cost < best.first)
                best = {cost, chosen};
            return;
        }
        for (LocalDate d = from; d <= last; d = d + 1) {
            if (!allowed(chosen.size(), d))
                continue;
            const long shift = d - wanted[chosen.size()];
            chosen.push_back(d);
            go(d + apart, cost + shift * shift);
            chosen.pop_back();
        }
    };
    LocalDate first = std::max(q.start, q.today);
    for (const LocalDate d : q.done)
        first = std::max(first, d + apart);
    go(first, 0);
    return best;
}

/// A course of one to four sessions with anything that can stand in their way.
CourseRequest drawn(std::mt19937& random)
{
    const auto below = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
    CourseRequest q;
    q.plan = CourseTemplate::Prescribed;
    q.start = day("2026-03-02") + below(7);
    q.today = q.start + below(6);
    int at = 0;
    for (int i = 0; i < 1 + below(4); ++i)
        q.days.push_back(at += 1 + below(5));
    for (int i = 0; i < below(7); ++i)
        q.free.insert(static_cast<Weekday>(below(7)));
    for (int i = 0; i < below(3); ++i) {
        const LocalDate from = q.start + below(25);
        q.away.emplace_back(from, from + below(10));
    }
    if (below(3) == 0)
        q.missed.push_back(q.today - below(3));
    for (LocalDate d = q.start; d <= q.today && q.done.size() + 1 < q.days.size(); d = d + 1)
        if (below(4) == 0 && (q.missed.empty() || q.missed.front() != d))
            q.done.push_back(d);
    const int doneCount = static_cast<int>(q.done.size());
    const int count = static_cast<int>(q.days.size());
    if (below(4) == 0)
        q.fixed.emplace_back(doneCount + 1 + below(count - doneCount), q.today + below(20));
    if (below(3) == 0)
        q.pace = Pace::DayBetween;
    return q;
}

} // namespace

TEST_CASE("the seven sessions are on days 1, 2, 4, 7, 10, 15 and 22")
{
    // Days 1, 2, 4, 7, 10 and 22: NHS hospital leaflet WPR26540; day 15: from memory; seven in four weeks: common
    // practice, no source.
    const auto plan = planCourse(sevenFrom("2026-03-02"));
    REQUIRE(plan);
    CHECK(datesOf(*plan) == std::vector<std::string>{"2026-03-02", "2026-03-03", "2026-03-05", "2026-03-08",
                                                     "2026-03-11", "2026-03-16", "2026-03-23"});
    CHECK(plan->windowEnd.iso() == "2026-03-29");
    CHECK(plan->fits);
    CHECK(plan->shiftCost == 0);
}

TEST_CASE("three a week is twelve sessions on Mondays, Wednesdays and Fridays")
{
    // Siah & Hampton, Dermatol Online J 2013;19(3):14
    auto q = sevenFrom("2026-03-04"); // a Wednesday
    q.plan = CourseTemplate::MonWedFri;
    const auto plan = planCourse(q);
    REQUIRE(plan);
    REQUIRE(plan->sessions.size() == 12);
    for (const auto& s : plan->sessions)
        CHECK(
            (s.date.weekday() == Weekday::Mon || s.date.weekday() == Weekday::Wed || s.date.weekday() == Weekday::Fri));
    CHECK(plan->fits);
}

TEST_CASE("five a week is ten sessions in two weeks")
{
    // Kim et al., Ann Dermatol 2017;29:728-734
    auto q = sevenFrom("2026-03-02");
    q.plan = CourseTemplate::Daily;
    const auto plan = planCourse(q);
    REQUIRE(plan);
    CHECK(plan->sessions.size() == 10);
    CHECK(plan->sessions.back().date.iso() == "2026-03-13");
    CHECK(plan->fits);
}

TEST_CASE("a missed session moves, days away and weekdays not free stay empty")
{
    auto q = sevenFrom("2026-03-02");
    q.today = day("2026-03-06");
    q.done = {day("2026-03-02"), day("2026-03-03")};
    q.missed = {day("2026-03-05")};
    q.free = {Weekday::Mon, Weekday::Tue, Weekday::Thu, Weekday::Fri};
    q.away = {{day("2026-03-10"), day("2026-03-12")}};
    const auto plan = planCourse(q);
    REQUIRE(plan);
    // Today for the missed one; Monday 9 for day 7 (a Sunday); Friday 13 for day 10 (Wednesday 11, away).
    CHECK(datesOf(*plan) == std::vector<std::string>{"2026-03-02", "2026-03-03", "2026-03-06", "2026-03-09",
                                                     "2026-03-13", "2026-03-16", "2026-03-23"});
    CHECK(plan->sessions[1].state == CourseState::Done);
    CHECK(plan->sessions[2].state == CourseState::Planned);
    CHECK(plan->fits);
    CHECK(plan->shiftCost == 1 + 1 + 4);
    const std::vector<ShiftReason> why{
        ShiftReason::None, ShiftReason::None, ShiftReason::Missed, ShiftReason::WeekdayNotFree,
        ShiftReason::Away, ShiftReason::None, ShiftReason::None};
    for (std::size_t i = 0; i < why.size(); ++i)
        CHECK(plan->sessions[i].why == why[i]);
}

TEST_CASE("every shift has its reason")
{
    auto q = sevenFrom("2026-03-02");
    q.today = day("2026-03-03");
    q.done = {day("2026-03-03")}; // a day late, and day 2 has its session therefore
    auto plan = planCourse(q);
    REQUIRE(plan);
    CHECK(plan->sessions[0].shift == 1);
    CHECK(plan->sessions[0].why == ShiftReason::None); // done: it stands where it was done
    CHECK(plan->sessions[1].date == day("2026-03-04"));
    CHECK(plan->sessions[1].why == ShiftReason::HasSession);
    q.done.clear();
    q.today = day("2026-03-05");
    q.fixed = {{4, day("2026-03-09")}};
    plan = planCourse(q);
    REQUIRE(plan);
    CHECK(plan->sessions[0].why == ShiftReason::Past);
    CHECK(plan->sessions[2].date == day("2026-03-07"));
    CHECK(plan->sessions[2].why == ShiftReason::MakesRoom); // its own day, the 5th, is open: the first two need it
    CHECK(plan->sessions[3].why == ShiftReason::ByHand);
    for (const auto& s : plan->sessions)
        CHECK((s.why == ShiftReason::None) == (s.shift == 0 && s.number != 4));
}

TEST_CASE("a course without input starts on day 1 and is planned again after each missed session")
{
    auto q = sevenFrom("2026-03-02");
    q.free = {Weekday::Mon, Weekday::Tue, Weekday::Thu, Weekday::Fri};
    q.missed = {day("2026-03-05"), day("2026-03-06"), day("2026-03-07")};
    q.today = day("2026-03-10");
    const auto soFar = courseSoFar(q);
    REQUIRE(soFar);
    // The session of the 5th moves to the 6th, and is missed there too; the 7th, a Saturday, never had one.
    CHECK(soFar->missed == std::vector{day("2026-03-05"), day("2026-03-06")});
    CHECK(soFar->notSessionDays == std::vector{day("2026-03-07")});
    CHECK(soFar->done == std::vector{day("2026-03-02"), day("2026-03-03"), day("2026-03-09")});
    q.today = day("2026-03-09");
    CHECK(courseSoFar(q)->done.size() == 2); // today's own is not taken as done
    q.missed.push_back(q.today);
    CHECK(courseSoFar(q)->missed.back() == q.today);
    q.missed.clear();
    q.today = day("2027-01-01");
    CHECK(courseSoFar(q)->done.size() == 7);
}

TEST_CASE("a plan that exceeds its window says by how many days")
{
    auto q = sevenFrom("2026-03-02");
    q.away = {{day("2026-03-02"), day("2026-03-27")}};
    const auto plan = planCourse(q);
    REQUIRE(plan);
    CHECK_FALSE(plan->fits);
    CHECK(plan->sessions.front().date.iso() == "2026-03-28");
    CHECK(plan->overrunDays == 5); // seven days in a row from 28 March end on 3 April, five after the 29th
}

TEST_CASE("a session put on a day by hand stays there, and the plan fits the others around it")
{
    auto q = sevenFrom("2026-03-02");
    q.fixed = {{3, day("2026-03-10")}};
    const auto plan = planCourse(q);
    REQUIRE(plan);
    CHECK(plan->sessions[2].date.iso() == "2026-03-10");
    CHECK(plan->sessions[3].date > plan->sessions[2].date);
    q.fixed = {{3, day("2026-03-03")}};
    CHECK_FALSE(planCourse(q)); // no room for two sessions before it
}

TEST_CASE("the plan is the best of all plans, found by trying every one")
{
    std::mt19937 random(20260302);
    int overrun = 0;
    int moved = 0;
    int impossible = 0;
    int spaced = 0;
    int pressed = 0;
    for (int round = 0; round < 6000; ++round) {
        const CourseRequest q = drawn(random);
        const int doneCount = static_cast<int>(q.done.size());
        const int count = static_cast<int>(q.days.size());
        int apart = q.pace == Pace::DayBetween ? 2 : 1;
        const auto plan = planCourse(q);
        std::vector<LocalDate> wanted;
        for (int i = doneCount; i < count; ++i)
            wanted.push_back(q.start + (q.days[static_cast<std::size_t>(i)] - 1));
        if (!plan) { // only a day chosen by hand can make a course impossible here
            REQUIRE(q.fixed.size() == 1);
            REQUIRE(bruteForce(q, wanted, q.start + 45).second.empty());
            ++impossible;
            continue;
        }
        moved += static_cast<int>(q.fixed.size());
        // Four weeks hold every case unless days away fill them; then the least overrun counts first.
        LocalDate last = plan->windowEnd;
        auto best = bruteForce(q, wanted, last, apart);
        // A day chosen by hand may leave no day between; then the others stand as near as they have to.
        if (best.second.empty() && apart == 2 && !q.fixed.empty() &&
            bruteForce(q, wanted, q.start + 75, apart).second.empty()) {
            apart = 1;
            ++pressed;
            best = bruteForce(q, wanted, last, apart);
        }
        while (best.second.empty()) {
            last = last + 1;
            best = bruteForce(q, wanted, last, apart);
        }
        spaced += apart == 2 ? 1 : 0;
        overrun += plan->fits ? 0 : 1;
        REQUIRE(plan->shiftCost == best.first);
        REQUIRE(plan->overrunDays == std::max(0, best.second.back() - plan->windowEnd));
        for (std::size_t i = 0; i < wanted.size(); ++i)
            REQUIRE(plan->sessions[i + q.done.size()].date == best.second[i]);
        for (std::size_t i = 0; i < q.done.size(); ++i)
            REQUIRE(plan->sessions[i].date == q.done[i]);
    }
    CHECK(overrun > 0); // every kind of case was met
    CHECK(moved > 100);
    CHECK(impossible > 10);
    CHECK(spaced > 1000);
    CHECK(pressed > 10);
}

TEST_CASE("more than three sessions on consecutive days are named, with the plan that has a day between")
{
    // More than three in a row is asked about: our own choice.
    auto q = sevenFrom("2026-03-02");
    q.done = {day("2026-03-02"), day("2026-03-03")};
    q.today = day("2026-03-12");
    auto plan = planCourse(q);
    REQUIRE(plan);
    CHECK(datesOf(*plan)[4] == "2026-03-14"); // three in a row, 12 to 14, and the next on the 16th
    CHECK_FALSE(crowdingOf(q, *plan));
    q.today = day("2026-03-14");
    plan = planCourse(q);
    auto crowding = crowdingOf(q, *plan);
    REQUIRE(crowding);
    CHECK(crowding->inARow == 4); // 14 to 17
    CHECK(datesOf(crowding->dayBetween) == std::vector<std::string>{"2026-03-02", "2026-03-03", "2026-03-14",
                                                                    "2026-03-16", "2026-03-18", "2026-03-20",
                                                                    "2026-03-23"});
    CHECK(crowding->dayBetween.fits);
    q.today = day("2026-03-24");
    plan = planCourse(q);
    crowding = crowdingOf(q, *plan);
    REQUIRE(crowding);
    CHECK(plan->fits);
    CHECK(crowding->inARow == 5);
    CHECK(crowding->dayBetween.overrunDays == 3); // 24, 26, 28, 30 March and 1 April; the window ends on the 29th
    q.pace = Pace::DayBetween;
    CHECK_FALSE(crowdingOf(q, *planCourse(q))); // it is chosen
}

TEST_CASE("sessions already done count into a row, and a course that is close together by itself does not crowd")
{
    auto q = sevenFrom("2026-03-02");
    q.today = day("2026-03-23");
    q.done = {day("2026-03-02"), day("2026-03-20"), day("2026-03-21"), day("2026-03-22")};
    auto plan = planCourse(q);
    REQUIRE(crowdingOf(q, *plan));
    CHECK(crowdingOf(q, *plan)->inARow == 6);
    CHECK(crowdingOf(q, *plan)->dayBetween.sessions[4].date == day("2026-03-24"));
    q.done = {day("2026-03-02"), day("2026-03-03"), day("2026-03-04"), day("2026-03-05")};
    CHECK_FALSE(crowdingOf(q, *planCourse(q))); // four in a row, and over
    CourseRequest daily = sevenFrom("2026-03-02");
    daily.plan = CourseTemplate::Daily;
    CHECK_FALSE(crowdingOf(daily, *planCourse(daily)));
    q = sevenFrom("2026-03-02");
    q.done.clear();
    for (int i = 0; i < 7; ++i)
        q.done.push_back(q.start + i);
    q.today = q.start + 7;
    CHECK_FALSE(crowdingOf(q, *planCourse(q))); // nothing is left of it
}

TEST_CASE("with a day between, the day after a session stays empty, but for a day chosen by hand")
{
    auto q = sevenFrom("2026-03-02");
    q.pace = Pace::DayBetween;
    auto plan = planCourse(q);
    REQUIRE(plan);
    for (std::size_t i = 1; i < plan->sessions.size(); ++i)
        CHECK(plan->sessions[i].date - plan->sessions[i - 1].date >= 2);
    q.today = day("2026-03-03");
    q.done = {day("2026-03-02")};
    plan = planCourse(q);
    CHECK(plan->sessions[1].date == day("2026-03-04"));
    CHECK(plan->sessions[1].why == ShiftReason::MakesRoom);
    q.fixed = {{2, day("2026-03-03")}};
    plan = planCourse(q);
    REQUIRE(plan);
    CHECK(plan->sessions[1].date == day("2026-03-03"));
    CHECK(plan->fits);
}

TEST_CASE("impossible days of a course are refused by name")
{
    auto q = sevenFrom("2026-03-02");
    q.plan = CourseTemplate::Prescribed;
    CHECK(planCourse(q).error().code == "no-days");
    q.days = {1, 1};
    CHECK(planCourse(q).error().code == "days-not-ascending");
    q.days = {0, 3};
    CHECK(planCourse(q).error().code == "day-out-of-range");
    q.days = {1, 3};
    q.done = {q.today + 1};
    CHECK(planCourse(q).error().code == "done-in-the-future");
    q.done = {q.start - 1};
    CHECK(planCourse(q).error().code == "done-before-start");
    q.done.clear();
    q.away = {{q.today + 2, q.today}};
    CHECK(planCourse(q).error().code == "away-backwards");
    q.away = {{q.today, q.today + 9999}};
    CHECK(planCourse(q).error().code == "no-open-days");
}

TEST_CASE("a session put on an impossible day is refused with the reason")
{
    const auto code = [](std::vector<std::pair<int, LocalDate>> fixed, std::vector<LocalDate> done = {}) {
        auto q = sevenFrom("2026-03-02");
        q.fixed = std::move(fixed);
        q.done = std::move(done);
        const auto plan = planCourse(q);
        return plan ? std::string() : plan.error().code;
    };
    const LocalDate start = day("2026-03-02");
    CHECK(code({{1, start}}).empty());
    CHECK(code({{0, start}}) == "no-such-session");
    CHECK(code({{8, start + 20}}) == "no-such-session");
    CHECK(code({{1, start + 2}}, {start}) == "no-such-session"); // it is done
    CHECK(code({{1, start - 1}}) == "day-not-open");
    CHECK(code({{2, start}}, {start}) == "day-not-open"); // today has its session
    CHECK(code({{2, start + 1}}, {start}).empty());
    CHECK(code({{3, start + 1}}) == "order-broken");
    CHECK(code({{3, start + 2}}).empty());
    // Two by hand need as many days between them as there are sessions.
    CHECK(code({{2, start + 5}, {4, start + 6}}) == "order-broken");
    CHECK(code({{4, start + 6}, {2, start + 5}}) == "order-broken");
    CHECK(code({{2, start + 5}, {4, start + 7}}).empty());
}

TEST_CASE("too many days, a missed day in the future and a day both missed and done are refused")
{
    auto q = sevenFrom("2026-03-02");
    q.plan = CourseTemplate::Prescribed;
    for (int i = 1; i <= 1001; ++i)
        q.days.push_back(i);
    CHECK(planCourse(q).error().code == "too-many-days");
    q.days = {3661};
    CHECK(planCourse(q).error().code == "day-out-of-range");
    q.days = {1, 3};
    q.missed = {q.today + 1};
    CHECK(planCourse(q).error().code == "missed-in-the-future");
    q.missed = q.done = {q.today};
    CHECK(planCourse(q).error().code == "done-and-missed");
    CHECK(courseSoFar({CourseTemplate::Prescribed, {}, q.start, q.today, {}, {}, {}, {}, {}}).error().code ==
          "no-days");
}

TEST_CASE("days chosen by hand that leave no day between are not called crowded: another pace would change nothing")
{
    CourseRequest q;
    q.plan = CourseTemplate::Prescribed;
    q.start = q.today = day("2026-03-02");
    q.days = {1, 3, 5, 7};
    for (int i = 0; i < 4; ++i)
        q.fixed.emplace_back(i + 1, q.start + i);
    const auto plan = planCourse(q);
    REQUIRE(plan);
    CHECK(plan->sessions.back().date == q.start + 3);
    CHECK_FALSE(crowdingOf(q, *plan));
    q.fixed.clear();
    q.today = q.start + 24; // four days of the window are left
    REQUIRE(planCourse(q));
    CHECK(crowdingOf(q, planCourse(q).value()));
}

TEST_CASE("the longest course, its last day and a miss of today are still accepted")
{
    std::vector<int> days(1000);
    for (std::size_t i = 0; i < days.size(); ++i)
        days[i] = static_cast<int>(i) + 1;
    const LocalDate start = day("2026-03-02");
    CHECK(templateDays(CourseTemplate::Prescribed, days, start).ok());
    CHECK(templateDays(CourseTemplate::Prescribed, {1, 3660}, start).ok());
    CHECK(templateDays(CourseTemplate::Prescribed, {1, 3661}, start).error().code == "day-out-of-range");
    auto q = sevenFrom("2026-03-02");
    q.missed = {q.today};
    CHECK(planCourse(q).ok());
}
