#include "core/situation/Keeper.h"
#include "outlook/UsualDays.h"

#include <algorithm>
#include <catch2/catch.hpp>

// Each condition of the comparison of session lengths by itself.
using namespace firstdew;
using namespace firstdew::facts;
using namespace firstdew::situation;
using build::day;
using build::Keeper;
using build::Kept;

namespace {

Session sessionAt(Site site, SetOf<SkinFinding> skin = {})
{
    Session s;
    s.site = site;
    s.skin = skin;
    return s;
}

/// Somebody who began a comparison four dry days ago.
Keeper comparing()
{
    Keeper k;
    k.begin();
    k.dryDays(4);
    return k;
}

std::optional<ComparisonEnd> endAfter(auto change)
{
    Keeper k = comparing();
    change(k);
    return k.compared().ended;
}

} // namespace

TEST_CASE("clammy at rest early in a spell calls in a comparison, where otherwise the app would watch")
{
    // Somebody whose spells are long: two days after a session a clammy day is rather a slip than a return.
    Keeper with(Kept{.spells = 0});
    for (int i = 0; i < 6; ++i)
        with.spell(40, {});
    Keeper without = with;
    with.begin();
    for (Keeper* k : {&with, &without}) {
        k->dryDays(2);
        k->today = k->today + 1;
        k->checkIn(Level::Clammy);
    }
    REQUIRE(without.now().advice == Advice::Watch);
    const auto s = with.now();
    CHECK(s.advice == Advice::FirstDewTopUp);
    CHECK(s.reasons.front().kind == ReasonKind::ClammyAtRest);
    CHECK(std::ranges::none_of(s.reasons, [](const Reason& r) { return r.kind == ReasonKind::ReturnLikely; }));
}

TEST_CASE("a comparison rests where sweating is likely after one wet report")
{
    Keeper k = comparing();
    for (int i = 0; i < 30; ++i) {
        k.today = k.today + 1;
        k.checkIn(Level::Clammy);
    }
    k.today = k.today + 1;
    k.checkIn(Level::Wet);
    const auto s = k.now();
    CHECK(s.advice == Advice::RestartCourse);
    REQUIRE_FALSE(s.comparison->ended);
    CHECK(s.comparison->rests == ComparisonRest::Sweating);
    CHECK_FALSE(k.asked());
}

TEST_CASE("only a session that the app led in one go counts in a comparison")
{
    const auto counts = [](auto change) {
        Keeper k = comparing();
        k.today = k.today + 1;
        k.session(k.asked());
        change(k);
        k.dryDays(2);
        return k.compared().under;
    };
    CHECK(counts([](Keeper&) {}));
    CHECK(counts([](Keeper& k) { k.happened(BathEventKind::Begin); }));
    for (const auto kind : {BathEventKind::OutOfWater, BathEventKind::Resumed, BathEventKind::Away})
        CHECK_FALSE(counts([&](Keeper& k) { k.happened(kind); }));
    // Feet are another skin.
    CHECK(counts([](Keeper& k) { k.session({}, true, Waveform::Direct, Site::Feet); }));

    const auto alone = [](auto session) {
        Keeper k = comparing();
        k.today = k.today + 1;
        session(k, k.asked());
        k.dryDays(2);
        return k.compared().under;
    };
    CHECK(alone([](Keeper& k, auto hold) { k.session(hold); }));
    CHECK_FALSE(alone([](Keeper& k, auto hold) { k.session(hold, true, Waveform::Direct, Site::HandFoot); }));
    CHECK_FALSE(
        alone([](Keeper& k, auto hold) { k.session(hold, true, Waveform::Direct, Site::Hands, Site::HandFoot); }));
    CHECK_FALSE(alone([](Keeper& k, auto) { // its settings are lost, events alone are kept
        Session s = sessionAt(Site::Hands);
        s.bath = "lost";
        BathEvent e;
        e.bath = "lost";
        e.event = BathEventKind::Begin;
        k.d.add(e, k.today, 20 * 60).add(s, k.today, 20 * 60 + 30);
    }));
}

TEST_CASE("the first thing that ends a comparison is the one that is told, in whatever order they are found")
{
    // Skin is looked at before other treatments, and both after leaving.
    Keeper k = comparing();
    const LocalDate began = k.today;
    k.dryDays(2);
    k.d.add(SideEffect{DiarySite::Hands, {SkinFinding::Burn}, {}}, k.today);
    Keeper earlier = k;
    earlier.d.add(OtherTreatment{OtherKind::Cream, {}, {}, began, {}}, k.today);
    CHECK(earlier.compared().ended == ComparisonEnd::OtherTreatment);
    CHECK(earlier.compared().endedOn == began);
    Keeper later = k;
    later.today = later.today + 1;
    later.d.add(OtherTreatment{OtherKind::Cream, {}, {}, later.today, {}}, later.today);
    CHECK(later.compared().ended == ComparisonEnd::Skin);
    CHECK(later.compared().endedOn == k.today);
    Keeper left = later;
    left.d.add(Comparison{DiarySite::Hands, false, 0.5, 0}, left.today, 21 * 60);
    CHECK(left.compared().ended == ComparisonEnd::Skin);
}

