#include "core/Build.h"
#include "core/bath/Run.h"

#include <catch2/catch.hpp>

// What a skin had earlier on the day.
using namespace build;

namespace {

/// The led session as facts of that day.
void addLed(Facts& d, const Run& run, const std::string& bath, LocalDate on)
{
    d.add(preparationOf(Run(run.state.script.request, run.state.before).state, bath), on);
    for (BathEvent e : run.kept) {
        e.bath = bath;
        d.add(e, on);
    }
}

} // namespace

TEST_CASE("the sessions of today that treated that skin, led or not, are what it had today")
{
    const LocalDate today = day("2026-03-05");
    Run run(request(Site::HandFoot));
    run.toHold();
    run.pass(60);
    REQUIRE(run.send(BathEventKind::Stop));
    Facts d;
    CHECK(earlierToday(d.on(today), Site::Hands).runs == 0);
    addLed(d, run, "b1", today);
    addLed(d, run, "b0", today - 1);
    const Before had = earlierToday(d.on(today), Site::Hands);
    CHECK(had.runs == 1);
    CHECK(had.charge.mAmin == Approx(14));
    CHECK(earlierToday(d.on(today), Site::Feet) == had);
    CHECK(earlierToday(d.on(today), Site::Armpits).runs == 0);
    // Written down, it counts once.
    Session s;
    s.site = Site::HandFoot;
    s.completed = false;
    s.bath = "b1";
    d.add(s, today);
    CHECK(earlierToday(d.on(today), Site::Hands) == had);
    // One without the phone, with its charge or without.
    s.bath.clear();
    s.charge = MilliampMinutes{100};
    d.add(s, today);
    CHECK(earlierToday(d.on(today), Site::Hands).runs == 2);
    CHECK(earlierToday(d.on(today), Site::Hands).charge.mAmin == Approx(114));
    CHECK_FALSE(enoughToday(d.on(today), Site::Hands));
    s.charge.reset();
    d.add(s, today);
    CHECK(earlierToday(d.on(today), Site::Hands).runs == 3);
    CHECK(enoughToday(d.on(today), Site::Hands));
    CHECK_FALSE(enoughToday(d.on(today), Site::Armpits));
    CHECK(mayPrepare(d.on(today), Site::Hands, Waveform::Direct, WayOfWorking::FreeHand).error().code ==
          "enough-for-today");
}

TEST_CASE("one led session of today that had all the charge of a day is enough for that skin")
{
    const LocalDate today = day("2026-03-05");
    Run run(request(Site::Feet), {1, {1.5 * 14 * 30}});
    Facts d;
    addLed(d, run, "b1", today);
    CHECK_FALSE(enoughToday(d.on(today), Site::Feet)); // it never began
    Session s;
    s.site = Site::Feet;
    s.completed = false;
    s.charge = MilliampMinutes{1.5 * 14 * 30};
    d.add(s, today);
    CHECK(enoughToday(d.on(today), Site::Feet));
}

TEST_CASE("a led session of today whose events do not follow from each other counts for nothing")
{
    const LocalDate today = day("2026-03-05");
    Run run(request(Site::Feet));
    run.toHold();
    Facts d;
    run.kept.front().event = BathEventKind::Swapped;
    addLed(d, run, "b1", today);
    d.add(BathEvent{}, today); // of nothing that was prepared
    CHECK(earlierToday(d.on(today), Site::Feet).runs == 0);
}
