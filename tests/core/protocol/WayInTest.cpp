#include "protocol/WayIn.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

using namespace firstdew::protocol;
using build::day;
using build::Facts;

namespace {

const LocalDate kToday = day("2026-03-20");

Machine machine(PolaritySwap swap = PolaritySwap::Leads)
{
    return {"Invented", true, true, swap, true, PowerSource::Mains, {}};
}

BathEvent event(const std::string& bath, int sequence, BathEventKind kind, std::optional<Milliamps> reading = {})
{
    BathEvent e;
    e.bath = bath;
    e.sequence = sequence;
    e.event = kind;
    e.reading = reading;
    e.wallMs = sequence;
    return e;
}

/// A led session as it is kept, with what happened in it, and written down unless told otherwise.
void led(Facts& d, LocalDate on, BathPrepared how, const std::vector<BathEvent>& happened = {}, bool written = true,
         Session logged = {})
{
    how.bath = "b" + on.iso() + std::string(token(how.site));
    how.limit = Milliamps{20};
    d.add(how, on, 18 * 60);
    d.add(event(how.bath, 0, BathEventKind::Begin), on, 18 * 60);
    d.add(event(how.bath, 1, BathEventKind::SwitchedOn), on, 18 * 60);
    int sequence = 2;
    for (BathEvent e : happened) {
        e.bath = how.bath;
        e.sequence = sequence++;
        d.add(e, on, 18 * 60 + 1);
    }
    if (!written)
        return;
    logged.site = how.site;
    logged.waveform = how.waveform;
    logged.bath = how.bath;
    d.add(logged, on, 18 * 60 + 30);
}

BathPrepared hands(Waveform waveform = Waveform::Direct, WayOfWorking way = WayOfWorking::Helper)
{
    BathPrepared p;
    p.site = Site::Hands;
    p.waveform = waveform;
    p.way = way;
    return p;
}

/// Somebody with three good sessions of the hands, the last one a week ago.
Facts used()
{
    Facts d;
    d.adult().add(machine(), kToday - 100);
    for (const int ago : {21, 14, 7})
        d.session(Site::Hands, kToday - ago);
    return d;
}

std::optional<LongWayReason> reasonOf(const Facts& d, WayOfWorking way = WayOfWorking::Helper)
{
    return longWayReason(d.on(kToday), Site::Hands, way);
}

} // namespace

TEST_CASE("the first three sessions at a site are prepared line by line, and the fourth is not")
{
    Facts d;
    d.adult().add(machine(), kToday - 100);
    for (const int ago : {21, 14, 7}) {
        CHECK(reasonOf(d) == LongWayReason::FirstTimes);
        d.session(Site::Hands, kToday - ago);
    }
    CHECK_FALSE(reasonOf(d).has_value());
    CHECK(longWayReason(d.on(kToday), Site::Feet, WayOfWorking::FreeHand) == LongWayReason::FirstTimes);
}

TEST_CASE("a session that was stopped early does not count among the first three")
{
    Facts d;
    d.adult().add(machine(), kToday - 100);
    Session early;
    early.site = Site::Hands;
    early.completed = false;
    d.add(early, kToday - 30).session(Site::Hands, kToday - 14).session(Site::Hands, kToday - 7);
    CHECK(reasonOf(d) == LongWayReason::FirstTimes);
}

TEST_CASE("after twenty-eight days without a session there the list is gone through again")
{
    CHECK_FALSE(longWayReason(used().on(kToday - 7 + 27), Site::Hands, WayOfWorking::Helper).has_value());
    CHECK(longWayReason(used().on(kToday - 7 + 28), Site::Hands, WayOfWorking::Helper) == LongWayReason::LongAgo);
}

TEST_CASE("whatever went wrong in the latest session of that skin brings the list back")
{
    const auto kind = GENERATE(BathEventKind::Discomfort, BathEventKind::OutOfWater, BathEventKind::Stop,
                               BathEventKind::Away, BathEventKind::Resumed);
    Facts d = used();
    led(d, kToday - 2, hands(), {event("", 0, kind)});
    CHECK(reasonOf(d) == LongWayReason::Incident);
    led(d, kToday - 1, hands());
    CHECK_FALSE(reasonOf(d).has_value());
}