TEST_CASE("two wet reports end a comparison only at rest, close together and with no session between")
{
    const auto wet = [](Keeper& k, int after, SetOf<Circumstance> with = {}) {
        k.today = k.today + after;
        k.checkIn(Level::Wet, with);
    };
    CHECK(endAfter([&](Keeper& k) { wet(k, 1), wet(k, 1); }) == ComparisonEnd::Sweating);
    CHECK(endAfter([&](Keeper& k) { wet(k, 1), wet(k, kWetWithin); }) == ComparisonEnd::Sweating);
    CHECK_FALSE(endAfter([&](Keeper& k) { wet(k, 1), wet(k, kWetWithin + 1); }));
    CHECK_FALSE(endAfter([&](Keeper& k) { wet(k, 1), wet(k, 1, {Circumstance::Heat}); }));
    CHECK_FALSE(endAfter([&](Keeper& k) { wet(k, 1), k.dryDays(1), wet(k, 1); }));
    CHECK_FALSE(endAfter([&](Keeper& k) { wet(k, 1), k.session({}), wet(k, 1); }));
    CHECK(endAfter([&](Keeper& k) { wet(k, 1), wet(k, 1), k.session({}); }) == ComparisonEnd::Sweating);
    CHECK(endAfter([&](Keeper& k) {
              k.today = k.today + 1;
              k.session({});
              wet(k, 1), wet(k, 1);
          }) == ComparisonEnd::Sweating);
}

TEST_CASE("only a blister or burn at that skin since the beginning ends a comparison")
{
    const auto found = [](DiarySite site, SkinFinding what, int daysAgo) {
        return endAfter([&](Keeper& k) { k.d.add(SideEffect{site, {what}, {}}, k.today - daysAgo); });
    };
    CHECK(found(DiarySite::Hands, SkinFinding::Blister, 0) == ComparisonEnd::Skin);
    CHECK_FALSE(found(DiarySite::Feet, SkinFinding::Blister, 0));
    CHECK_FALSE(found(DiarySite::Hands, SkinFinding::Blister, 10));
    CHECK_FALSE(found(DiarySite::Hands, SkinFinding::Redness, 0));
    const auto after = [](Site site, SkinFinding what, int daysAgo) {
        return endAfter([&](Keeper& k) { k.d.add(sessionAt(site, {what}), k.today - daysAgo, 20 * 60 + 30); });
    };
    CHECK(after(Site::Hands, SkinFinding::Burn, 0) == ComparisonEnd::Skin);
    CHECK(after(Site::HandFoot, SkinFinding::Burn, 0) == ComparisonEnd::Skin);
    CHECK_FALSE(after(Site::Feet, SkinFinding::Burn, 0));
    CHECK_FALSE(after(Site::Hands, SkinFinding::Burn, 10));
    CHECK_FALSE(after(Site::Hands, SkinFinding::Redness, 0));
}

TEST_CASE("another treatment ends a comparison from the day on which both are there")
{
    const auto with = [](int from, std::optional<int> until) {
        Keeper k = comparing();
        OtherTreatment other{OtherKind::Cream, {}, {}, k.today + from, {}};
        if (until)
            other.until = k.today + *until;
        k.d.add(other, k.today);
        return k.compared().ended;
    };
    CHECK(with(0, {}) == ComparisonEnd::OtherTreatment);
    CHECK_FALSE(with(1, {}));
    CHECK(with(-30, -3) == ComparisonEnd::OtherTreatment);
    CHECK_FALSE(with(-30, -10));
}

