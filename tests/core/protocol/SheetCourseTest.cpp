#include "protocol/SheetCourse.h"

#include "core/Build.h"
#include "protocol/CareSheets.h"
#include "protocol/MayBegin.h"

#include <catch2/catch.hpp>

using namespace firstdew::protocol;
using build::day;
using build::Facts;

namespace {

const LocalDate kToday = day("2026-03-02");

CareSheet sheetOf(SetOf<Site> sites, std::vector<int> days = {1, 3, 5, 8})
{
    CareSheet s;
    s.who = "Dr Vance";
    s.given = kToday - 1;
    s.sites = sites;
    s.plan = days.empty() ? CourseTemplate::Seven : CourseTemplate::Prescribed;
    s.days = std::move(days);
    return s;
}

/// The diary once the sheet was accepted today.
Diary accepted(Facts d, const CareSheet& sheet)
{
    for (const Payload& payload : acceptanceOf(sheet, d.on(kToday)))
        d.add(payload, kToday, 600);
    return d.on(kToday);
}

Facts person() { return Facts().adult().screened(kToday); }

} // namespace

// Common practice, no source: what the prescriber lists is the course.
TEST_CASE("an accepted care sheet puts its sites in use and begins its course on that day")
{
    const auto diary = accepted(person(), sheetOf({Site::Feet, Site::Armpits}));
    REQUIRE(diary.sitesInUse().size() == 2);
    CHECK(diary.sitesInUse()[0].treatedAs == Site::Feet);
    CHECK(diary.sitesInUse()[1].treatedAs == Site::Armpits);
    for (const DiarySite site : {DiarySite::Feet, DiarySite::Armpits}) {
        const auto* set = diary.at(site).course();
        REQUIRE(set != nullptr);
        CHECK(set->course.plan == CourseTemplate::Prescribed);
        CHECK(set->course.days == std::vector{1, 3, 5, 8});
        CHECK(set->course.start == kToday);
    }
    CHECK(diary.careSheets.size() == 1);
}

TEST_CASE("a sheet without a course begins none, and neither does one that is not in force")
{
    CareSheet limits = sheetOf({Site::Hands});
    limits.plan.reset();
    limits.days.clear();
    CHECK(coursesOf(limits, person().on(kToday)).empty());
    CareSheet newer = limits;
    newer.given = kToday;
    CHECK(coursesOf(sheetOf({Site::Hands}), person().add(newer, kToday).on(kToday)).empty());
    CHECK(acceptanceOf(sheetOf({Site::Hands}), person().add(newer, kToday).on(kToday)).size() == 1);
}

TEST_CASE("a new limit in a new sheet begins no course anew, another course does")
{
    Facts d = person();
    d.add(sheetOf({Site::Hands}), kToday - 1)
        .add(Course{Site::Hands, CourseTemplate::Prescribed, {1, 3, 5, 8}, kToday - 1, {}}, kToday - 1);
    CareSheet lower = sheetOf({Site::Hands});
    lower.directLimit = Milliamps{12};
    CHECK(coursesOf(lower, d.on(kToday)).empty());
    const auto next = coursesOf(sheetOf({Site::Hands}, {1, 2, 3}), d.on(kToday));
    REQUIRE(next.size() == 1);
    CHECK(next[0].replaces);
    CHECK_FALSE(next[0].goesOn);
    CHECK(next[0].course.start == kToday);
}

TEST_CASE("a course of the same days that the person began goes on, and one that is done does not")
{
    Facts d = person();
    d.add(Course{Site::Hands, CourseTemplate::Seven, {}, kToday - 20, {Weekday::Mon}}, kToday - 20);
    const CareSheet seven = sheetOf({Site::Hands}, {});
    auto next = coursesOf(seven, d.on(kToday));
    REQUIRE(next.size() == 1);
    CHECK(next[0].goesOn);
    CHECK(next[0].course.start == kToday - 20);
    CHECK(acceptanceOf(seven, d.on(kToday)).size() == 2); // the sheet and the site, no course
    for (int i = 0; i < 7; ++i)
        d.session(Site::Hands, kToday - 20 + i);
    next = coursesOf(seven, d.on(kToday));
    REQUIRE(next.size() == 1);
    CHECK_FALSE(next[0].goesOn);
    CHECK_FALSE(next[0].replaces);
}

TEST_CASE("weekdays that suit the person hold for a template, not for days that are prescribed")
{
    Facts d = person();
    d.add(Course{Site::Hands, CourseTemplate::MonWedFri, {}, kToday - 3, {Weekday::Mon, Weekday::Wed, Weekday::Fri}},
          kToday - 3);
    CHECK(coursesOf(sheetOf({Site::Hands}, {}), d.on(kToday))[0].course.free.contains(Weekday::Mon));
    CHECK(coursesOf(sheetOf({Site::Hands}), d.on(kToday))[0].course.free.empty());
}

