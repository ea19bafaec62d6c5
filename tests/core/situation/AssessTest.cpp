#include "situation/Assess.h"
#include "bath/Engine.h"

#include "diary/Reader.h"

#include "core/Build.h"
#include "outlook/Learned.h"

#include <catch2/catch.hpp>
#include <random>

using namespace firstdew::situation;
using build::day;
using build::Facts;

namespace {

const LocalDate kStart = day("2026-01-05");

Facts person() { return Facts().adult().screened(day("2026-01-01")); }

SiteSituation hands(const Facts& d, LocalDate today) { return assess(d.on(today)).sites.at(0); }

/// The seven sessions of the default course, each on its day, and HDSS before and after.
Facts courseDone(int hdssBefore, int hdssAfter)
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

TEST_CASE("a course runs day by day, is reviewed at its end and leads to keeping dry")
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

// Control often comes only after ten to twelve sessions (Hölzle & Alberti, Dermatologica 1987;175:126-35).
TEST_CASE("seven sessions without a response lead to more of them, and only ten to the prescriber")
{
    auto d = courseDone(3, 3);
    CHECK(hands(d, kStart + 22).stage == Stage::Review);
    CHECK(hands(d, kStart + 22).advice == Advice::TryFurther);
    CHECK(hands(d, kStart + 22).reasons.front().kind == ReasonKind::NotBetterYet);
    CHECK(hands(d, kStart + 22).reasons.front().count == 7);
    const auto further = firstdew::protocol::furtherCourse(Course{Site::Hands, {}, {}, kStart, {}}, 7, kStart + 22);
    CHECK(further.days.size() == 5);
    d.add(further, kStart + 22);
    CHECK(hands(d, kStart + 22).advice == Advice::DoCourseSession);
    for (int i = 0; i < 4; ++i)
        d.session(Site::Hands, kStart + 22 + 2 * i);
    CHECK(hands(d, kStart + 30).advice == Advice::DoCourseSession);
    d.session(Site::Hands, kStart + 30);
    CHECK(hands(d, kStart + 31).hdssStart == 3); // the score before the first of the two courses
    CHECK(hands(d, kStart + 31).advice == Advice::AskPrescriber);
    CHECK(hands(d, kStart + 31).reasons.front().kind == ReasonKind::NoResponse);
    d.add(Hdss{DiarySite::Hands, 2}, kStart + 31);
    CHECK(hands(d, kStart + 31).advice == Advice::Review);
    d.add(ReviewDone{Site::Hands, false}, kStart + 32);
    CHECK(hands(d, kStart + 32).advice == Advice::AskPrescriber);
}

TEST_CASE("a prescribed course without a response leads to who prescribed it, with what the care sheet says")
{
    CareSheet sheet;
    sheet.who = "Dr Vance";
    sheet.given = kStart;
    sheet.sites = {Site::Hands};
    sheet.plan = CourseTemplate::Seven;
    sheet.atNoResponse = "Call the clinic.";
    auto d = courseDone(3, 3).add(sheet, kStart);
    CHECK(hands(d, kStart + 22).advice == Advice::AskPrescriber);
    CHECK(hands(d, kStart + 22).reasons.front().kind == ReasonKind::NotBetterYet);
    CHECK(hands(d, kStart + 22).atNoResponse == "Call the clinic.");
    CHECK(hands(courseDone(4, 2).add(sheet, kStart), kStart + 22).atNoResponse.empty());
}

// Our own choice, cautious.
TEST_CASE("a score older than 14 days decides nothing, and is asked for again")
{
    auto d = courseDone(3, 3); // scored on the day after the last session
    CHECK(hands(d, kStart + 36).response == firstdew::protocol::Response::None);
    for (const auto& late : {hands(d, kStart + 37), hands(courseDone(4, 2), kStart + 37)}) {
        CHECK(late.advice == Advice::Review);
        CHECK_FALSE(late.response);
        CHECK(late.reasons.front().kind == ReasonKind::ScoreNeeded);
        CHECK(late.reasons.front().days == 15);
    }
    d.add(Hdss{DiarySite::Hands, 1}, kStart + 37);
    CHECK(hands(d, kStart + 37).response == firstdew::protocol::Response::Strong);
}

TEST_CASE("a person who stops after the course is sent to the prescriber with the reason")
{
    auto done = courseDone(4, 3);
    done.add(ReviewDone{Site::Hands, false}, kStart + 23);
    const auto s = hands(done, kStart + 24);
    CHECK(s.stage == Stage::Review);
    CHECK(s.advice == Advice::AskPrescriber);
    REQUIRE_FALSE(s.reasons.empty());
    CHECK(s.reasons.front().kind == ReasonKind::NoResponse);
}

TEST_CASE("a site names the kind of session that treats it")
{
    auto d = person();
    d.session(Site::HandFoot, kStart).session(Site::Armpits, kStart, Waveform::Pulsed);
    const auto sites = assess(d.on(kStart + 1)).sites;
    REQUIRE(sites.size() == 3);
    CHECK(sites.at(0).treatedAs == Site::HandFoot);
    CHECK(sites.at(1).treatedAs == Site::HandFoot);
    CHECK(sites.at(2).treatedAs == Site::Armpits);
}

TEST_CASE("a stop answer blocks every call to treat until a clinician clears it")
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
    const auto s = assess(d.on(kStart + 40)).sites.at(0);
    CHECK(s.advice == Advice::Blocked);
    CHECK(s.reasons.front().kind == ReasonKind::MachineUnsuited);
}