TEST_CASE("a session with another kind of current than the first does not count, nor one whose spell tells nothing")
{
    Keeper k;
    k.begin();
    const auto pairOf = [&](Waveform waveform) {
        k.today = k.today + 1;
        k.session(k.asked(), true, waveform);
        k.dryDays(6);
        k.today = k.today + 1;
        k.checkIn(Level::Clammy);
    };
    pairOf(Waveform::Direct);
    pairOf(Waveform::Direct);
    k.session({});
    REQUIRE(k.compared().done.size() == 2);
    pairOf(Waveform::Pulsed);
    k.today = k.today + 1;
    CHECK(k.compared().done.size() == 2);
    pairOf(Waveform::Direct);
    k.session(k.asked());
    CHECK(k.compared().done.size() == 3);

    Keeper silent = comparing(); // treated again before any report: that length is asked for once more
    silent.today = silent.today + 1;
    const auto first = silent.asked();
    silent.session(first);
    CHECK(silent.asked() != first);
    silent.today = silent.today + 1;
    CHECK(silent.asked() == first);
    silent.session(silent.asked());
    silent.dryDays(2);
    CHECK(silent.asked() != first);
    CHECK(silent.compared().done.empty());
    CHECK(silent.compared().under);

    Keeper early = comparing(); // treated again while dry: the spell is open
    early.today = early.today + 1;
    early.session(early.asked());
    early.dryDays(5);
    early.session(early.asked());
    early.dryDays(1);
    REQUIRE(early.compared().done.size() == 1);
    CHECK(early.compared().done.front().held.left == 5);
    CHECK_FALSE(early.compared().done.front().held.right);

    Keeper left = comparing(); // left before the present spell says anything
    left.today = left.today + 1;
    left.session(left.asked());
    left.d.add(Comparison{DiarySite::Hands, false, 0.5, 0}, left.today, 21 * 60);
    CHECK(left.compared().done.empty());
}

TEST_CASE("a comparison is there from its day on, at its site alone")
{
    Keeper k;
    CHECK_FALSE(k.now().comparison);
    k.d.add(Comparison{DiarySite::Feet, true, 0.5, 1}, k.today, 21 * 60);
    CHECK_FALSE(k.now().comparison);
    k.d.add(Comparison{DiarySite::Hands, true, 0.5, 1}, k.today + 1, 21 * 60);
    CHECK_FALSE(k.now().comparison);
    k.today = k.today + 1;
    REQUIRE(k.now().comparison);
    CHECK(k.now().comparison->runs());
    CHECK_FALSE(heldIn(k.compared()));
}

TEST_CASE("whatever bars a session, and a change of what is treated, lets a comparison rest")
{
    const auto restAfter = [](auto change) {
        Keeper k = comparing();
        change(k);
        REQUIRE_FALSE(k.compared().ended);
        CHECK_FALSE(k.asked());
        return k.compared().rests;
    };
    CHECK(restAfter([](Keeper& k) { k.d.add(Person{"Ada", {}, {}, {}, {}}, k.today); }) == ComparisonRest::Barred);
    CHECK(restAfter([](Keeper& k) {
              k.d.add(Machine{"Invented", false, false, PolaritySwap::Leads, true, PowerSource::Mains, {}}, k.today);
          }) == ComparisonRest::Barred);
    CHECK(restAfter([](Keeper& k) {
              k.d.add(SiteUse{Site::Hands, false}, k.today).add(SiteUse{Site::HandFoot, true}, k.today);
          }) == ComparisonRest::OtherKind);
    Keeper nobody(Kept{.person = false});
    nobody.begin();
    nobody.dryDays(2);
    CHECK(nobody.compared().rests == ComparisonRest::Barred);
    // A burn of before, whose skin has not been looked at again, bars without ending.
    Keeper burnt;
    burnt.d.add(SideEffect{DiarySite::Hands, {SkinFinding::Burn}, {}}, burnt.today);
    burnt.today = burnt.today + 1;
    burnt.begin();
    CHECK(burnt.compared().rests == ComparisonRest::Barred);
}

TEST_CASE("a comparison in a diary without a check-in rests from the third day on")
{
    build::Facts d;
    const LocalDate began = day("2026-01-05");
    d.adult().screened(began);
    d.add(Machine{"Invented", true, true, PolaritySwap::Leads, true, PowerSource::Mains, {}}, began);
    d.add(SiteUse{Site::Hands, true}, began).add(Course{Site::Hands, CourseTemplate::Seven, {}, began, {}}, began);
    d.add(ReviewDone{Site::Hands, true}, began).add(Comparison{DiarySite::Hands, true, 0.5, 1}, began, 21 * 60);
    const auto at = [&](int days) { return assess(d.on(began + days)).sites.front().comparison.value(); };
    CHECK(at(0).runs());
    CHECK(at(kSilentDays - 1).runs());
    CHECK(at(kSilentDays).rests == ComparisonRest::NoCheckIns);
    // No session is in the record.
    d.checkIn(DiarySite::Hands, began + 1, Level::Dry);
    const auto s = assess(d.on(began + 1)).sites.front();
    CHECK(s.stage == Stage::KeepingDry);
    REQUIRE_FALSE(s.reasons.empty());
    CHECK(s.reasons.front().kind == ReasonKind::Comparing);
}

TEST_CASE("the length of the next session is asked for at the compared site alone")
{
    Keeper k;
    k.d.add(SiteUse{Site::Feet, true}, k.today);
    for (int seed = 0; !k.asked(); ++seed)
        k.begin(seed);
    const auto sites = assess(k.d.on(k.today)).sites;
    CHECK(comparedHold(sites, Site::Hands) == Seconds{300});
    CHECK_FALSE(comparedHold(sites, Site::Feet));
    CHECK_FALSE(comparedHold(sites, Site::Armpits));
}

