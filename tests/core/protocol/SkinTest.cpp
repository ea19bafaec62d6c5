#include "protocol/Skin.h"

#include "core/Build.h"
#include "protocol/CurrentAdvice.h"
#include "protocol/MayBegin.h"
#include "situation/Assess.h"
#include "situation/Reminders.h"

#include <catch2/catch.hpp>

using namespace firstdew;
using namespace firstdew::protocol;
using build::day;
using build::Facts;

namespace {

const LocalDate kDay = day("2026-03-05");

Facts person() { return Facts().adult().screened(kDay); }

Session sessionWith(SetOf<SkinFinding> skin, Site site = Site::Hands, bool completed = true)
{
    Session s;
    s.site = site;
    s.comfortable = Milliamps{12};
    s.comfort = Comfort::Comfortable;
    s.completed = completed;
    s.skin = skin;
    return s;
}

std::string refusal(const Facts& d, Site site = Site::Hands, LocalDate today = kDay)
{
    const auto may = mayBegin(d.on(today), site, Waveform::Direct);
    return may ? "" : may.error().code;
}

} // namespace

TEST_CASE("a blister or burn recorded on any page bars every session that treats that skin")
{
    for (const SkinFinding finding : {SkinFinding::Blister, SkinFinding::Burn}) {
        const auto after = person().add(sessionWith({finding}), kDay - 2);
        CHECK(refusal(after) == "skin-bars");
        CHECK(refusal(after, Site::HandFoot) == "skin-bars");
        CHECK(refusal(after, Site::Feet).empty());
        CHECK(refusal(person().add(sessionWith({finding}, Site::Hands, false), kDay - 2)) == "skin-bars");
        CHECK(refusal(person().add(SideEffect{DiarySite::Hands, {finding}, ""}, kDay - 2)) == "skin-bars");
        CHECK(refusal(person().add(sessionWith({finding}, Site::HandFoot), kDay - 2), Site::Feet) == "skin-bars");
        // However long ago.
        CHECK(skinBar(after.on(kDay + 400), DiarySite::Hands)->since == kDay - 2);
    }
    CHECK(refusal(person().add(sessionWith({SkinFinding::Redness, SkinFinding::Itch}), kDay - 2)).empty());
}

TEST_CASE("only a clinician's clearance, named, dated on that day or later and recorded after it, frees the skin")
{
    const auto burned = person().add(sessionWith({SkinFinding::Burn}), kDay - 2);
    const auto with = [&](SkinClearance clearance, LocalDate recorded) {
        return refusal(Facts(burned).add(clearance, recorded));
    };
    CHECK(with({DiarySite::Hands, "Dr Vance", kDay - 1}, kDay - 1).empty());
    CHECK(with({DiarySite::Hands, "Dr Vance", kDay - 2}, kDay - 1).empty());
    CHECK(with({DiarySite::Hands, "Dr Vance", kDay - 3}, kDay - 1) == "skin-bars");
    CHECK(with({DiarySite::Hands, "Dr Vance", kDay + 1}, kDay - 1) == "skin-bars");
    CHECK(with({DiarySite::Hands, "", kDay - 1}, kDay - 1) == "skin-bars");
    CHECK(with({DiarySite::Feet, "Dr Vance", kDay - 1}, kDay - 1) == "skin-bars");
    // A new blister after the word bars again.
    const auto again = Facts(burned)
                           .add(SkinClearance{DiarySite::Hands, "Dr Vance", kDay - 1}, kDay - 1)
                           .add(SideEffect{DiarySite::Hands, {SkinFinding::Blister}, ""}, kDay - 1);
    CHECK(refusal(again) == "skin-bars");
}

TEST_CASE("a barred site has no call and no session reminder, and gives the reason")
{
    auto d = person().add(SiteUse{Site::Hands, true}, kDay - 60);
    for (int i = 40; i > 1; i -= 8)
        d.session(Site::Hands, kDay - i);
    d.checkIn(DiarySite::Hands, kDay - 1, Level::Clammy).checkIn(DiarySite::Hands, kDay, Level::Clammy);
    REQUIRE(situation::assess(d.on(kDay)).sites.at(0).advice == situation::Advice::FirstDewTopUp);
    d.add(SideEffect{DiarySite::Hands, {SkinFinding::Blister}, ""}, kDay);
    const auto s = situation::assess(d.on(kDay)).sites.at(0);
    CHECK(s.advice == situation::Advice::Blocked);
    REQUIRE_FALSE(s.reasons.empty());
    CHECK(s.reasons.front().kind == situation::ReasonKind::SkinBars);
    CHECK(s.reasons.front().finding == SkinFinding::Blister);
    CHECK_FALSE(s.nextSession);
    for (const auto& r : situation::todaysReminders(d.on(kDay), {21 * 60}).standing)
        CHECK((r.kind != situation::ReminderKind::FirstDew && r.kind != situation::ReminderKind::TopUpDue));
}