TEST_CASE("where no waveform is open, nothing is called, and the reason says what is missing")
{
    Machine direct;
    direct.name = "invented";
    CareSheet sheet;
    sheet.waveform = Waveform::Pulsed;
    auto prescribed = person().session(Site::Hands, kStart).add(direct, kStart).add(sheet, kStart);
    CHECK(hands(prescribed, kStart + 40).advice == Advice::Blocked);
    CHECK(hands(prescribed, kStart + 40).reasons.front().kind == ReasonKind::PrescribedLacks);
    Machine none = direct;
    none.direct = false;
    auto unset = person().session(Site::Hands, kStart).add(none, kStart);
    CHECK(hands(unset, kStart + 40).reasons.front().kind == ReasonKind::MachineHasNone);
    Machine both = direct;
    both.pulsed = true;
    prescribed.add(both, kStart + 1);
    CHECK(hands(prescribed, kStart + 40).advice == Advice::TopUpDue);
}

// At most two restarts in a day and site: our own choice.
TEST_CASE("skin that had enough for one day is not called for again before tomorrow")
{
    auto d = person().session(Site::Hands, kStart);
    const LocalDate due = kStart + 40;
    REQUIRE(hands(d, due).advice == Advice::TopUpDue);
    Session s;
    s.completed = false;
    d.add(s, due, 600).add(s, due, 660);
    CHECK(hands(d, due).advice == Advice::TopUpDue);
    d.add(s, due, 720);
    CHECK(hands(d, due).advice == Advice::None);
    CHECK(hands(d, due).reasons.front().kind == ReasonKind::EnoughToday);
    CHECK(hands(d, due).nextSession == due + 1);
    CHECK(hands(d, due + 1).advice == Advice::TopUpDue);
    CHECK(firstdew::bath::mayPrepare(d.on(due), Site::Hands, Waveform::Direct, WayOfWorking::FreeHand).error().code ==
          "enough-for-today");
    auto damp = d; // nothing beside it says to treat now
    damp.checkIn(DiarySite::Hands, due - 1, Level::Clammy).checkIn(DiarySite::Hands, due, Level::Clammy);
    CHECK(hands(damp, due).reasons.front().kind == ReasonKind::EnoughToday);
    CHECK(std::ranges::none_of(hands(damp, due).reasons, [](const Reason& r) {
        return r.kind == ReasonKind::ClammyTwice || r.kind == ReasonKind::ClammyAtRest;
    }));
    Session feet = s;
    feet.site = Site::Feet; // other skin
    auto other = person().session(Site::Hands, kStart).add(feet, due, 600).add(feet, due, 660).add(feet, due, 720);
    CHECK(hands(other, due).advice == Advice::TopUpDue);
}

