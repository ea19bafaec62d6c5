#include "outlook/Score.h"

#include "core/Build.h"
#include "outlook/Learned.h"

#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

using namespace firstdew::outlook;
using build::day;
using build::Facts;

namespace {

const LocalDate kStart = day("2026-01-05");

Course courseFrom(LocalDate start)
{
    Course course;
    course.site = Site::Hands;
    course.start = start;
    return course;
}

/// Fourteen months of somebody invented: spells of any length, days without a check-in, hot days, sessions before and
/// after the check-in, two in a row now and then, a course in the middle and tablets for a while.
Facts anybody(unsigned seed, int days)
{
    std::mt19937 random(seed);
    const auto happens = [&](double p) { return std::uniform_real_distribution<double>(0, 1)(random) < p; };
    Facts d;
    d.session(Site::Hands, kStart); // its charge was not measured
    int since = 0;
    double lasts = 10;
    for (int i = 1; i < days; ++i) {
        const LocalDate today = kStart + i;
        ++since;
        const bool damp = since > lasts;
        if (i == 200)
            d.add(courseFrom(today), today);
        if (i == 230)
            d.add(ReviewDone{Site::Hands, true}, today);
        if (i == 300)
            d.add(OtherTreatment{OtherKind::Tablets, "", {}, today, today + 20}, today);
        const bool treats = (damp && since > lasts + 1) || happens(0.04) || (since == 1 && happens(0.2));
        const bool first = happens(0.5);
        Session session;
        session.site = Site::Hands;
        session.charge = MilliampMinutes{300 * std::exp(std::normal_distribution<double>(0, 0.5)(random))};
        session.completed = !happens(0.15);
        if (treats && first)
            d.add(session, today, 18 * 60);
        if (!happens(0.2))
            d.checkIn(DiarySite::Hands, today, damp ? Level::Clammy : Level::Dry,
                      happens(0.1) ? SetOf<Circumstance>{Circumstance::Heat} : SetOf<Circumstance>{});
        if (treats && !first)
            d.add(session, today, 20 * 60 + 30);
        if (treats) {
            since = 0;
            lasts = 3 + 14 * std::uniform_real_distribution<double>(0, 1)(random);
        }
    }
    return d;
}

} // namespace

TEST_CASE("each forecast that is judged is exactly the one that was made on the evening before")
{
    const Facts d = anybody(1, 430);
    const auto judged = judgedDays(d.on(kStart + 430), DiarySite::Hands);
    REQUIRE(judged.size() > 100);
    for (const JudgedDay& j : judged) {
        const auto that = forecastFor(d.on(j.day - 1), DiarySite::Hands);
        CAPTURE(j.day.iso());
        REQUIRE(that.days.size() > 1);
        CHECK(that.days[1].date == j.day);
        CHECK(that.days[1].begun == j.said);
        CHECK(j.said <= kAlreadyLikely);
    }
}

TEST_CASE("which days are judged is settled the evening before, and later entries change nothing")
{
    const Facts d = anybody(2, 430);
    const auto all = judgedDays(d.on(kStart + 429), DiarySite::Hands);
    for (const int until : {90, 215, 231, 305, 330, 400}) {
        const auto then = judgedDays(d.on(kStart + until), DiarySite::Hands);
        CAPTURE(until);
        REQUIRE(then.size() <= all.size());
        for (std::size_t i = 0; i < then.size(); ++i) {
            CHECK(then[i].day == all[i].day);
            CHECK(then[i].said == all[i].said);
            CHECK(then[i].damp == all[i].damp);
        }
        if (then.size() < all.size())
            CHECK(all[then.size()].day > kStart + until);
    }
    for (const JudgedDay& j : all) {
        const int i = j.day - kStart;
        CHECK_FALSE((i > 200 && i <= 230)); // the course
        CHECK_FALSE((i > 300 && i <= 321)); // tablets, after the day on which they were noted
    }
}

TEST_CASE("a stirred day, the day after a session and a day without a report are not judged")
{
    Facts d;
    d.session(Site::Hands, kStart);
    d.checkIn(DiarySite::Hands, kStart + 1, Level::Dry);
    d.checkIn(DiarySite::Hands, kStart + 2, Level::Dry);
    d.checkIn(DiarySite::Hands, kStart + 3, Level::Clammy, {Circumstance::Heat});
    d.checkIn(DiarySite::Hands, kStart + 5, Level::Clammy);
    const auto judged = judgedDays(d.on(kStart + 6), DiarySite::Hands);
    REQUIRE(judged.size() == 2);
    CHECK(judged[0].day == kStart + 2);
    CHECK_FALSE(judged[0].damp);
    CHECK(judged[1].day == kStart + 5);
    CHECK(judged[1].damp);
}

TEST_CASE("a correction changes what was said and how it is judged")
{
    Facts d = anybody(3, 60);
    auto facts = d.facts();
    const auto before = judgedDays(d.on(kStart + 60), DiarySite::Hands);
    const auto damp = std::find_if(before.begin(), before.end(), [](const JudgedDay& j) { return j.damp; });
    REQUIRE(damp != before.end());
    for (const Fact& f : d.facts())
        if (f.happened.date == damp->day && std::holds_alternative<CheckIn>(f.payload)) {
            facts.push_back({"c", "p1", f.happened, 100000, f.id, CheckIn{DiarySite::Hands, Level::Dry, {}}});
        }
    const auto after = judgedDays(firstdew::diary::readDiary(facts, "p1", kStart + 60), DiarySite::Hands);
    const auto same = std::find_if(after.begin(), after.end(), [&](const JudgedDay& j) { return j.day == damp->day; });
    REQUIRE(same != after.end());
    CHECK_FALSE(same->damp);
}

