#include "protocol/TeachBack.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

using namespace firstdew::protocol;
using build::day;
using build::Facts;

namespace {

const LocalDate kDay = day("2026-03-05");

Taught taught(Site site, std::optional<double> level = {}, Waveform waveform = Waveform::Direct)
{
    Taught t{site, "district nurse", {TaughtTick::OutOfWater}, waveform, {}};
    if (level)
        t.level = Milliamps{*level};
    return t;
}

std::string refusal(const Facts& d, const Taught& t)
{
    const auto may = checkTaught(d.on(kDay), t);
    return may ? std::string() : may.error().code + " " + may.error().input;
}

} // namespace

TEST_CASE("the latest taught session of a site counts, and not one dated ahead")
{
    Facts d;
    CHECK(taughtAt(d.on(kDay), Site::Hands) == nullptr);
    d.add(taught(Site::Hands, 6), kDay - 2).add(taught(Site::Hands, 8), kDay - 9).add(taught(Site::Feet), kDay);
    REQUIRE(taughtAt(d.on(kDay), Site::Hands) != nullptr);
    CHECK(taughtAt(d.on(kDay), Site::Hands)->payload.level == Milliamps{6});
    CHECK(taughtAt(d.on(kDay - 1), Site::Feet) == nullptr);
    CHECK(taughtAt(d.on(kDay), Site::Armpits) == nullptr);
    const auto all = taughtSessions(d.on(kDay));
    REQUIRE(all.size() == 2);
    CHECK(all[0].payload.site == Site::Hands);
    CHECK(all[1].payload.site == Site::Feet);
}

TEST_CASE("a taught session names who watched and what was seen")
{
    const Facts d = Facts().adult();
    CHECK(refusal(d, taught(Site::Hands)).empty());
    Taught nobody = taught(Site::Hands);
    nobody.who = " ";
    CHECK(refusal(d, nobody) == "taught-invalid who");
    nobody.who = std::string(121, 'n');
    CHECK(refusal(d, nobody) == "taught-invalid who");
    Taught nothing = taught(Site::Hands);
    nothing.ticks = {};
    CHECK(refusal(d, nothing) == "taught-invalid ticks");
    nothing.level = Milliamps{8};
    CHECK(refusal(d, nothing).empty());
}

TEST_CASE("the level agreed is refused above the limit that holds there")
{
    // Limits of adults and children: common practice, no source.
    const Facts adult = Facts().adult();
    CHECK(refusal(adult, taught(Site::Hands, 20)).empty());
    CHECK(refusal(adult, taught(Site::Hands, 20.5)) == "taught-above-limit 20");
    CHECK(refusal(adult, taught(Site::Hands, 30, Waveform::Pulsed)).empty());
    CHECK(refusal(adult, taught(Site::Hands, 30.5, Waveform::Pulsed)) == "taught-above-limit 30");
    CHECK(refusal(adult, taught(Site::Hands, 0)) == "taught-invalid level_ma");
    CHECK(refusal(adult, taught(Site::Armpits, 4)) != "");
    // Armpit pads of unknown size: at most 12 mA (our own choice).
    CHECK(refusal(adult, taught(Site::Armpits, 12, Waveform::Pulsed)).empty());
    CHECK(refusal(adult, taught(Site::Armpits, 12.5, Waveform::Pulsed)) == "taught-above-limit 12");
    // Nobody knows the age: the limits of children.
    CHECK(refusal(Facts(), taught(Site::Hands, 15.5)) == "taught-above-limit 15");
    CareSheet sheet;
    sheet.who = "nurse";
    sheet.given = kDay;
    sheet.sites = {Site::Hands};
    sheet.directLimit = Milliamps{9};
    CHECK(refusal(Facts(adult).add(sheet, kDay), taught(Site::Hands, 9.5)) == "taught-above-limit 9");
    CHECK(refusal(Facts(adult).add(sheet, kDay), taught(Site::Hands, 9)).empty());
}

TEST_CASE("whether somebody taught is asked after the first three sessions at a site")
{
    Facts d;
    const auto asked = [&](Site site = Site::Hands) { return offersTeachBack(d.on(kDay), site); };
    CHECK(asked());
    d.session(Site::Hands, kDay - 5).session(Site::Hands, kDay - 3);
    CHECK(asked());
    d.session(Site::Hands, kDay); // the third is of today
    CHECK(asked());
    CHECK_FALSE(offersTeachBack(d.on(kDay + 1), Site::Hands));
    CHECK(asked(Site::Feet));
    d.add(taught(Site::Feet), kDay);
    CHECK_FALSE(asked(Site::Feet));
    CHECK(asked());
}

TEST_CASE("a session that was stopped early is none of the first three")
{
    Session early;
    early.completed = false;
    Facts d;
    for (int i = 1; i <= 3; ++i)
        d.add(early, kDay - i);
    CHECK(offersTeachBack(d.on(kDay), Site::Hands));
}

TEST_CASE("of two levels agreed the lower one counts, each for its own waveform")
{
    CareSheet sheet;
    sheet.who = "nurse";
    sheet.given = kDay;
    sheet.waveform = Waveform::Direct;
    sheet.level = Milliamps{7};
    const auto agreed = [&](const Facts& d, Waveform waveform = Waveform::Direct) {
        return agreedLevel(d.on(kDay), Site::Hands, waveform);
    };
    CHECK_FALSE(agreed(Facts()));
    CHECK_FALSE(agreed(Facts().add(taught(Site::Hands), kDay)));
    CHECK(agreed(Facts().add(taught(Site::Hands, 6), kDay)) == Milliamps{6});
    CHECK(agreed(Facts().add(sheet, kDay)) == Milliamps{7});
    CHECK(agreed(Facts().add(taught(Site::Hands, 6), kDay).add(sheet, kDay)) == Milliamps{6});
    CHECK(agreed(Facts().add(taught(Site::Hands, 8), kDay).add(sheet, kDay)) == Milliamps{7});
    CHECK(agreed(Facts().add(taught(Site::Hands, 8, Waveform::Pulsed), kDay).add(sheet, kDay), Waveform::Pulsed) ==
          Milliamps{8});
}