TEST_CASE("a seed means the same order in every version, since a comparison may be under way")
{
    const auto firsts = [](int seed) {
        std::string out;
        for (int pair = 0; pair < outlook::kPairs; ++pair)
            out += shorterAt(seed, 2 * pair) ? 's' : 'u';
        return out;
    };
    // The parity of splitmix64. Of seed 1234567 the first five numbers are published (Rosetta Code, "Pseudo-random
    // numbers/Splitmix64", from memory): 6457827717110365317, 3203168211198807973, 9817491932198370423,
    // 4593380528125082431, 16408922859458223821.
    CHECK(firsts(1234567).substr(0, 5) == "sssss");
    CHECK(firsts(0) == "susususu");
    CHECK(firsts(1) == "ssussuss");
    CHECK(firsts(5) == "uusssuss");
}

TEST_CASE("each bar keeps a comparison from beginning by itself")
{
    const auto barOf = [](const Kept& kept) { return Keeper(kept).bar(); };
    CHECK_FALSE(barOf({}));
    CHECK(barOf({.person = false}) == ComparisonBar::AdultsOnly);
    CHECK(barOf({.course = false}) == ComparisonBar::NotKeepingDry);
    CHECK(barOf({.reviewed = false}) == ComparisonBar::NotKeepingDry);
    CHECK(barOf({.goesOn = false}) == ComparisonBar::NotKeepingDry);
    CHECK(barOf({.scored = false}) == ComparisonBar::NoResponse);
    CHECK(barOf({.spells = 3}) == ComparisonBar::FewSpells);

    const auto barAfter = [](auto change) {
        Keeper k;
        change(k);
        return k.bar();
    };
    CHECK_FALSE(barAfter([](Keeper& k) { // on the day of first dew too
        k.dryDays(8);
        k.today = k.today + 1;
        k.checkIn(Level::Clammy);
        REQUIRE(k.now().stage == Stage::FirstDew);
    }));
    CHECK_FALSE(barAfter([](Keeper& k) { // one that ended does not stand against the next
        k.begin();
        k.d.add(Comparison{DiarySite::Hands, false, 0.5, 0}, k.today, 21 * 60 + 1);
    }));
    CHECK_FALSE(barAfter([](Keeper& k) { k.d.add(SideEffect{DiarySite::Feet, {SkinFinding::Redness}, {}}, k.today); }));
    CHECK_FALSE(barAfter([](Keeper& k) { k.d.add(SideEffect{DiarySite::Hands, {SkinFinding::Fine}, {}}, k.today); }));
    CHECK(barAfter([](Keeper& k) { k.d.add(sessionAt(Site::Hands, {SkinFinding::Redness}), k.today, 22 * 60); }) ==
          ComparisonBar::SkinRecently);
    CHECK_FALSE(barAfter([](Keeper& k) { k.d.add(sessionAt(Site::Feet, {SkinFinding::Redness}), k.today, 22 * 60); }));
    CHECK(barAfter([](Keeper& k) { k.spell(9, Seconds{300}); }) == ComparisonBar::SessionsUnlike);
    for (const int since : {kSessionsBefore - 1, kSessionsBefore})
        CHECK(barAfter([&](Keeper& k) {
                  k.spell(9, Seconds{300});
                  for (int i = 0; i < since; ++i)
                      k.spell(9, {});
              }) == (since < kSessionsBefore ? std::optional(ComparisonBar::SessionsUnlike) : std::nullopt));
    CHECK(barAfter([](Keeper& k) {
              k.dryDays(9);
              k.session({}, true, Waveform::Pulsed);
          }) == ComparisonBar::SessionsUnlike);
    CHECK(barAfter([](Keeper& k) {
              k.dryDays(9);
              k.session({}, true, Waveform::Direct, Site::Hands, Site::HandFoot);
          }) == ComparisonBar::SessionsUnlike);
    // Spells that say nothing, or in which something else dried the skin, are not known.
    CHECK(barAfter([](Keeper& k) {
              k.d.add(OtherTreatment{OtherKind::Cream, {}, {}, k.today - 30, k.today - 1}, k.today);
          }) == ComparisonBar::FewSpells);
    Keeper open(Kept{.spells = 1});
    for (int i = 0; i < 6; ++i) {
        open.dryDays(6);
        open.session({});
    }
    CHECK(open.bar() == ComparisonBar::FewSpells);
    Keeper shorter(Kept{.spells = 14});
    for (int i = 0; i < 10 && !outlook::shorterToTell(shorter.now().forecast); ++i)
        shorter.spell(4, {});
    CHECK(shorter.bar() == ComparisonBar::Shortening);
}
