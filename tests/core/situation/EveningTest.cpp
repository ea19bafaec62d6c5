#include "situation/Assess.h"
#include "situation/Reminders.h"

#include "core/Build.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace firstdew::situation;
using build::day;
using build::Facts;

namespace {

const LocalDate kStart = day("2026-01-05");
constexpr int kBeforeCheckIn = 18 * 60;

/// Sessions every tenth day, before the check-in of their day; the days between are dry. The last one is on the day
/// returned.
std::pair<Facts, LocalDate> keptDry()
{
    Facts d;
    d.adult().screened(kStart - 1);
    LocalDate last = kStart;
    for (int n = 0; n < 6; ++n, last = last + 10) {
        d.session(Site::Hands, last, Waveform::Direct, kBeforeCheckIn);
        for (int i = 1; i < 10; ++i)
            d.checkIn(DiarySite::Hands, last + i, Level::Dry);
    }
    return {d, last};
}

/// Whether the phone plans a call of that day's first dew already on the day before, in case nobody opens the app.
bool plannedFor(const Facts& d, LocalDate day)
{
    return std::ranges::any_of(upcomingReminders(d.on(day - 1), {22 * 60}),
                               [&](const Reminder& r) { return r.kind == ReminderKind::FirstDew && r.at.date == day; });
}

SiteSituation hands(const Facts& d, LocalDate today) { return assess(d.on(today)).sites.at(0); }

} // namespace

TEST_CASE("dampness in the evening after a session on damp skin calls for a second one the next day")
{
    auto [d, last] = keptDry();
    d.checkIn(DiarySite::Hands, last - 1, Level::Clammy);
    d.session(Site::Hands, last, Waveform::Direct, kBeforeCheckIn);
    CHECK(hands(d, last + 1).advice == Advice::None);

    auto clammy = d;
    clammy.checkIn(DiarySite::Hands, last, Level::Clammy);
    CHECK(hands(clammy, last).advice == Advice::None); // the skin had its session
    CHECK(hands(clammy, last + 1).advice == Advice::FirstDewTopUp);
    CHECK(hands(clammy, last + 1).forecast.today.dry < hands(d, last + 1).forecast.today.dry);
    CHECK(plannedFor(clammy, last + 1));
    CHECK_FALSE(plannedFor(d, last + 1));
    // The second session follows dampness as well, although that was said before the first one's day was over.
    clammy.session(Site::Hands, last + 1, Waveform::Direct, kBeforeCheckIn);
    clammy.checkIn(DiarySite::Hands, last + 1, Level::Clammy);
    CHECK(hands(clammy, last + 2).advice == Advice::FirstDewTopUp);

    auto [sweating, evening] = keptDry();
    for (int before = 3; before > 0; --before)
        sweating.checkIn(DiarySite::Hands, evening - before, Level::Dripping);
    sweating.session(Site::Hands, evening, Waveform::Direct, kBeforeCheckIn);
    sweating.checkIn(DiarySite::Hands, evening, Level::Dripping);
    CHECK(hands(sweating, evening + 1).stage == Stage::SweatingAgain);
    CHECK(plannedFor(sweating, evening + 1));

    auto dry = d;
    dry.checkIn(DiarySite::Hands, last, Level::Dry);
    CHECK(hands(dry, last + 1).advice == Advice::None);
    CHECK(hands(dry, last + 1).forecast.today.dry > hands(d, last + 1).forecast.today.dry);
}

TEST_CASE("dampness in the evening after a session on dry skin says nothing")
{
    auto [d, last] = keptDry();
    d.session(Site::Hands, last, Waveform::Direct, kBeforeCheckIn);
    auto clammy = d;
    clammy.checkIn(DiarySite::Hands, last, Level::Clammy);
    CHECK(hands(clammy, last + 1).advice == Advice::None);
    CHECK(hands(clammy, last + 1).forecast.today.dry == hands(d, last + 1).forecast.today.dry);
}

TEST_CASE("one report of dampness on the day after a session calls from the next day on, unless a dry one follows")
{
    auto [d, last] = keptDry();
    d.session(Site::Hands, last, Waveform::Direct, kBeforeCheckIn);
    d.checkIn(DiarySite::Hands, last + 1, Level::Clammy);
    CHECK(hands(d, last + 1).advice == Advice::Watch);
    CHECK(hands(d, last + 2).advice == Advice::FirstDewTopUp);
    CHECK(plannedFor(d, last + 2));

    d.checkIn(DiarySite::Hands, last + 2, Level::Dry);
    CHECK(hands(d, last + 2).advice == Advice::None);
}
