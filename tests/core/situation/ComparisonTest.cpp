#include "core/situation/Keeper.h"
#include "protocol/Script.h"
#include "situation/Assess.h"
#include "situation/Reminders.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace firstdew;
using namespace firstdew::facts;
using namespace firstdew::situation;
using build::day;
using build::Keeper;

namespace {

bool tells(const SiteSituation& s, ReasonKind kind)
{
    return std::ranges::any_of(s.reasons, [&](const Reason& r) { return r.kind == kind; });
}

} // namespace

TEST_CASE("a comparison is offered to an adult who keeps dry after a course that helped, and to nobody else")
{
    const Keeper good;
    REQUIRE(good.now().stage == Stage::KeepingDry);
    CHECK_FALSE(good.bar());

    const auto barAfter = [](auto change) {
        Keeper k;
        change(k);
        return k.bar();
    };
    CHECK(barAfter([](Keeper& k) { k.begin(); }) == ComparisonBar::Runs);
    CHECK(barAfter([](Keeper& k) {
              k.d.add(Person{"Ada", day("2015-01-01"), {}, {}, {}}, k.today);
          }) == ComparisonBar::AdultsOnly);
    CHECK(barAfter([](Keeper& k) { k.d.add(Person{"Ada", {}, {}, {}, {}}, k.today); }) == ComparisonBar::AdultsOnly);
    CHECK(barAfter([](Keeper& k) {
              k.d.add(SiteUse{Site::Hands, false}, k.today).add(SiteUse{Site::HandFoot, true}, k.today);
          }) == ComparisonBar::TwoSites);
    CHECK(barAfter([](Keeper& k) {
              k.d.add(Course{Site::Hands, CourseTemplate::Seven, {}, k.today + 1, {}}, k.today);
          }) == ComparisonBar::NotKeepingDry);
    CHECK(barAfter([](Keeper& k) { k.d.add(Pause{Site::Hands, true}, k.today); }) == ComparisonBar::NotKeepingDry);
    CHECK(barAfter([](Keeper& k) { k.d.add(Hdss{DiarySite::Hands, 4}, k.today); }) == ComparisonBar::NoResponse);
    CHECK(barAfter([](Keeper& k) { k.d.screened(k.today, {ScreeningRow::Pregnancy}); }) == ComparisonBar::Barred);
    CHECK(barAfter([](Keeper& k) {
              k.d.add(SideEffect{DiarySite::Hands, {SkinFinding::Blister}, {}}, k.today);
          }) == ComparisonBar::Barred);
    CHECK(barAfter([](Keeper& k) {
              k.d.add(SideEffect{DiarySite::Hands, {SkinFinding::Redness}, {}}, k.today);
          }) == ComparisonBar::SkinRecently);
    CHECK_FALSE(barAfter([](Keeper& k) {
        k.d.add(SideEffect{DiarySite::Hands, {SkinFinding::Redness}, {}}, k.today - kSkinDays);
    }));
    CHECK(barAfter([](Keeper& k) {
              k.d.add(OtherTreatment{OtherKind::Tablets, {}, {}, k.today, {}}, k.today);
          }) == ComparisonBar::OtherTreatment);
    CHECK(barAfter([](Keeper& k) { k.d.session(Site::Hands, k.today = k.today + 8); }) ==
          ComparisonBar::SessionsUnlike);
    CHECK(barAfter([](Keeper& k) { k.today = k.today + kSilentDays; }) == ComparisonBar::NoCheckIns);
    CHECK_FALSE(barAfter([](Keeper& k) { k.today = k.today + kSilentDays - 1; }));
}

TEST_CASE("each pair has both lengths, and the seed decides their order")
{
    int shorterFirst = 0;
    for (int seed = 0; seed < 200; ++seed)
        for (int pair = 0; pair < outlook::kPairs; ++pair) {
            CHECK(shorterAt(seed, 2 * pair) != shorterAt(seed, 2 * pair + 1));
            shorterFirst += shorterAt(seed, 2 * pair);
        }
    CHECK(shorterFirst > 740); // of 1600: four standard errors
    CHECK(shorterFirst < 860);
}

TEST_CASE("the shorter session is never shorter than half of the usual one, and never longer than it")
{
    for (const Site site : allOf<Site>())
        for (const double share : {0.0, 0.5, 0.51, 0.66, 0.75, 0.9, 2.0}) {
            const Seconds hold = shorterHold(site, share);
            const int whole = protocol::phasesFor(site).hold.s;
            CHECK(2 * hold.s >= whole);
            CHECK(hold.s <= whole);
        }
    CHECK(shorterHold(Site::Hands, 0.5) == Seconds{300});
    CHECK(shorterHold(Site::Feet, 0.5) == Seconds{450});
}

