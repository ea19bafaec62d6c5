#include "protocol/CareSheets.h"

#include "core/Build.h"
#include "protocol/MayBegin.h"

#include <catch2/catch.hpp>

using namespace firstdew::protocol;
using build::day;
using build::Facts;

namespace {

const LocalDate kDay = day("2026-03-05");

CareSheet sheetOf(LocalDate given, double direct, SetOf<Site> sites = {})
{
    CareSheet s;
    s.who = "Dr Vance";
    s.given = given;
    s.sites = sites;
    s.directLimit = Milliamps{direct};
    return s;
}

double limit(const Facts& d, Site site, Waveform waveform = Waveform::Direct)
{
    return limitFor(limitQueryFor(d.on(kDay), site, waveform)).limit.mA;
}

} // namespace

TEST_CASE("of several care sheets the one given last counts, each site for itself")
{
    Facts d;
    d.adult().add(sheetOf(kDay - 2, 12), kDay - 2).add(sheetOf(kDay - 9, 18), kDay - 1); // an old one accepted late
    CHECK(limit(d, Site::Hands) == 12);
    d.add(sheetOf(kDay - 1, 9, {Site::Feet}), kDay - 1);
    CHECK(limit(d, Site::Feet) == 9);
    CHECK(limit(d, Site::Hands) == 12);
    d.add(sheetOf(kDay - 1, 16), kDay - 1); // given on the same day, accepted later
    CHECK(limit(d, Site::Feet) == 16);
}

TEST_CASE("a care sheet dated ahead, by a clock that was set back, binds its limits and takes no other's place")
{
    Facts d;
    d.adult().add(sheetOf(kDay + 1, 5), kDay);
    CHECK(limit(d, Site::Hands) == 5);
    CHECK(limit(d.add(sheetOf(kDay, 18), kDay), Site::Hands) == 5);
    CHECK(sheetFor(d.on(kDay), Site::Hands)->given == kDay);
    d = Facts();
    d.adult().add(sheetOf(kDay + 1, 5, {Site::Hands}), kDay);
    CHECK(limit(d, Site::HandFoot) == 5);
    CHECK(limit(d, Site::Feet) == 20);
    CHECK(sheetFor(d.on(kDay), Site::Hands) == nullptr);
    CHECK(sheetFor(d.on(kDay + 1), Site::Hands) != nullptr);
}

TEST_CASE("hand + foot keeps the limits of the hands, of the feet and its own")
{
    Facts d;
    d.adult().add(sheetOf(kDay - 3, 14, {Site::Hands}), kDay).add(sheetOf(kDay - 2, 11, {Site::Feet}), kDay);
    CHECK(limit(d, Site::HandFoot) == 11);
    d.add(sheetOf(kDay - 1, 8, {Site::HandFoot}), kDay);
    CHECK(limit(d, Site::HandFoot) == 8);
    CHECK(limit(d, Site::Hands) == 14);
}

TEST_CASE("another waveform than the prescribed one is refused")
{
    CareSheet s = sheetOf(kDay - 1, 12);
    s.waveform = Waveform::Pulsed;
    Facts d;
    d.adult().screened(kDay).add(s, kDay);
    CHECK(mayBegin(d.on(kDay), Site::Hands, Waveform::Direct).error().code == "waveform-prescribed");
    CHECK(mayBegin(d.on(kDay), Site::Hands, Waveform::Pulsed).ok());
    CHECK(waveformFor(d.on(kDay), Site::Hands) == Waveform::Pulsed);
    s.waveform = Waveform::Direct;
    s.given = kDay;
    d.add(s, kDay);
    CHECK(mayBegin(d.on(kDay), Site::Hands, Waveform::Pulsed).error().code == "waveform-prescribed");
    // A sheet for all sites does not take the armpits' pulsed current away.
    CHECK(mayBegin(d.on(kDay), Site::Armpits, Waveform::Pulsed).ok());
    CHECK(mayBegin(d.on(kDay), Site::Armpits, Waveform::Direct).error().code == "armpits-pulsed-only");
}