TEST_CASE("another way of treating the same skin is put out of use, and no skin is forgotten")
{
    Facts handFoot = person();
    handFoot.add(SiteUse{Site::HandFoot, true}, kToday - 9);
    auto diary = accepted(handFoot, sheetOf({Site::Hands}));
    REQUIRE(diary.sitesInUse().size() == 2);
    CHECK(diary.sitesInUse()[0].treatedAs == Site::Hands);
    CHECK(diary.sitesInUse()[1].treatedAs == Site::Feet);
    Facts both = person();
    both.add(SiteUse{Site::Hands, true}, kToday - 9).add(SiteUse{Site::Feet, true}, kToday - 9);
    diary = accepted(both, sheetOf({Site::HandFoot}));
    REQUIRE(diary.sitesInUse().size() == 2);
    CHECK(diary.sitesInUse()[0].treatedAs == Site::HandFoot);
    both.add(Course{Site::Hands, CourseTemplate::Prescribed, {1, 3, 5, 8}, kToday - 2, {}}, kToday - 2);
    CHECK(coursesOf(sheetOf({Site::HandFoot}), both.on(kToday))[0].replaces); // the same days, but another kind
    CHECK(diary.sitesInUse()[1].treatedAs == Site::HandFoot);
}

// Density of 0.5 mA/cm² at most (e.g. Costello & Jeske, Phys Ther 1995;75:554-563; the page from memory).
TEST_CASE("the pads of the care sheet count where the machine's are unknown or larger")
{
    CareSheet sheet = sheetOf({Site::Armpits});
    sheet.pad = SquareCentimetres{30};
    Facts d = person();
    d.add(sheet, kToday);
    CHECK(mayBegin(d.on(kToday), Site::Armpits, Waveform::Pulsed)->limit.mA == Approx(15));
    Machine m;
    m.pulsed = true;
    for (const auto& [own, limit] : {std::pair{40.0, 15.0}, {20.0, 10.0}}) {
        m.pad = SquareCentimetres{own};
        Facts with = d;
        with.add(m, kToday);
        CHECK(mayBegin(with.on(kToday), Site::Armpits, Waveform::Pulsed)->limit.mA == Approx(limit));
    }
}

TEST_CASE("a course that was reviewed, or whose days cannot be read, is none that a sheet replaces")
{
    const auto next = [](const Facts& d) { return coursesOf(sheetOf({Site::Hands}), d.on(kToday)); };
    Facts reviewed = person();
    reviewed.add(Course{Site::Hands, CourseTemplate::Seven, {}, kToday - 20, {}}, kToday - 20);
    REQUIRE(next(reviewed).size() == 1);
    CHECK(next(reviewed)[0].replaces);
    reviewed.add(ReviewDone{Site::Hands, true}, kToday - 1);
    REQUIRE(next(reviewed).size() == 1);
    CHECK_FALSE(next(reviewed)[0].replaces);
    Facts unreadable = person();
    unreadable.add(Course{Site::Hands, CourseTemplate::Prescribed, {3, 2}, kToday - 1, {}}, kToday - 1);
    REQUIRE(next(unreadable).size() == 1);
    CHECK_FALSE(next(unreadable)[0].replaces);
}

TEST_CASE("a sheet with another template than the one in force begins its course")
{
    Facts d = person();
    d.add(sheetOf({Site::Hands}, {}), kToday - 1);
    CHECK(coursesOf(sheetOf({Site::Hands}, {}), d.on(kToday)).empty());
    CHECK(coursesOf(sheetOf({Site::Hands}), d.on(kToday)).size() == 1);
}

TEST_CASE("what a sheet itself names, or is in use already, is neither dropped nor chosen again")
{
    const auto uses = [](const Facts& d, const CareSheet& sheet) {
        std::vector<std::pair<Site, bool>> out;
        for (const Payload& p : acceptanceOf(sheet, d.on(kToday)))
            if (const auto* use = std::get_if<SiteUse>(&p))
                out.emplace_back(use->site, use->inUse);
        return out;
    };
    using Uses = std::vector<std::pair<Site, bool>>;
    const auto inUse = [](std::initializer_list<Site> sites) {
        Facts d = person();
        for (const Site site : sites)
            d.add(SiteUse{site, true}, kToday - 9);
        return d;
    };
    CHECK(uses(inUse({Site::Hands}), sheetOf({Site::Hands})).empty());
    CHECK(uses(inUse({Site::HandFoot}), sheetOf({Site::Feet})) ==
          Uses{{Site::HandFoot, false}, {Site::Hands, true}, {Site::Feet, true}});
    CHECK(uses(inUse({Site::HandFoot}), sheetOf({Site::HandFoot, Site::Hands})) == Uses{{Site::Hands, true}});
    const auto both = accepted(inUse({Site::HandFoot}), sheetOf({Site::Hands, Site::Feet}));
    CHECK(both.chosen[Site::HandFoot] == false);
    CHECK(both.chosen[Site::Hands] == true);
    CHECK(both.chosen[Site::Feet] == true);
    CHECK(uses(inUse({Site::HandFoot, Site::Feet}), sheetOf({Site::Hands})) ==
          Uses{{Site::HandFoot, false}, {Site::Hands, true}});
}