TEST_CASE("while a comparison runs the forecast calls for nothing, and the first clammy day does")
{
    Keeper k;
    k.begin();
    Keeper without;
    k.dryDays(7);
    without.dryDays(7);
    int called = 0;
    for (int i = 0; i < 12; ++i) {
        k.dryDays(1);
        without.dryDays(1);
        called += without.now().advice == Advice::TopUpDue;
        const auto s = k.now();
        CHECK(s.advice == Advice::None);
        CHECK_FALSE(s.nextSession);
        CHECK_FALSE(s.callDay());
        REQUIRE_FALSE(s.reasons.empty());
        CHECK(s.reasons.front().kind == ReasonKind::Comparing);
        CHECK(s.reasons.front().number == 1);
        CHECK(s.reasons.front().count == outlook::kPairs);
        for (const Reminder& r : todaysReminders(k.d.on(k.today), {12 * 60}).standing)
            CHECK(r.kind != ReminderKind::TopUpDue);
    }
    CHECK(called > 0);
    k.today = k.today + 1;
    k.checkIn(Level::Clammy);
    CHECK(k.now().advice == Advice::FirstDewTopUp);
    CHECK(tells(k.now(), ReasonKind::Comparing));
}

TEST_CASE("in a comparison the first clammy day at rest calls, but not where the skin is still settling")
{
    Keeper k;
    k.begin();
    Keeper dayAfter = k;
    dayAfter.dryDays(3);
    dayAfter.session({});
    dayAfter.today = dayAfter.today + 1;
    dayAfter.checkIn(Level::Clammy);
    CHECK(dayAfter.now().advice == Advice::Watch);
    k.dryDays(2);
    k.today = k.today + 1;
    k.checkIn(Level::Clammy, {Circumstance::Heat});
    CHECK(k.now().advice == Advice::Watch);
    k.today = k.today + 1;
    k.checkIn(Level::Clammy, {});
    CHECK(k.now().advice == Advice::FirstDewTopUp);
}

TEST_CASE("without check-ins a comparison rests, and the forecast calls again")
{
    Keeper k;
    k.begin();
    k.dryDays(20);
    REQUIRE(k.now().advice == Advice::None);
    const LocalDate last = k.today;
    // What is planned on the phone meanwhile: nothing before the day on which it rests.
    LocalDate first;
    for (const Reminder& r : upcomingReminders(k.d.on(last), {22 * 60}))
        if (r.kind == ReminderKind::TopUpDue && first == LocalDate())
            first = r.at.date;
    CHECK(first == last + kSilentDays);
    k.today = last + kSilentDays;
    CHECK(k.compared().rests == ComparisonRest::NoCheckIns);
    CHECK(k.now().advice == Advice::TopUpDue);
    CHECK_FALSE(k.asked());
    k.checkIn(Level::Dry);
    CHECK(k.compared().runs());
    CHECK(k.now().advice == Advice::None);
}

TEST_CASE("a whole comparison of sessions that hold alike ends after eight pairs, and says so")
{
    Keeper k;
    k.begin();
    k.live(40, 11, 11);
    const auto c = k.compared();
    REQUIRE(c.ended == ComparisonEnd::AllPairs);
    CHECK(c.done.size() == 2 * outlook::kPairs);
    CHECK(std::ranges::count_if(c.done, [](const auto& s) { return s.shorter; }) == outlook::kPairs);
    const auto held = heldIn(c);
    REQUIRE(held);
    CHECK(outlook::answerOf(*held) == outlook::HoldAnswer::AsLong);
    // From then on everything is as before.
    CHECK_FALSE(k.asked());
    k.dryDays(20);
    CHECK(k.compared().ended == ComparisonEnd::AllPairs);
    CHECK(k.compared().done.size() == 2 * outlook::kPairs);
    CHECK(k.now().advice == Advice::TopUpDue);
    CHECK_FALSE(tells(k.now(), ReasonKind::Comparing));
}

TEST_CASE("a shorter session that plainly holds less ends the comparison early")
{
    Keeper k;
    k.begin();
    k.live(40, 13, 5);
    const auto c = k.compared();
    REQUIRE(c.ended == ComparisonEnd::PlainlyLess);
    CHECK(c.done.size() == 2U * outlook::kEarlyLooks[0]);
    CHECK(outlook::answerOf(heldIn(c).value()) == outlook::HoldAnswer::Less);
    CHECK_FALSE(k.asked());
}