// Common practice, no source.
TEST_CASE("pulsed is offered first at armpits, to children and after 10 mA of direct current was not tolerated")
{
    Facts d;
    d.adult().add(Machine{"", true, true, {}, false, {}, {}}, kDay - 9);
    CHECK(waveformFor(d.on(kDay), Site::Armpits) == Waveform::Pulsed);
    CHECK(waveformFor(d.on(kDay), Site::Hands) == Waveform::Direct);
    Session s;
    s.comfort = Comfort::Unpleasant;
    s.peak = Milliamps{10};
    CHECK(waveformFor(Facts(d).add(s, kDay - 1).on(kDay), Site::Hands) == Waveform::Pulsed);
    s.peak = Milliamps{11};
    CHECK(waveformFor(Facts(d).add(s, kDay - 1).on(kDay), Site::Hands) == Waveform::Direct);
    const auto child = Facts(d).add(Person{"Ben", day("2015-01-01"), {}, {}, "Ada"}, kDay - 9);
    CHECK(waveformFor(child.on(kDay), Site::Hands) == Waveform::Pulsed);
}

TEST_CASE("the care sheet sets the time for each step done by hand")
{
    CareSheet s = sheetOf(kDay - 1, 12, {Site::Hands});
    s.lower = Seconds{90};
    const auto d = Facts().adult().add(s, kDay);
    CHECK(allowancesFor(d.on(kDay), Site::Hands).lower == Seconds{90});
    CHECK(allowancesFor(d.on(kDay), Site::Hands).raise == Seconds{60});
    CHECK(allowancesFor(d.on(kDay), Site::Feet).lower == Seconds{60});
}

TEST_CASE("direct current counts as not tolerated by its latest session at the site, where a level is known")
{
    const auto borne = [](std::optional<Comfort> comfort, std::optional<double> peak) {
        Session s;
        s.comfort = comfort;
        if (peak)
            s.peak = Milliamps{*peak};
        return !directNotTolerated(Facts().add(s, kDay - 2).on(kDay), Site::Hands);
    };
    CHECK_FALSE(borne(Comfort::Painful, 8));
    CHECK_FALSE(borne(Comfort::Unpleasant, 8));
    CHECK(borne(Comfort::Painful, {}));
    CHECK(borne(Comfort::Strong, 8));
    Session painful;
    painful.comfort = Comfort::Painful;
    painful.comfortable = Milliamps{4};
    painful.peak = Milliamps{12};
    Facts d;
    d.add(painful, kDay - 5);
    CHECK(directNotTolerated(d.on(kDay), Site::Hands)); // by the comfortable level
    CHECK_FALSE(directNotTolerated(d.on(kDay), Site::Feet));
    d.session(Site::Hands, kDay - 3, Waveform::Pulsed); // says nothing of direct current
    CHECK(directNotTolerated(d.on(kDay), Site::Hands));
    d.session(Site::Hands, kDay - 1);
    CHECK_FALSE(directNotTolerated(d.on(kDay), Site::Hands));
}

TEST_CASE("sheets in force are listed once, each with the sites where it holds")
{
    CHECK(sheetsInForce(Facts().adult().on(kDay)).empty());
    const auto feet = sheetOf(kDay - 1, 9, {Site::Feet});
    const auto list = sheetsInForce(Facts()
                                        .adult()
                                        .add(sheetOf(kDay - 2, 12, {Site::Hands, Site::Feet, Site::HandFoot}), kDay)
                                        .add(feet, kDay)
                                        .on(kDay));
    REQUIRE(list.size() == 2);
    CHECK(list[0].sites == std::vector{Site::Hands, Site::HandFoot});
    CHECK(list[1].sites == std::vector{Site::Feet});
    CHECK(list[1].sheet == feet);
}

TEST_CASE("the machine decides first which waveform is offered, then the care sheet, then the age")
{
    Facts d;
    d.adult().add(Machine{"", false, true, {}, false, {}, {}}, kDay - 9).add(sheetOf(kDay - 2, 12), kDay - 2);
    CHECK(waveformFor(d.on(kDay), Site::Hands) == Waveform::Pulsed);
    d.add(Machine{"", true, true, {}, false, {}, {}}, kDay - 1);
    CHECK(waveformFor(d.on(kDay), Site::Hands) == Waveform::Direct); // the sheet names none
    Facts nobody;
    nobody.add(Machine{"", true, true, {}, false, {}, {}}, kDay - 9);
    CHECK(waveformFor(nobody.on(kDay), Site::Hands) == Waveform::Pulsed); // of unknown age: as a child
    nobody.add(Machine{"", true, false, {}, false, {}, {}}, kDay - 8);
    CHECK(waveformFor(nobody.on(kDay), Site::Hands) == Waveform::Direct); // it has nothing else
}