TEST_CASE("a reading above the limit is an incident, one at the limit is not")
{
    Facts d = used();
    led(d, kToday - 2, hands(), {event("", 0, BathEventKind::Reading, Milliamps{20})});
    CHECK_FALSE(reasonOf(d).has_value());
    led(d, kToday - 1, hands(), {event("", 0, BathEventKind::Reading, Milliamps{20.5})});
    CHECK(reasonOf(d) == LongWayReason::Incident);
}

TEST_CASE("a session with current that was never written down is an incident")
{
    Facts d = used();
    led(d, kToday - 2, hands(), {}, false);
    CHECK(reasonOf(d) == LongWayReason::Incident);
}

TEST_CASE("how the session felt, and the skin then and since, bring the list back; redness that passes does not")
{
    const auto with = [](std::optional<Comfort> comfort, SetOf<SkinFinding> skin, bool completed = true) {
        Facts d = used();
        Session s;
        s.site = Site::Hands;
        s.comfort = comfort;
        s.skin = skin;
        s.completed = completed;
        return d.add(s, kToday - 1, 18 * 60);
    };
    CHECK_FALSE(reasonOf(with(Comfort::Strong, {SkinFinding::Redness})).has_value());
    CHECK_FALSE(reasonOf(with(Comfort::Comfortable, {SkinFinding::Dryness})).has_value());
    CHECK(reasonOf(with(Comfort::Unpleasant, {})) == LongWayReason::Incident);
    CHECK(reasonOf(with(Comfort::Painful, {})) == LongWayReason::Incident);
    for (const auto finding : {SkinFinding::Itch, SkinFinding::Pain, SkinFinding::Blister, SkinFinding::Burn})
        CHECK(reasonOf(with({}, {finding})) == LongWayReason::Incident);
    CHECK(reasonOf(with({}, {}, false)) == LongWayReason::Incident);
    Facts later = with(Comfort::Comfortable, {});
    later.add(SideEffect{DiarySite::Feet, {SkinFinding::Redness}, ""}, kToday);
    CHECK_FALSE(reasonOf(later).has_value());
    later.add(SideEffect{DiarySite::Hands, {SkinFinding::Redness}, ""}, kToday);
    CHECK(reasonOf(later) == LongWayReason::Incident);
}

TEST_CASE("an incident in a session that treats hands and feet counts for both")
{
    Facts d = used();
    Session both;
    both.site = Site::HandFoot;
    both.comfort = Comfort::Painful;
    d.add(both, kToday - 1, 18 * 60);
    CHECK(reasonOf(d) == LongWayReason::Incident);
}

TEST_CASE("another machine, or another way of swapping, is prepared line by line")
{
    Facts d = used();
    led(d, kToday - 1, hands());
    CHECK_FALSE(reasonOf(d).has_value());
    Facts swapped = d;
    swapped.add(machine(PolaritySwap::Switch), kToday);
    CHECK(reasonOf(swapped) == LongWayReason::OtherKit);
    Session named;
    named.machine = "Older";
    Facts other = used();
    led(other, kToday - 1, hands(), {}, true, named);
    CHECK(reasonOf(other) == LongWayReason::OtherKit);
    Facts none;
    none.adult();
    for (const int ago : {21, 14, 7})
        none.session(Site::Hands, kToday - ago);
    CHECK(reasonOf(none) == LongWayReason::OtherKit);
}

TEST_CASE("both hands under water are prepared line by line until that was led once")
{
    Facts d = used();
    CHECK(reasonOf(d, WayOfWorking::HandsUnder) == LongWayReason::HandsUnder);
    led(d, kToday - 2, hands(Waveform::Direct, WayOfWorking::HandsUnder));
    CHECK_FALSE(reasonOf(d, WayOfWorking::HandsUnder).has_value());
}