TEST_CASE("a session stopped at nine tenths is not nothing: the call is gone, and its spell begins")
{
    // Invented: 300 mA min each time, as 15 mA over 20 minutes.
    const auto charged = [](double charge, bool completed) {
        Session s;
        s.site = Site::Hands;
        s.charge = MilliampMinutes{charge};
        s.completed = completed;
        return s;
    };
    auto d = person();
    for (int i = 0; i < 5; ++i)
        d.add(charged(300, true), kStart + 10 * i, 18 * 60);
    const LocalDate due = kStart + 80;
    REQUIRE(hands(d, due).advice == Advice::TopUpDue);
    auto most = d;
    most.add(charged(270, false), due, 18 * 60);
    CHECK(hands(most, due).advice == Advice::None);
    CHECK(hands(most, due).reasons.front().kind == ReasonKind::StoppedCounts);
    CHECK(hands(most, due + 1).advice == Advice::None);
    CHECK(*hands(most, due + 1).nextSession > due + 2);
    CHECK(hands(most, due + 1).forecast.lastSession == due);
    // Stopped at the beginning, the call stands.
    auto little = d;
    little.add(charged(30, false), due, 18 * 60);
    CHECK(hands(little, due).advice == Advice::TopUpDue);
    CHECK(hands(little, due + 1).advice == Advice::TopUpDue);
    // Beside the usual charge a weak session holds less long.
    auto weak = d;
    weak.add(charged(80, true), due, 18 * 60);
    auto full = d;
    full.add(charged(300, true), due, 18 * 60);
    CHECK(*hands(weak, due).nextSession < *hands(full, due).nextSession);
    // Permission, load of the skin and the course ask as before: it may be begun again, within the day's bounds, and
    // the course counts completed sessions alone.
    CHECK(firstdew::bath::mayPrepare(most.on(due), Site::Hands, Waveform::Direct, WayOfWorking::FreeHand).ok() ==
          firstdew::bath::mayPrepare(little.on(due), Site::Hands, Waveform::Direct, WayOfWorking::FreeHand).ok());
    CHECK(most.on(due).at(DiarySite::Hands).sessionDays == d.on(due).at(DiarySite::Hands).sessionDays);
    most.add(charged(30, false), due, 19 * 60).add(charged(30, false), due, 20 * 60);
    CHECK(firstdew::bath::enoughToday(most.on(due), Site::Hands));
}

TEST_CASE("a call can be put off for a day or until a new report")
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

TEST_CASE("a paused site gives no advice")
{
    auto d = person().session(Site::Hands, kStart).add(Pause{Site::Hands, true}, kStart + 1);
    CHECK(hands(d, kStart + 60).stage == Stage::Paused);
    CHECK(hands(d, kStart + 60).advice == Advice::None);
}

TEST_CASE("the person's own risk moves the due day")
{
    auto d = person().session(Site::Hands, kStart);
    const auto usual = *hands(d, kStart).forecast.due;
    CHECK(*hands(Facts(d).add(Preference{"risk", "0.05"}, kStart), kStart).forecast.due < usual);
    CHECK(*hands(Facts(d).add(Preference{"risk", "0.5"}, kStart), kStart).forecast.due > usual);
    CHECK(*hands(Facts(d).add(Preference{"risk", "seven"}, kStart), kStart).forecast.due == usual);
}

TEST_CASE("the more a return costs, the earlier the call")
{
    auto d = person().session(Site::Hands, kStart);
    LocalDate due = kStart + 400;
    for (const double damp : {0.5, 1.0, 2.0, 5.0, 20.0}) {
        const LocalDate now = *assess(d.on(kStart), {0.2, damp, {}}).sites.at(0).forecast.due;
        CHECK(now <= due);
        due = now;
    }
    CHECK(due < kStart + 4);
}

