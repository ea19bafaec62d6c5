#include "protocol/CurrentAdvice.h"

#include "core/Build.h"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

using namespace firstdew::protocol;
using build::day;
using build::Facts;

namespace {

const LocalDate kDay = day("2026-03-05");
constexpr Milliamps kLimit{20};

Session sessionAt(double comfortable, Comfort comfort = Comfort::Comfortable, Waveform waveform = Waveform::Direct)
{
    Session s;
    s.site = Site::Hands;
    s.waveform = waveform;
    s.comfortable = Milliamps{comfortable};
    s.comfort = comfort;
    return s;
}

CurrentAdvice after(const Session& s, const Facts& before = Facts(), Milliamps limit = kLimit)
{
    return currentAdviceFor(Facts(before).add(s, kDay - 1).on(kDay), s.site, s.waveform, limit);
}

bool says(const CurrentAdvice& a, CurrentReason reason)
{
    return std::ranges::find(a.reasons, reason) != a.reasons.end();
}

} // namespace

TEST_CASE("only earlier sessions at that site with that waveform count")
{
    const auto first = [](const Facts& d, CurrentReason reason) {
        const auto a = currentAdviceFor(d.on(kDay), Site::Hands, Waveform::Direct, kLimit);
        return a.reasons == std::vector{reason} && a.target == Milliamps{10} && !a.last;
    };
    CHECK(first(Facts(), CurrentReason::FirstTime));
    CHECK(first(Facts().add(sessionAt(12), kDay + 1), CurrentReason::FirstTime));
    CHECK(first(Facts().add(sessionAt(12, Comfort::Comfortable, Waveform::Pulsed), kDay), CurrentReason::NoReading));
    auto feet = sessionAt(12);
    feet.site = Site::Feet;
    CHECK(first(Facts().add(feet, kDay), CurrentReason::FirstTime));
    CHECK_FALSE(first(Facts().add(sessionAt(12), kDay), CurrentReason::FirstTime));
}

TEST_CASE("the first aim is at most what was agreed with whoever taught, and never above the limit")
{
    const auto taught = [](double level, Waveform waveform = Waveform::Direct) {
        return Facts().add(Taught{Site::Hands, "nurse", {}, waveform, Milliamps{level}}, kDay - 3);
    };
    const auto first = [](const Facts& d, Milliamps limit = kLimit) {
        return currentAdviceFor(d.on(kDay), Site::Hands, Waveform::Direct, limit);
    };
    CHECK(first(taught(7)).target == Milliamps{7});
    CHECK(first(taught(7)).reasons == std::vector{CurrentReason::AsAgreed});
    CHECK(first(taught(12)).target == Milliamps{10});
    CHECK(first(taught(12)).reasons == std::vector{CurrentReason::FirstTime});
    CHECK(first(taught(7), {4}).target == Milliamps{2}); // half of the limit
    CHECK(first(taught(7, Waveform::Pulsed)).target == Milliamps{10});
    // What was comfortable since then counts.
    CHECK(after(sessionAt(12), taught(7)).target == Milliamps{13});
    // A care sheet may agree on less.
    CareSheet sheet;
    sheet.who = "nurse";
    sheet.given = kDay - 2;
    sheet.sites = {Site::Hands};
    sheet.waveform = Waveform::Direct;
    sheet.level = Milliamps{5};
    CHECK(first(taught(7).add(sheet, kDay - 2)).target == Milliamps{5});
    sheet.level = Milliamps{9};
    CHECK(first(taught(7).add(sheet, kDay - 2)).target == Milliamps{7});
    CHECK(first(Facts().add(sheet, kDay - 2)).target == Milliamps{9});
}

