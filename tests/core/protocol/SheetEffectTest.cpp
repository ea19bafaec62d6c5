#include "protocol/SheetEffect.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

using namespace firstdew::protocol;
using build::day;
using build::Facts;

namespace {

const LocalDate kDay = day("2026-03-05");

CareSheet sheetOf(LocalDate given, SetOf<Site> sites = {Site::Hands})
{
    CareSheet s;
    s.who = "Dr Vance";
    s.given = given;
    s.sites = sites;
    return s;
}

/// A sheet of three days ago that sets everything a sheet can tighten.
CareSheet strict()
{
    CareSheet s = sheetOf(kDay - 3);
    s.waveform = Waveform::Pulsed;
    s.directLimit = Milliamps{10};
    s.pulsedLimit = Milliamps{12};
    s.raise = Seconds{90};
    s.lower = Seconds{60};
    return s;
}

std::vector<SheetChange> changes(const CareSheet& before, const CareSheet& after)
{
    const auto effects = effectsOf(after, Facts().adult().add(before, kDay - 2).on(kDay));
    REQUIRE(effects.size() == 1);
    return effects.front().changes;
}

} // namespace

TEST_CASE("a sheet that allows more than the one in force loosens, field by field")
{
    struct Case {
        SheetField field;
        void (*change)(CareSheet&);
        bool loosens;
    };
    const Case cases[] = {
        {SheetField::DirectLimit, [](CareSheet& s) { s.directLimit = Milliamps{10.5}; }, true},
        {SheetField::DirectLimit, [](CareSheet& s) { s.directLimit.reset(); }, true},
        {SheetField::DirectLimit, [](CareSheet& s) { s.directLimit = Milliamps{9}; }, false},
        {SheetField::PulsedLimit, [](CareSheet& s) { s.pulsedLimit = Milliamps{13}; }, true},
        {SheetField::PulsedLimit, [](CareSheet& s) { s.pulsedLimit.reset(); }, true},
        {SheetField::Waveform, [](CareSheet& s) { s.waveform = Waveform::Direct; }, true},
        {SheetField::Waveform, [](CareSheet& s) { s.waveform.reset(); }, true},
        {SheetField::Raise, [](CareSheet& s) { s.raise = Seconds{89}; }, true},
        {SheetField::Raise, [](CareSheet& s) { s.raise.reset(); }, true}, // 60 s are usual
        {SheetField::Raise, [](CareSheet& s) { s.raise = Seconds{91}; }, false},
        {SheetField::Lower, [](CareSheet& s) { s.lower = Seconds{30}; }, true},
        {SheetField::Lower, [](CareSheet& s) { s.lower.reset(); }, false}, // 60 s as before
        {SheetField::Notes, [](CareSheet& s) { s.notes = "Ring me."; }, false},
        {SheetField::Review, [](CareSheet& s) { s.review = kDay + 20; }, false},
    };
    for (const auto& c : cases) {
        CareSheet after = strict();
        c.change(after);
        CAPTURE(token(c.field));
        CHECK(changes(strict(), after) == std::vector<SheetChange>{{c.field, c.loosens}});
    }
}

TEST_CASE("a first sheet loosens nothing, and says all that it sets")
{
    const auto effects = effectsOf(strict(), Facts().adult().on(kDay));
    REQUIRE(effects.size() == 1);
    CHECK_FALSE(effects.front().before);
    CHECK_FALSE(loosens(effects));
    CHECK(effects.front().changes.size() == 8); // who, given, sites, waveform, both limits, raise, lower
}

TEST_CASE("each site is compared with the sheet that holds there, and one with a newer sheet keeps it")
{
    CareSheet feet = sheetOf(kDay, {Site::Feet});
    feet.directLimit = Milliamps{8};
    const auto diary = Facts().adult().add(strict(), kDay - 2).add(feet, kDay).on(kDay);
    CareSheet next = sheetOf(kDay - 1, {Site::Hands, Site::Feet, Site::Armpits});
    next.directLimit = Milliamps{14};
    const auto effects = effectsOf(next, diary);
    REQUIRE(effects.size() == 2); // feet keep the sheet given later
    CHECK(effects[0].sites == std::vector{Site::Hands});
    CHECK(effects[0].before == strict());
    CHECK(effects[1].sites == std::vector{Site::Armpits});
    CHECK(loosens(effects));
    next.given = kDay - 4;
    CHECK(effectsOf(next, diary).size() == 1); // hands keep theirs, too
}

TEST_CASE("sites that share a sheet are told together, and the same sheet again changes nothing")
{
    CareSheet both = strict();
    both.sites = {Site::Hands, Site::Feet};
    const auto diary = Facts().adult().add(both, kDay - 2).on(kDay);
    CHECK(effectsOf(both, diary).empty());
    CareSheet next = both;
    next.given = kDay;
    next.directLimit = Milliamps{7};
    const auto effects = effectsOf(next, diary);
    REQUIRE(effects.size() == 1);
    CHECK(effects.front().sites == std::vector{Site::Hands, Site::Feet});
}

TEST_CASE("a larger pad than the care sheet named allows more, a first size does not")
{
    CareSheet sheet = strict();
    sheet.sites = {Site::Armpits};
    sheet.pad = SquareCentimetres{30};
    CHECK_FALSE(loosens(effectsOf(sheet, Facts().adult().on(kDay))));
    const auto diary = Facts().adult().add(sheet, kDay - 2).on(kDay);
    CareSheet next = sheet;
    next.given = kDay;
    for (const auto& [pad, more] : {std::pair{40.0, true}, {20.0, false}}) {
        next.pad = SquareCentimetres{pad};
        CHECK(loosens(effectsOf(next, diary)) == more);
    }
    next.pad.reset(); // counts as 24 cm², which is less
    CHECK_FALSE(loosens(effectsOf(next, diary)));
}

TEST_CASE("a sheet for every site is told for every site, and a tighter waveform loosens nothing")
{
    CareSheet all = strict();
    all.sites = {};
    const auto effects = effectsOf(all, Facts().adult().on(kDay));
    REQUIRE(effects.size() == 1);
    CHECK(effects.front().sites.size() == allOf<Site>().size());
    CareSheet direct = strict();
    direct.waveform = Waveform::Direct;
    CHECK(changes(direct, strict()) == std::vector<SheetChange>{{SheetField::Waveform, false}});
    CareSheet free = strict();
    free.waveform.reset();
    CHECK(changes(free, strict()) == std::vector<SheetChange>{{SheetField::Waveform, false}});
}

TEST_CASE("a higher level to begin with, or none any more, loosens, and a lower one does not")
{
    CareSheet before = strict();
    before.level = Milliamps{6};
    for (const auto& [level, more] : {std::pair{std::optional(Milliamps{6.5}), true},
                                      {std::optional(Milliamps{5}), false},
                                      {std::optional<Milliamps>(), true}}) {
        CareSheet after = before;
        after.level = level;
        CHECK(changes(before, after) == std::vector<SheetChange>{{SheetField::Level, more}});
    }
    CHECK(changes(strict(), before) == std::vector<SheetChange>{{SheetField::Level, false}});
}