TEST_CASE("choices of the last session at a site are offered again, whatever was done elsewhere since")
{
    Facts d = used();
    led(d, kToday - 2, hands(Waveform::Pulsed, WayOfWorking::HandsUnder));
    BathPrepared both = hands();
    both.site = Site::HandFoot;
    both.way = WayOfWorking::FreeHand;
    both.firstSide = Side::Left;
    led(d, kToday - 1, both);
    d.checkIn(DiarySite::Hands, kToday, Level::Dry);
    CHECK(choiceFor(d.on(kToday), Site::Hands) ==
          SessionChoice{Waveform::Pulsed, WayOfWorking::HandsUnder, Side::Right});
    CHECK(choiceFor(d.on(kToday), Site::HandFoot) ==
          SessionChoice{Waveform::Direct, WayOfWorking::FreeHand, Side::Left});
    CHECK(choiceFor(d.on(kToday), Site::Feet) == SessionChoice{Waveform::Direct, WayOfWorking::FreeHand, Side::Right});
}

TEST_CASE("a choice that is not open any more gives way to what is")
{
    Facts d = used();
    led(d, kToday - 2, hands(Waveform::Pulsed, WayOfWorking::HandsUnder));
    SECTION("the remote control is gone")
    {
        Machine bare = machine();
        bare.remote = false;
        d.add(bare, kToday);
        CHECK(choiceFor(d.on(kToday), Site::Hands).way == WayOfWorking::Helper);
    }
    SECTION("the machine has no pulsed current")
    {
        Machine direct = machine();
        direct.pulsed = false;
        d.add(direct, kToday);
        CHECK(choiceFor(d.on(kToday), Site::Hands).waveform == Waveform::Direct);
    }
    SECTION("the prescriber set another waveform")
    {
        CareSheet sheet;
        sheet.who = "Dr Vance";
        sheet.given = kToday;
        sheet.waveform = Waveform::Direct;
        d.add(sheet, kToday);
        CHECK(choiceFor(d.on(kToday), Site::Hands).waveform == Waveform::Direct);
    }
    SECTION("it is a child's session")
    {
        d.add(Person{"Ada", kToday - 4000, {}, {}, {}}, kToday);
        CHECK(choiceFor(d.on(kToday), Site::Hands).way == WayOfWorking::Helper);
    }
}

TEST_CASE("direct current that was not tolerated is not offered again as the last choice")
{
    Facts d = used();
    Session s;
    s.comfort = Comfort::Unpleasant;
    s.comfortable = Milliamps{8};
    led(d, kToday - 1, hands(), {}, true, s);
    CHECK(choiceFor(d.on(kToday), Site::Hands).waveform == Waveform::Pulsed);
}

TEST_CASE("feet follow hands where they did so the last time, and not where they were treated today already")
{
    Facts d = used();
    d.session(Site::Hands, kToday);
    CHECK_FALSE(usuallyFollowedBy(d.on(kToday), Site::Hands).has_value());
    Facts pair = used();
    pair.session(Site::Feet, kToday - 7);
    CHECK_FALSE(usuallyFollowedBy(pair.on(kToday), Site::Hands).has_value()); // the hands are not done
    pair.session(Site::Hands, kToday);
    CHECK(usuallyFollowedBy(pair.on(kToday), Site::Hands) == Site::Feet);
    pair.session(Site::Feet, kToday);
    CHECK_FALSE(usuallyFollowedBy(pair.on(kToday), Site::Hands).has_value());
    CHECK_FALSE(usuallyFollowedBy(pair.on(kToday), Site::Armpits).has_value());
}

TEST_CASE("a stop that stands is an incident, one that was taken back is none")
{
    Facts d = used();
    led(d, kToday - 2, hands(), {event("", 0, BathEventKind::StopPressed), event("", 0, BathEventKind::StopTakenBack)});
    CHECK_FALSE(reasonOf(d).has_value());
    led(d, kToday - 1, hands(), {event("", 0, BathEventKind::StopPressed)});
    CHECK(reasonOf(d) == LongWayReason::Incident);
}