TEST_CASE("the level steps up after comfortable, stays after strong and steps down after pain")
{
    CHECK(after(sessionAt(12)).target == Milliamps{13});
    CHECK(after(sessionAt(12, Comfort::NothingFelt)).target == Milliamps{13});
    CHECK(after(sessionAt(12, Comfort::Strong)).target == Milliamps{12});
    CHECK(says(after(sessionAt(12, Comfort::Strong)), CurrentReason::SameAgain));
    CHECK(after(sessionAt(12, Comfort::Unpleasant)).target == Milliamps{11});
    CHECK(after(sessionAt(12, Comfort::Painful)).target == Milliamps{11});
    CHECK(after(sessionAt(12, Comfort::Comfortable, Waveform::Pulsed)).target == Milliamps{14});
    CHECK(after(sessionAt(0.5, Comfort::Painful)).target == Milliamps{0});
    // A level called comfortable without more is one; a peak that nobody called so is not.
    auto silent = sessionAt(12);
    silent.comfort.reset();
    CHECK(after(silent).target == Milliamps{13});
    silent.comfortable.reset();
    silent.peak = Milliamps{14};
    CHECK(after(silent).target == Milliamps{14});
    auto broken = sessionAt(12);
    broken.completed = false;
    CHECK(after(broken).target == Milliamps{12});
    CHECK(says(after(broken), CurrentReason::AfterInterruption));
}

TEST_CASE("a blister or a burn counts as hurt, at the time or seen later on that skin")
{
    for (const SkinFinding finding : {SkinFinding::Blister, SkinFinding::Burn}) {
        auto s = sessionAt(12);
        s.skin = {finding};
        CHECK(says(after(s), CurrentReason::AfterIrritation));
        const auto seen = [&](DiarySite site, LocalDate on) {
            return says(after(sessionAt(12), Facts().add(SideEffect{site, {finding}, ""}, on)),
                        CurrentReason::AfterIrritation);
        };
        CHECK(seen(DiarySite::Hands, kDay - 1));
        CHECK(seen(DiarySite::Hands, kDay));
        CHECK_FALSE(seen(DiarySite::Hands, kDay - 2)); // before that session
        CHECK_FALSE(seen(DiarySite::Hands, kDay + 1));
        CHECK_FALSE(seen(DiarySite::Feet, kDay));
    }
    const auto red = after(sessionAt(12), Facts().add(SideEffect{DiarySite::Hands, {SkinFinding::Redness}, ""}, kDay));
    CHECK_FALSE(says(red, CurrentReason::AfterDiscomfort));
}

TEST_CASE("direct current not tolerated at 10 mA suggests pulsed; above 10 mA or with pulsed current nothing does")
{
    CHECK(says(after(sessionAt(10, Comfort::Painful)), CurrentReason::TryPulsed));
    CHECK_FALSE(says(after(sessionAt(10.5, Comfort::Painful)), CurrentReason::TryPulsed));
    CHECK_FALSE(says(after(sessionAt(10, Comfort::Painful, Waveform::Pulsed)), CurrentReason::TryPulsed));
}

TEST_CASE("the limit caps the advised level and is the first reason given")
{
    const auto a = after(sessionAt(20));
    CHECK(a.target == kLimit);
    CHECK(a.reasons.front() == CurrentReason::AtLimit);
    CHECK(after(sessionAt(19)).reasons.front() == CurrentReason::AfterComfortable);
}

TEST_CASE("only an older child comfortable at 20 mA pulsed is advised to try direct current")
{
    const auto told = [](const Session& s, std::optional<LocalDate> birth) {
        return says(after(s, Facts().add(Person{"Kim", birth, {}, {}, {}}, kDay - 9), {30}), CurrentReason::TryDirect);
    };
    const auto pulsed = sessionAt(20, Comfort::Comfortable, Waveform::Pulsed);
    CHECK(told(pulsed, day("2014-03-05")));       // twelve today
    CHECK_FALSE(told(pulsed, day("2014-03-06"))); // tomorrow
    CHECK(told(pulsed, day("2008-03-06")));       // not yet eighteen
    CHECK_FALSE(told(pulsed, day("2008-03-05")));
    CHECK_FALSE(told(pulsed, {}));
    CHECK_FALSE(says(after(pulsed, Facts(), {30}), CurrentReason::TryDirect));
    CHECK_FALSE(told(sessionAt(19.5, Comfort::Comfortable, Waveform::Pulsed), day("2014-03-05")));
    CHECK_FALSE(told(sessionAt(20, Comfort::Strong, Waveform::Pulsed), day("2014-03-05")));
    CHECK_FALSE(told(sessionAt(20, Comfort::Painful, Waveform::Pulsed), day("2014-03-05")));
    CHECK_FALSE(told(sessionAt(20), day("2014-03-05")));
    auto armpits = pulsed;
    armpits.site = Site::Armpits;
    CHECK_FALSE(told(armpits, day("2014-03-05")));
}

