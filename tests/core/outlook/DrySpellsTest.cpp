#include "outlook/DrySpells.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

using namespace firstdew::outlook;
using build::day;
using build::Facts;

namespace {

const LocalDate kStart = day("2026-01-05");

Facts everyFortnight(int rounds)
{
    Facts d;
    for (int r = 0; r < rounds; ++r) {
        const LocalDate session = kStart + r * 14;
        d.session(Site::Hands, session);
        for (int i = 1; i < 14; ++i)
            d.checkIn(DiarySite::Hands, session + i, i <= 12 ? Level::Dry : Level::Clammy);
    }
    return d;
}

} // namespace

TEST_CASE("dry spells are shown as the curve and the quantiles of one distribution")
{
    Facts d = everyFortnight(10);
    const LocalDate last = kStart + 9 * 14;
    const auto s = drySpellsOf(d.on(last + 5), DiarySite::Hands);
    REQUIRE(s);
    CHECK(s->spells.size() == 10);
    CHECK(s->day == 5);
    CHECK(s->lasting.front() == 1);
    for (std::size_t i = 1; i < s->lasting.size(); ++i)
        CHECK(s->lasting[i] <= s->lasting[i - 1]);
    CHECK(s->lasting.back() < 0.05);
    for (std::size_t i = 0; i < s->usual.size(); ++i) {
        CAPTURE(i, s->usual[i]);
        const auto before = static_cast<std::size_t>(s->usual[i]);
        CHECK(s->lasting[before] >= 1 - DrySpells::kLevels[i] - 1e-9);
        CHECK(s->lasting[before + 1] <= 1 - DrySpells::kLevels[i] + 1e-9);
    }
    // ten spells that were all seen to have ended on the thirteenth day: they did so since the twelfth
    CHECK(s->usual[2] == Approx(12.5).margin(1));
    const auto forecast = forecastFor(d.on(last + 5), DiarySite::Hands);
    CHECK(s->usual[2] == forecast.usualMedian);
    CHECK(s->now.dry == forecast.today.dry);
}

TEST_CASE("a spell in which another treatment worked is marked and teaches nothing")
{
    // Ten spells of a fortnight, then one of seventy days under tablets, then the present one.
    Facts d = everyFortnight(10);
    const LocalDate from = kStart + 10 * 14;
    d.session(Site::Hands, from);
    for (int i = 1; i < 70; ++i)
        d.checkIn(DiarySite::Hands, from + i, Level::Dry);
    d.session(Site::Hands, from + 70);
    const LocalDate today = from + 72;
    const auto plain = forecastFor(d.on(today), DiarySite::Hands);
    const auto noted = Facts(d).add(OtherTreatment{OtherKind::Tablets, "", {}, from + 3, from + 60}, today).on(today);
    const auto left = forecastFor(noted, DiarySite::Hands);
    REQUIRE(left.spells.size() == 12);
    for (std::size_t i = 0; i < left.spells.size(); ++i)
        CHECK(left.spells[i].otherwise == (i == 10));
    CHECK(left.learned == 11);
    CHECK(plain.learned == 12);
    CHECK(left.usualTo < plain.usualTo);
    // As if that spell had never been.
    Facts without = everyFortnight(10);
    without.session(Site::Hands, from);
    CHECK(left.usualMedian == forecastFor(without.on(from + 2), DiarySite::Hands).usualMedian);
    CHECK(forecastFor(noted, DiarySite::Hands).usualMedian == left.usualMedian); // read twice
    // Of the feet alone, it says nothing about the hands.
    const auto feet =
        Facts(d).add(OtherTreatment{OtherKind::Tablets, "", {DiarySite::Feet}, from + 3, {}}, today).on(today);
    CHECK(forecastFor(feet, DiarySite::Hands).learned == 12);
}

TEST_CASE("the belief before today's report differs from the belief after it")
{
    Facts d = everyFortnight(6);
    const LocalDate today = kStart + 6 * 14 + 8;
    d.session(Site::Hands, kStart + 6 * 14);
    for (int i = 1; i < 8; ++i)
        d.checkIn(DiarySite::Hands, kStart + 6 * 14 + i, Level::Dry);
    const auto before = drySpellsOf(d.on(today), DiarySite::Hands);
    REQUIRE(before);
    CHECK_FALSE(before->reportedToday);
    CHECK(before->now.dry == before->beforeReport.dry);
    d.checkIn(DiarySite::Hands, today, Level::Clammy);
    const auto after = drySpellsOf(d.on(today), DiarySite::Hands);
    REQUIRE(after);
    CHECK(after->reportedToday);
    CHECK(after->beforeReport.dry == before->now.dry);
    CHECK(after->now.dry < 0.6 * after->beforeReport.dry);
}

TEST_CASE("nothing is shown before the first treated spell, and the curve of a spell without reports ends")
{
    Facts d;
    d.checkIn(DiarySite::Hands, kStart, Level::Wet);
    CHECK_FALSE(drySpellsOf(d.on(kStart), DiarySite::Hands));
    CHECK(beliefsOf(d.on(kStart), DiarySite::Hands).empty());
    d.session(Site::Hands, kStart);
    const auto years = drySpellsOf(d.on(kStart + 4000), DiarySite::Hands);
    REQUIRE(years);
    CHECK(years->day == 4000);
    CHECK(years->lasting.size() <= 366);
}

TEST_CASE("each day after a session has one belief; a clammy report raises it and a session resets it")
{
    Facts d = everyFortnight(8);
    const LocalDate today = kStart + 7 * 14 + 13;
    const auto beliefs = beliefsOf(d.on(today), DiarySite::Hands);
    REQUIRE(beliefs.size() == static_cast<std::size_t>(today - kStart + 1));
    for (std::size_t i = 0; i < beliefs.size(); ++i) {
        CHECK(beliefs[i].date == kStart + static_cast<int>(i));
        CHECK(beliefs[i].begun == Approx(1 - beliefs[i].state.dry));
        CHECK(beliefs[i].state.dry + beliefs[i].state.clammy + beliefs[i].state.sweating == Approx(1));
    }
    for (int r = 1; r < 8; ++r) {
        const auto at = static_cast<std::size_t>(14 * r);
        CHECK(beliefs[at - 1].begun > 0.5); // clammy, on the day before the top-up
        CHECK(beliefs[at].begun < 0.3);     // the day of it
        CHECK(beliefs[at - 3].begun < 0.2); // dry
    }
    const auto now = forecastFor(d.on(today), DiarySite::Hands);
    CHECK(beliefs.back().begun == Approx(1 - now.today.dry));
}