TEST_CASE("a reading without a number, or of a session whose limit is not known, is no incident")
{
    Facts d = used();
    led(d, kToday - 2, hands(), {event("", 0, BathEventKind::Reading)});
    CHECK_FALSE(reasonOf(d).has_value());
    Facts bare = used();
    bare.add(event("lost", 0, BathEventKind::Reading, Milliamps{99}), kToday - 1, 18 * 60);
    Session s;
    s.bath = "lost";
    bare.add(s, kToday - 1, 19 * 60);
    CHECK_FALSE(reasonOf(bare).has_value());
}

TEST_CASE("what was led and never written down is an incident where that skin had current, from that day on")
{
    const auto with = [](BathPrepared how, LocalDate on, bool current) {
        Facts d = used();
        how.bath = "b";
        d.add(how, on, 18 * 60).add(event("b", 0, BathEventKind::Begin), on, 18 * 60);
        if (current)
            d.add(event("b", 1, BathEventKind::SwitchedOn), on, 18 * 60);
        return incidentAtLatest(d.on(kToday), Site::Hands);
    };
    CHECK(with(hands(), kToday - 7, true)); // the day of the latest session
    CHECK_FALSE(with(hands(), kToday - 8, true));
    CHECK_FALSE(with(hands(), kToday - 1, false));
    BathPrepared feet = hands();
    feet.site = Site::Feet;
    CHECK_FALSE(with(feet, kToday - 1, true));
    feet.site = Site::HandFoot;
    CHECK(with(feet, kToday - 1, true));
    CHECK_FALSE(incidentAtLatest(Facts().on(kToday), Site::Hands));
    Facts never; // no session there was ever written down
    led(never, kToday - 1, hands(), {}, false);
    CHECK(incidentAtLatest(never.on(kToday), Site::Hands));
    Facts lost = used(); // what was prepared is not known
    lost.add(event("lost", 0, BathEventKind::SwitchedOn), kToday - 1, 18 * 60);
    CHECK_FALSE(incidentAtLatest(lost.on(kToday), Site::Hands));
}

TEST_CASE("skin that suffered before the latest session, or is only dry, brings no list back")
{
    const auto with = [](SkinFinding finding, LocalDate on) {
        return incidentAtLatest(used().add(SideEffect{DiarySite::Hands, {finding}, ""}, on).on(kToday), Site::Hands);
    };
    CHECK_FALSE(with(SkinFinding::Redness, kToday - 8));
    CHECK(with(SkinFinding::Redness, kToday - 7));
    CHECK(with(SkinFinding::Burn, kToday - 1));
    CHECK_FALSE(with(SkinFinding::Dryness, kToday - 1));
}

TEST_CASE("the same machine by its name, and led sessions elsewhere or not written down, are no other kit")
{
    Session named;
    named.machine = machine().name;
    Facts d = used();
    led(d, kToday - 3, hands(), {}, true, named);
    CHECK_FALSE(reasonOf(d).has_value());
    BathPrepared other = hands();
    other.swap = PolaritySwap::Switch;
    other.site = Site::Armpits;
    led(d, kToday - 2, other);
    CHECK_FALSE(reasonOf(d).has_value());
    other.site = Site::Hands;
    other.bath = "begun";
    d.add(other, kToday - 1, 18 * 60).add(event("begun", 0, BathEventKind::Begin), kToday - 1, 18 * 60);
    CHECK_FALSE(reasonOf(d).has_value());
}

TEST_CASE("hands under that were only begun, or led another way, were not led once")
{
    Facts d = used();
    led(d, kToday - 3, hands());
    CHECK(reasonOf(d, WayOfWorking::HandsUnder) == LongWayReason::HandsUnder);
    BathPrepared begun = hands(Waveform::Direct, WayOfWorking::HandsUnder);
    begun.bath = "begun";
    d.add(begun, kToday - 1, 18 * 60).add(event("begun", 0, BathEventKind::Begin), kToday - 1, 18 * 60);
    CHECK(reasonOf(d, WayOfWorking::HandsUnder) == LongWayReason::HandsUnder);
}