// First aims: our own choice, cautious.
TEST_CASE("the first aim is 10 mA direct, 15 mA pulsed, 4 mA at armpits, and never above half of the limit")
{
    const auto aim = [](Site site, Waveform waveform, double limit, const Facts& d = Facts()) {
        return currentAdviceFor(d.on(kDay), site, waveform, {limit}).target.mA;
    };
    CHECK(aim(Site::Feet, Waveform::Direct, 20) == 10);
    CHECK(aim(Site::Feet, Waveform::Pulsed, 30) == 15);
    CHECK(aim(Site::Armpits, Waveform::Pulsed, 12) == 4);
    CHECK(aim(Site::Armpits, Waveform::Pulsed, 6) == 3);
    CHECK(aim(Site::Hands, Waveform::Direct, 15) == 7.5);
    // Pulsed is felt about half as strongly as direct (common practice, no source).
    const auto hurt = Facts().add(sessionAt(6, Comfort::Unpleasant), kDay - 1);
    CHECK(aim(Site::Hands, Waveform::Pulsed, 30, hurt) == 12);
    CHECK(aim(Site::Hands, Waveform::Pulsed, 30, Facts().add(sessionAt(9, Comfort::Unpleasant), kDay - 1)) == 15);
}

// Our own choice, cautious.
TEST_CASE("after eight weeks at most two thirds of the last level, after six months the first aim")
{
    const auto target = [](int daysAgo) {
        const auto d = Facts().add(sessionAt(15), kDay - daysAgo);
        return currentAdviceFor(d.on(kDay), Site::Hands, Waveform::Direct, kLimit);
    };
    CHECK(target(55).target == Milliamps{16});
    CHECK(target(56).target == Milliamps{10});
    CHECK(says(target(56), CurrentReason::AfterLapse));
    CHECK(target(181).target == Milliamps{10});
    CHECK(target(182).target == Milliamps{10});
    // Another waveform at the same site is no lapse.
    auto pulsed = sessionAt(18, Comfort::Comfortable, Waveform::Pulsed);
    const auto d = Facts().add(sessionAt(15), kDay - 70).add(pulsed, kDay - 3);
    CHECK(currentAdviceFor(d.on(kDay), Site::Hands, Waveform::Direct, kLimit).target == Milliamps{16});
}

TEST_CASE("the longer a site went without a session, the lower the level advised, and the reason says which gap it was")
{
    // our own choice, cautious
    const auto after = [](double level, Comfort comfort, int days) {
        const auto d = Facts().add(sessionAt(level, comfort), kDay - days);
        return currentAdviceFor(d.on(kDay), Site::Hands, Waveform::Direct, kLimit);
    };
    const auto strong = after(18, Comfort::Comfortable, kAnewDays);
    CHECK(strong.target == Milliamps{10});
    CHECK(strong.reasons == std::vector{CurrentReason::StartAnew});
    CHECK(after(18, Comfort::Comfortable, kAnewDays - 1).reasons.front() == CurrentReason::AfterLapse);
    // Somebody for whom 6 mA was too much is not led to 10 mA because it was long ago.
    const auto sensitive = after(6, Comfort::Unpleasant, kAnewDays);
    CHECK(sensitive.target == Milliamps{4});
    CHECK(sensitive.reasons.front() == CurrentReason::AfterLapse);
    CHECK(rc::check([&](unsigned char mA, unsigned char comfort, unsigned short gap) {
        const auto felt = static_cast<Comfort>(comfort % 5);
        const int days = 1 + gap % 400;
        RC_ASSERT(after(mA % 21, felt, days + 1).target <= after(mA % 21, felt, days).target);
    }));
}

TEST_CASE("a site treated before without a reading is not called new")
{
    auto s = sessionAt(12);
    s.comfortable.reset();
    CHECK(after(s).target == Milliamps{10});
    CHECK(after(s).reasons == std::vector{CurrentReason::NoReading});
}

TEST_CASE("the first pulsed session is not lowered by direct current that was comfortable")
{
    const auto pulsed = [](Comfort comfort) {
        return currentAdviceFor(Facts().add(sessionAt(5, comfort), kDay - 1).on(kDay), Site::Hands, Waveform::Pulsed,
                                {30})
            .target;
    };
    CHECK(pulsed(Comfort::Comfortable) == Milliamps{15});
    CHECK(pulsed(Comfort::Unpleasant) == Milliamps{10});
}