TEST_CASE("the cache changes no answer when facts are added, filled in or corrected")
{
    std::mt19937 random(11);
    const auto below = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
    for (int round = 0; round < 15; ++round) {
        auto d = person();
        firstdew::diary::Reader reader(d.facts(), "p1", kStart);
        for (int day = 0; day < 150; ++day) {
            const int when = below(3) == 0 ? below(day + 1) : day; // now and then filled in afterwards
            if (below(9) == 0)
                d.session(allOf<Site>()[static_cast<std::size_t>(below(4))], kStart + when);
            if (below(4) != 0)
                d.checkIn(allOf<DiarySite>()[static_cast<std::size_t>(below(3))], kStart + when,
                          static_cast<Level>(below(4) == 0 ? 1 + below(3) : 0),
                          below(5) == 0 ? SetOf<Circumstance>{Circumstance::Heat} : SetOf<Circumstance>{});
            reader.turnTo(kStart + day);
            for (std::size_t i = reader.facts().size(); i < d.facts().size(); ++i)
                reader.add(d.facts()[i]);
            const auto with = assess(reader.diary());
            const auto without = assess(d.on(kStart + day));
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

namespace {

Course courseFrom(LocalDate start)
{
    Course c;
    c.site = Site::Hands;
    c.start = start;
    return c;
}

bool says(const SiteSituation& s, ReasonKind kind)
{
    return std::ranges::find(s.reasons, kind, &Reason::kind) != s.reasons.end();
}

} // namespace

TEST_CASE("sessions of a course move out of days away")
{
    auto d = person().add(courseFrom(kStart), kStart, 0).session(Site::Hands, kStart);
    CHECK(hands(d, kStart + 1).nextSession == kStart + 1);
    d.add(Away{kStart + 1, kStart + 5}, kStart);
    CHECK(hands(d, kStart + 1).nextSession == kStart + 6);
    CHECK(hands(d, kStart + 1).advice == Advice::None);
}

TEST_CASE("a course that does not fit its four weeks says by how much it runs over")
{
    auto d = person().add(courseFrom(kStart), kStart, 0);
    d.add(Away{kStart, kStart + 25}, kStart);
    const auto s = hands(d, kStart);
    REQUIRE(says(s, ReasonKind::CourseOverrun));
    CHECK(std::ranges::find(s.reasons, ReasonKind::CourseOverrun, &Reason::kind)->days == s.course->overrunDays);
    CHECK(s.course->overrunDays > 0);
}

TEST_CASE("a course that cannot be planned leads to the prescriber and not to a session")
{
    Course c = courseFrom(kStart);
    c.plan = CourseTemplate::Prescribed; // and names no days
    const auto s = hands(person().add(c, kStart), kStart);
    CHECK(s.stage == Stage::FirstCourse);
    CHECK(s.advice == Advice::AskPrescriber);
    CHECK_FALSE(s.course);
    CHECK(says(s, ReasonKind::CourseOverrun));
}

TEST_CASE("the later of two moves of a session counts, and a move that no longer fits is ignored")
{
    auto d = person().add(courseFrom(kStart), kStart, 0);
    d.add(CourseMove{Site::Hands, 1, kStart + 2}, kStart);
    CHECK(hands(d, kStart).nextSession == kStart + 2);
    auto again = Facts(d).add(CourseMove{Site::Hands, 1, kStart + 3}, kStart);
    CHECK(hands(again, kStart).nextSession == kStart + 3);
    // The third on the first day leaves no room for the two before it.
    auto broken = Facts(d).add(CourseMove{Site::Hands, 3, kStart}, kStart);
    CHECK(hands(broken, kStart).nextSession == kStart);
    CHECK(hands(broken, kStart).advice == Advice::DoCourseSession);
    // Another site's, or one from before this course was set, moves nothing here.
    auto others = person().add(CourseMove{Site::Hands, 1, kStart + 2}, kStart, 0).add(courseFrom(kStart), kStart, 60);
    others.add(CourseMove{Site::Feet, 1, kStart + 3}, kStart, 90);
    CHECK(hands(others, kStart).nextSession == kStart);
}

TEST_CASE("scores of other sites and of future days do not affect the response")
{
    auto d = courseDone(4, 2);
    d.add(Hdss{DiarySite::Feet, 4}, kStart + 22).add(Hdss{DiarySite::Hands, 4}, kStart + 23);
    CHECK(hands(d, kStart + 22).response == firstdew::protocol::Response::Strong);
    CHECK(says(hands(d, kStart + 22), ReasonKind::ResponseStrong));
    CHECK(hands(d, kStart + 23).response == firstdew::protocol::Response::None);
    CHECK(says(hands(courseDone(4, 3), kStart + 22), ReasonKind::ResponseGood));
}

TEST_CASE("a first score given late counts as the score before the course")
{
    auto d = person().add(courseFrom(kStart), kStart, 0).session(Site::Hands, kStart);
    d.add(Hdss{DiarySite::Hands, 3}, kStart + 1);
    const auto s = hands(d, kStart + 2);
    CHECK(s.hdssStart == 3);
    CHECK(s.hdssNow == 3);
    // Without a course there is nothing that it could be the response to.
    const auto none = hands(person().session(Site::Hands, kStart).add(Hdss{DiarySite::Hands, 3}, kStart), kStart + 2);
    CHECK_FALSE(none.hdssStart);
    CHECK_FALSE(none.response);
}

TEST_CASE("only its own review ends a course")
{
    auto d = courseDone(4, 2);
    d.add(ReviewDone{Site::Feet, true}, kStart + 23).add(ReviewDone{Site::Hands, true}, kStart - 1);
    CHECK(hands(d, kStart + 24).stage == Stage::Review);
    d.add(ReviewDone{Site::Hands, true}, kStart + 26);
    CHECK(hands(d, kStart + 25).stage == Stage::Review);
    CHECK(hands(d, kStart + 26).stage == Stage::KeepingDry);
}

TEST_CASE("wet at rest calls for the course again, wet in the heat does not")
{
    auto d = person().session(Site::Hands, kStart);
    const auto wet = hands(Facts(d).checkIn(DiarySite::Hands, kStart + 9, Level::Wet), kStart + 9);
    CHECK(wet.stage == Stage::SweatingAgain);
    CHECK(wet.advice == Advice::RestartCourse);
    CHECK(wet.nextSession == kStart + 9);
    CHECK(wet.reasons.front().kind == ReasonKind::WetAtRest);
    const auto hot =
        hands(Facts(d).checkIn(DiarySite::Hands, kStart + 5, Level::Wet, {Circumstance::Heat}), kStart + 5);
    CHECK(hot.stage == Stage::KeepingDry);
    CHECK(hot.advice == Advice::Watch);
    CHECK(hot.reasons.front().kind == ReasonKind::ClammyStirred);
    // Weak evidence fades, and the rhythm may call.
    d.checkIn(DiarySite::Hands, kStart + 2, Level::Clammy, {Circumstance::Heat});
    CHECK(hands(d, kStart + 3).advice == Advice::Watch);
    CHECK_FALSE(says(hands(d, kStart + 4), ReasonKind::ClammyStirred));
}

TEST_CASE("a call put off to this evening still holds, and an answer from an earlier day expires")
{
    auto d = person().session(Site::Hands, kStart);
    const LocalDate due = *hands(d, kStart).nextSession;
    const auto answered = [&](CallAnswer answer, LocalDate on) {
        return Facts(d).add(CallAnswered{DiarySite::Hands, answer, ""}, on);
    };
    const auto evening = hands(answered(CallAnswer::ThisEvening, due), due);
    CHECK(evening.advice == Advice::TopUpDue);
    CHECK(says(evening, ReasonKind::PutOff));
    CHECK_FALSE(says(hands(answered(CallAnswer::ThisEvening, due), due + 1), ReasonKind::PutOff));
    CHECK_FALSE(says(hands(answered(CallAnswer::StartNow, due), due), ReasonKind::PutOff));
    CHECK(hands(answered(CallAnswer::StartNow, due), due).advice == Advice::TopUpDue);
    // Answers to other calls: of another site, of a day to come, of before the last session.
    auto others = answered(CallAnswer::NotThisTime, due + 1);
    others.add(CallAnswered{DiarySite::Feet, CallAnswer::NotThisTime, ""}, due);
    others.add(CallAnswered{DiarySite::Hands, CallAnswer::NotThisTime, ""}, kStart);
    CHECK(hands(others, due).advice == Advice::TopUpDue);
    CHECK(hands(others, due + 1).advice == Advice::Watch);
}

TEST_CASE("answers that need a clinician are told apart from answers that stop")
{
    auto d = person().session(Site::Hands, kStart);
    d.screened(kStart + 1, {ScreeningRow::EczemaAtSite});
    const auto s = hands(d, kStart + 40);
    CHECK(s.advice == Advice::Blocked);
    CHECK(s.reasons.front().kind == ReasonKind::ScreeningAsks);
    CHECK(s.reasons.front().row == ScreeningRow::EczemaAtSite);
}

TEST_CASE("a machine unsuited to armpits blocks neither the hands nor advice without a session")
{
    Machine m;
    m.name = "invented";
    auto d = person().session(Site::Hands, kStart).session(Site::Armpits, kStart, Waveform::Pulsed).add(m, kStart);
    const auto late = assess(d.on(kStart + 40)).sites;
    REQUIRE(late.size() == 2);
    CHECK(late.at(0).advice == Advice::TopUpDue);
    CHECK(late.at(1).advice == Advice::Blocked);
    CHECK(assess(d.on(kStart)).sites.at(1).advice == Advice::None);
    m.pulsed = true;
    d.add(m, kStart + 1);
    CHECK(assess(d.on(kStart + 40)).sites.at(1).advice == Advice::TopUpDue);
}

TEST_CASE("a blocking answer is shown before the first session")
{
    auto d = Facts().adult().screened(kStart, {ScreeningRow::MetalIud}).add(SiteUse{Site::Hands, true}, kStart);
    CHECK(hands(d, kStart).stage == Stage::NotStarted);
    CHECK(hands(d, kStart).advice == Advice::Blocked);
}

TEST_CASE("the most urgent of several sites comes first")
{
    auto d = person().add(SiteUse{Site::Hands, true}, kStart); // not begun
    CHECK(assess(Facts().on(kStart)).first == std::nullopt);
    CHECK(assess(d.on(kStart)).first == 0U);
    d.session(Site::Feet, kStart);
    const LocalDate due = *assess(d.on(kStart)).sites.at(1).nextSession;
    CHECK(assess(d.on(due)).first == 1U); // a due top-up before nothing
    d.session(Site::Armpits, kStart, Waveform::Pulsed).checkIn(DiarySite::Armpits, due, Level::Wet);
    CHECK(assess(d.on(due)).first == 2U); // sweating again before a due top-up
    // To be looked at, or nobody knows how to go on: before a site to be watched, after a call.
    auto review = courseDone(4, 2).session(Site::Feet, kStart + 20);
    review.checkIn(DiarySite::Feet, kStart + 22, Level::Clammy, {Circumstance::Heat});
    CHECK(assess(review.on(kStart + 22)).sites.at(1).advice == Advice::Watch);
    CHECK(assess(review.on(kStart + 22)).first == 0U);
    review.checkIn(DiarySite::Feet, kStart + 24, Level::Wet);
    CHECK(assess(review.on(kStart + 24)).first == 1U);
    auto stuck = courseDone(3, 3).session(Site::Feet, kStart + 20);
    CHECK(assess(stuck.on(kStart + 22)).sites.at(0).advice == Advice::TryFurther);
    CHECK(assess(stuck.on(kStart + 22)).first == 0U);
    // A call comes before a question to the prescriber, whose site stands first in the list.
    auto ended = courseDone(3, 3).add(ReviewDone{Site::Hands, false}, kStart + 30);
    ended.session(Site::Feet, kStart + 30);
    const LocalDate called = *assess(ended.on(kStart + 30)).sites.at(1).nextSession;
    CHECK(assess(ended.on(called)).sites.at(0).advice == Advice::AskPrescriber);
    CHECK(assess(ended.on(called)).sites.at(1).advice == Advice::TopUpDue);
    CHECK(assess(ended.on(called)).first == 1U);
}

TEST_CASE("a call with a stale screening says so")
{
    auto d = person().session(Site::Hands, kStart);
    const LocalDate late = kStart + 60;
    CHECK(says(hands(d, late), ReasonKind::ScreeningStale));
    CHECK_FALSE(says(hands(Facts(d).screened(late - 1), late), ReasonKind::ScreeningStale));
}

TEST_CASE("an impossible risk is ignored, and other settings do not change the risk")
{
    auto d = person().session(Site::Hands, kStart);
    const auto due = [&](const char* key, const char* value) {
        return hands(Facts(d).add(Preference{key, value}, kStart), kStart).forecast.due.value_or(kStart + 365);
    };
    const auto usual = *hands(d, kStart).forecast.due;
    CHECK(due("risk", "0.009") == usual);
    CHECK(due("risk", "0.91") == usual);
    CHECK(due("risk", "0.9") > usual);
    CHECK(due("risk", "0.01") < usual);
    CHECK(due("language", "0.9") == usual);
}

TEST_CASE("after a review without any session, reports and answers to calls count")
{
    auto d = person().add(courseFrom(kStart), kStart, 0).add(ReviewDone{Site::Hands, true}, kStart + 1);
    const auto s = hands(d, kStart + 2);
    CHECK(s.stage == Stage::KeepingDry);
    CHECK(s.advice == Advice::None);
    CHECK_FALSE(s.nextSession);
    CHECK_FALSE(s.lastSession);
    CHECK(s.reasons.empty());
    d.checkIn(DiarySite::Hands, kStart + 3, Level::Clammy);
    CHECK(hands(d, kStart + 3).advice == Advice::FirstDewTopUp);
    CHECK(hands(d, kStart + 3).reasons.front().kind == ReasonKind::ClammyAtRest);
    d.add(CallAnswered{DiarySite::Hands, CallAnswer::NotThisTime, ""}, kStart + 3);
    CHECK(hands(d, kStart + 3).advice == Advice::Watch);
}