TEST_CASE("the score counts how often dampness came where the forecast said about the same")
{
    const Facts d = anybody(4, 430);
    const auto diary = d.on(kStart + 430);
    const auto judged = judgedDays(diary, DiarySite::Hands);
    const Score s = scoreOf(diary, DiarySite::Hands);
    CHECK(s.days == static_cast<int>(judged.size()));
    REQUIRE(s.lines.size() == kLinesTold);
    for (const ScoreLine& line : s.lines) {
        int days = 0;
        int damp = 0;
        for (const JudgedDay& j : judged)
            if (oddsOf(j.said) == line.said) {
                ++days;
                damp += j.damp;
            }
        CHECK(line.days == days);
        CHECK(line.damp == damp);
        CHECK(line.days >= kDaysOfLine);
    }
    CHECK(s.missing == 0);
    CHECK(s.eValue == forecastFor(diary, DiarySite::Hands).misfit);
}

TEST_CASE("before twenty judged days the score says that it is too early")
{
    const Score none = scoreOf(Facts().on(kStart), DiarySite::Hands);
    CHECK(none.verdict == ScoreVerdict::TooFew);
    CHECK(none.missing == kDaysThatScore);
    const Score few = scoreOf(anybody(5, 15).on(kStart + 15), DiarySite::Hands);
    CHECK(few.verdict == ScoreVerdict::TooFew);
    CHECK(few.missing == kDaysThatScore - few.days);
    CHECK(few.lines.empty());
}

TEST_CASE("a diary that the forecasts do not fit widens the forecast, and the score says so")
{
    int found = 0;
    for (unsigned person = 1; person <= 10; ++person) {
        // Invented: a spell ends on any day with the same chance, however long it has lasted.
        std::mt19937 random(person); // each standard library draws the same numbers
        Facts d;
        LocalDate session = kStart;
        for (int i = 0; i < 60; ++i) {
            d.session(Site::Hands, session);
            const auto diary = d.on(session);
            const Forecast f = forecastFor(diary, DiarySite::Hands);
            CAPTURE(person, i, f.misfit);
            const Score s = scoreOf(diary, DiarySite::Hands);
            CHECK((s.verdict == ScoreVerdict::Widened) == f.widened);
            if (f.widened) {
                ++found;
                // Whoever knows less does not wait longer.
                const Renewal& before =
                    learnedFrom(diary).renewalFor(DiarySite::Hands, f.spells, diary.at(DiarySite::Hands).spellReports,
                                                  {}, f.returnCost, Clock::AsLearned);
                REQUIRE(f.dueIfSilent);
                CHECK(*f.dueIfSilent - session <= before.age() + 1);
                CHECK(f.bestAge <= before.age());
                break;
            }
            int lasts = 1;
            while (random() % 100 >= 8)
                ++lasts;
            for (int age = 1; age <= lasts + 1; ++age)
                d.checkIn(DiarySite::Hands, session + age, age <= lasts ? Level::Dry : Level::Clammy);
            session = session + lasts + 2;
        }
    }
    CHECK(found >= 4); // of people whom they fit it would be one in a hundred (COSTS.md)
}

TEST_CASE("the days told ahead are those of a forecast without a session")
{
    const Facts d = anybody(6, 100);
    const auto f = forecastFor(d.on(kStart + 100), DiarySite::Hands);
    const auto told = daysToTell(f);
    REQUIRE(told.size() == 3);
    const std::array ahead{1, 3, 7};
    for (std::size_t i = 0; i < told.size(); ++i) {
        CHECK(told[i].date == kStart + 100 + ahead[i]);
        CHECK(told[i].begun == f.days[static_cast<std::size_t>(ahead[i])].begun);
        if (i > 0) // a session would start it again
            CHECK(told[i].begun >= told[i - 1].begun);
    }
    CHECK(daysToTell(forecastFor(Facts().on(kStart), DiarySite::Hands)).empty());
}

TEST_CASE("a chance is told as the nearest of a few frequencies, and its dots are the same")
{
    CHECK(oddsOf(0) == Odds::Hardly);
    CHECK(oddsOf(std::nan("")) == Odds::Hardly);
    CHECK(oddsOf(0.024) == Odds::Hardly);
    CHECK(oddsOf(0.05) == Odds::OneInTwenty);
    CHECK(oddsOf(0.1) == Odds::OneInTen);
    CHECK(oddsOf(0.2) == Odds::OneInFive);
    CHECK(oddsOf(0.35) == Odds::OneInThree);
    CHECK(oddsOf(0.5) == Odds::OneInTwo);
    CHECK(oddsOf(0.65) == Odds::TwoInThree);
    CHECK(oddsOf(0.8) == Odds::FourInFive);
    CHECK(oddsOf(0.9) == Odds::NineInTen);
    CHECK(oddsOf(0.98) == Odds::Nearly);
    CHECK(oddsOf(1) == Odds::Nearly);
    int before = -1;
    for (const auto odds : {Odds::Hardly, Odds::OneInTwenty, Odds::OneInTen, Odds::OneInFive, Odds::OneInThree,
                            Odds::OneInTwo, Odds::TwoInThree, Odds::FourInFive, Odds::NineInTen, Odds::Nearly}) {
        const Frequency f = frequencyOf(odds);
        CHECK(std::abs(dotsOf(odds) * f.in - kDots * f.of) <= f.in / 2);
        CHECK(dotsOf(odds) > before);
        before = dotsOf(odds);
    }
    // the step told is never further than the next one
    for (double p = 0; p < 1; p += 0.001) {
        CAPTURE(p);
        CHECK(std::abs(dotsOf(oddsOf(p)) / 20.0 - p) <= 0.09);
    }
}