TEST_CASE("a session of another length, stopped, broken off or not led does not count, and is asked for again")
{
    const auto after = [](auto change) {
        Keeper k;
        k.begin();
        const auto asked = k.asked();
        k.today = k.today + 1;
        change(k, asked);
        k.dryDays(3);
        const auto c = k.compared();
        CHECK(k.asked() == (c.under ? (asked ? std::nullopt : std::optional(Seconds{300})) : asked));
        return c.under;
    };
    CHECK(after([](Keeper& k, auto asked) { k.session(asked); }));
    CHECK_FALSE(after([](Keeper& k, auto asked) { k.session(asked ? std::nullopt : std::optional(Seconds{300})); }));
    CHECK_FALSE(after([](Keeper& k, auto asked) { k.session(asked, false); }));
    CHECK_FALSE(after([](Keeper& k, auto) { k.d.session(Site::Hands, k.today); }));
    CHECK_FALSE(after([](Keeper& k, auto asked) {
        k.session(asked);
        k.session(asked);
    }));
    CHECK_FALSE(after([](Keeper& k, auto asked) {
        k.session(asked);
        k.happened(BathEventKind::OutOfWater);
    }));
}

TEST_CASE("what ends a comparison ends it for good")
{
    const auto endAfter = [](auto change) {
        Keeper k;
        k.begin();
        k.dryDays(4);
        REQUIRE(k.compared().runs());
        change(k);
        const auto c = k.compared();
        REQUIRE(c.ended);
        CHECK_FALSE(c.runs());
        CHECK(c.endedOn <= k.today);
        CHECK_FALSE(k.asked());
        CHECK_FALSE(tells(k.now(), ReasonKind::Comparing));
        k.session({}); // a session after it changes nothing
        k.dryDays(5);
        CHECK(k.compared().ended == c.ended);
        CHECK(k.compared().endedOn == c.endedOn);
        return *c.ended;
    };
    CHECK(endAfter([](Keeper& k) {
              k.d.add(Comparison{DiarySite::Hands, false, 0.5, 0}, k.today, 21 * 60 + 1);
          }) == ComparisonEnd::Left);
    CHECK(endAfter([](Keeper& k) {
              k.d.add(SideEffect{DiarySite::Hands, {SkinFinding::Burn}, {}}, k.today);
              k.d.add(SkinClearance{DiarySite::Hands, "Dr Invented", k.today}, k.today);
          }) == ComparisonEnd::Skin);
    CHECK(endAfter([](Keeper& k) {
              for (int i = 0; i < 2; ++i) {
                  k.today = k.today + 1;
                  k.checkIn(Level::Wet);
              }
          }) == ComparisonEnd::Sweating);
    CHECK(endAfter([](Keeper& k) {
              k.d.add(Course{Site::Hands, CourseTemplate::Seven, {}, k.today, {}}, k.today);
          }) == ComparisonEnd::Course);
    CHECK(endAfter([](Keeper& k) {
              k.d.add(OtherTreatment{OtherKind::Cream, {}, {}, k.today, {}}, k.today);
          }) == ComparisonEnd::OtherTreatment);
    CHECK(endAfter([](Keeper& k) {
              for (int i = 0; i < kMostUncounted; ++i)
                  k.d.session(Site::Hands, k.today = k.today + 3);
          }) == ComparisonEnd::Lapsed);
}

TEST_CASE("what bars a session or pauses the site lets a comparison rest")
{
    Keeper k;
    k.begin();
    k.dryDays(4);
    Keeper paused = k;
    paused.d.add(Pause{Site::Hands, true}, k.today);
    CHECK(paused.compared().rests == ComparisonRest::Paused);
    paused.d.add(Pause{Site::Hands, false}, k.today);
    CHECK(paused.compared().runs());
    Keeper stops = k;
    stops.d.screened(k.today, {ScreeningRow::HeartRhythmOrEpilepsy});
    CHECK(stops.compared().rests == ComparisonRest::Barred);
    CHECK_FALSE(stops.asked());
}

TEST_CASE("full sweating calls for a new course in a comparison as ever")
{
    Keeper k;
    k.begin();
    k.dryDays(6);
    for (int i = 0; i < 2; ++i) {
        k.today = k.today + 1;
        k.checkIn(Level::Wet);
    }
    CHECK(k.now().advice == Advice::RestartCourse);
    CHECK(k.compared().ended == ComparisonEnd::Sweating);
}

TEST_CASE("a comparison that is left keeps what was learned so far")
{
    Keeper k;
    k.begin();
    k.live(5, 12, 6);
    k.dryDays(3);
    k.d.add(Comparison{DiarySite::Hands, false, 0.5, 0}, k.today, 21 * 60);
    const auto c = k.compared();
    CHECK(c.ended == ComparisonEnd::Left);
    CHECK(c.done.size() == 5); // the last one cut short
    CHECK_FALSE(c.under);
    CHECK_FALSE(c.done.back().held.right);
    CHECK(heldIn(c));
}