TEST_CASE("skin irritated on the next day lowers the level by 2 mA, pulsed by 4 mA")
{
    const auto target = [](Waveform waveform, SetOf<SkinFinding> skin, int daysAfter) {
        auto s = sessionWith({});
        s.waveform = waveform;
        const auto d = person().add(s, kDay - 4).add(SideEffect{DiarySite::Hands, skin, ""}, kDay - 4 + daysAfter);
        return currentAdviceFor(d.on(kDay), Site::Hands, waveform, {20}).target.mA;
    };
    for (const SkinFinding finding : {SkinFinding::Redness, SkinFinding::Itch, SkinFinding::Pain}) {
        CHECK(target(Waveform::Direct, {finding}, 1) == 10);
        CHECK(target(Waveform::Pulsed, {finding}, 1) == 8);
        CHECK(target(Waveform::Direct, {finding}, 0) == 13); // gone by the evening
    }
    CHECK(target(Waveform::Direct, {SkinFinding::Dryness}, 1) == 13);
    CHECK(target(Waveform::Direct, {SkinFinding::Burn}, 0) == 10);
}

TEST_CASE("a word given before a burn was written down frees nothing of it, whatever the days are")
{
    const SideEffect burn{DiarySite::Hands, {SkinFinding::Burn}, ""};
    const SkinClearance word{DiarySite::Hands, "Dr Vance", kDay - 2};
    // The burn of an earlier day is written down after the word about another one.
    auto late = person().add(burn, kDay - 9).add(word, kDay - 2);
    CHECK(refusal(late).empty());
    CHECK(refusal(late.add(burn, kDay - 4)) == "skin-bars");
    CHECK(refusal(late.add(SkinClearance{DiarySite::Hands, "Dr Vance", kDay}, kDay)).empty());
    // A session called fine is corrected to a burn after the word.
    auto session = sessionWith({SkinFinding::Fine});
    Facts d = person();
    d.add(session, kDay - 5).add(word, kDay - 2);
    std::vector<Fact> facts = d.facts();
    Fact corrected = facts[facts.size() - 2];
    corrected.corrects = corrected.id;
    corrected.id = "corrected";
    corrected.recordedMs = 1000;
    std::get<Session>(corrected.payload).skin = {SkinFinding::Burn};
    facts.push_back(corrected);
    CHECK(skinBar(diary::readDiary(facts, "p1", kDay), DiarySite::Hands));
}

TEST_CASE("a burn dated ahead, by a clock that was wrong, bars until a later word")
{
    auto d = person().add(SideEffect{DiarySite::Hands, {SkinFinding::Burn}, ""}, kDay + 30);
    CHECK(refusal(d) == "skin-bars");
    CHECK(refusal(person().add(sessionWith({SkinFinding::Blister}), kDay + 30)) == "skin-bars");
    CHECK(refusal(d.add(SkinClearance{DiarySite::Hands, "Dr Vance", kDay}, kDay)).empty());
}

TEST_CASE("a clinician has a name that can be read")
{
    for (const char* name : {"", " ", "\t", "\u00A0", "\u2003\u200B ", "\uFEFF"}) {
        CAPTURE(name);
        CHECK(isBlank(name));
        const auto burned = person().add(sessionWith({SkinFinding::Burn}), kDay - 2);
        CHECK(refusal(Facts(burned).add(SkinClearance{DiarySite::Hands, name, kDay - 1}, kDay - 1)) == "skin-bars");
    }
    for (const char* name : {"x", " x", "\u00A0Å"})
        CHECK_FALSE(isBlank(name));
}

TEST_CASE("of several harms the latest one is named, and other skin's is not")
{
    auto d = person().add(sessionWith({SkinFinding::Burn}), kDay - 4);
    d.add(SideEffect{DiarySite::Hands, {SkinFinding::Blister}, ""}, kDay - 6);
    d.add(SideEffect{DiarySite::Feet, {SkinFinding::Blister}, ""}, kDay - 1);
    CHECK(skinBar(d.on(kDay), DiarySite::Hands)->since == kDay - 4);
    CHECK(skinBar(d.on(kDay), DiarySite::Hands)->finding == SkinFinding::Burn);
    d.add(SideEffect{DiarySite::Hands, {SkinFinding::Blister}, ""}, kDay - 2);
    CHECK(skinBar(d.on(kDay), DiarySite::Hands)->since == kDay - 2);
    CHECK(skinBar(d.on(kDay), DiarySite::Hands)->finding == SkinFinding::Blister);
    CHECK(skinBar(d.on(kDay), DiarySite::Feet)->since == kDay - 1);
    CHECK_FALSE(skinBar(d.on(kDay), DiarySite::Armpits));
}