TEST_CASE("of several sessions led on one day the one that began last is offered again")
{
    Facts d = used();
    const auto prepared = [&](const std::string& bath, Side side, LocalDate on, std::optional<long long> beganMs) {
        BathPrepared p = hands();
        p.site = Site::HandFoot;
        p.firstSide = side;
        p.bath = bath;
        d.add(p, on, 18 * 60);
        if (!beganMs)
            return;
        BathEvent e = event(bath, 0, BathEventKind::Begin);
        e.wallMs = *beganMs;
        d.add(e, on, 18 * 60);
    };
    const auto side = [&] { return choiceFor(d.on(kToday), Site::HandFoot).firstSide; };
    prepared("b", Side::Left, kToday - 1, 9);
    CHECK(side() == Side::Left);
    prepared("c", Side::Right, kToday - 1, 5); // began earlier
    CHECK(side() == Side::Left);
    prepared("d", Side::Right, kToday - 1, {}); // never began
    CHECK(side() == Side::Left);
    prepared("e", Side::Right, kToday - 3, 99); // on an earlier day
    CHECK(side() == Side::Left);
    d.add(event("f", 0, BathEventKind::Begin), kToday, 18 * 60); // of nothing that was prepared
    CHECK(side() == Side::Left);
    prepared("a", Side::Right, kToday - 1, 12);
    CHECK(side() == Side::Right);
    prepared("h", Side::Left, kToday - 1, 15);
    CHECK(side() == Side::Left);
    prepared("g", Side::Right, kToday, 1);
    CHECK(side() == Side::Right);
}

TEST_CASE("the waveform of the last session is offered again, led or not")
{
    Facts d = used();
    const auto waveform = [&] { return choiceFor(d.on(kToday), Site::Hands).waveform; };
    d.session(Site::Hands, kToday - 5, Waveform::Pulsed);
    CHECK(waveform() == Waveform::Pulsed);
    led(d, kToday - 4, hands());
    CHECK(waveform() == Waveform::Direct);
    d.session(Site::Hands, kToday - 3, Waveform::Pulsed); // without the phone
    CHECK(waveform() == Waveform::Pulsed);
    Facts begun; // led, and never written down
    begun.adult().add(machine(), kToday - 9);
    led(begun, kToday - 1, hands(Waveform::Pulsed), {}, false);
    CHECK(choiceFor(begun.on(kToday), Site::Hands).waveform == Waveform::Pulsed);
    Facts nobody; // of unknown age: as a child
    nobody.add(machine(), kToday - 9);
    CHECK(choiceFor(nobody.on(kToday), Site::Hands).waveform == Waveform::Pulsed);
}

TEST_CASE("hands follow feet as well, and only where both were completed the last time")
{
    const auto after = [](const Facts& d, Site site) { return usuallyFollowedBy(d.on(kToday), site); };
    Facts pair = used();
    pair.session(Site::Feet, kToday - 7).session(Site::Feet, kToday);
    CHECK(after(pair, Site::Feet) == Site::Hands);
    Session early;
    early.site = Site::Feet;
    early.completed = false;
    Facts stopped = used();
    stopped.session(Site::Feet, kToday - 7).add(early, kToday - 1).session(Site::Hands, kToday);
    CHECK(after(stopped, Site::Hands) == Site::Feet); // what was stopped early changes no habit
    early.site = Site::Hands;
    Facts hand = used();
    hand.session(Site::Feet, kToday - 7).add(early, kToday - 1).session(Site::Hands, kToday);
    CHECK(after(hand, Site::Hands) == Site::Feet);
    Facts apart = used();
    apart.session(Site::Feet, kToday - 6).session(Site::Hands, kToday);
    CHECK_FALSE(after(apart, Site::Hands).has_value()); // not on one day
    Facts since = used();
    since.session(Site::Feet, kToday - 14).session(Site::Hands, kToday);
    CHECK_FALSE(after(since, Site::Hands).has_value()); // the hands alone the last time
}
