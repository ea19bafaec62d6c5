#include "protocol/Screening.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace firstdew::protocol;
using build::day;
using build::Diary;

namespace {

const LocalDate kToday = day("2026-03-02");

ScreeningOutcome outcomeOf(ScreeningRow yes, Site site = Site::Hands)
{
    return screen(Diary().adult().screened(kToday, {yes}).record(), site, kToday).outcome;
}

Diary& shortQuestion(Diary& d, LocalDate on, SetOf<ScreeningRow> asked, SetOf<ScreeningRow> yes)
{
    return d.add(Screening{false, asked, yes}, on);
}

} // namespace

TEST_CASE("each row of the screening has the outcome the trade gives it, at every site")
{
    for (const auto site : allOf<Site>()) {
        // NHS dermatology leaflets (Newcastle; South Tees); Hölzle, Kanerva's Occup. Dermatology 2018
        CHECK(outcomeOf(ScreeningRow::Pregnancy, site) == ScreeningOutcome::Stop);
        CHECK(outcomeOf(ScreeningRow::PoweredImplant, site) == ScreeningOutcome::Stop);
        CHECK(outcomeOf(ScreeningRow::MetalImplant, site) == ScreeningOutcome::Stop);
        // the leaflets list it for all sessions: the cautious reading
        CHECK(outcomeOf(ScreeningRow::MetalIud, site) == ScreeningOutcome::Stop);
        // from memory
        CHECK(outcomeOf(ScreeningRow::HeartRhythmOrEpilepsy, site) == ScreeningOutcome::Stop);
        // NHS leaflets
        CHECK(outcomeOf(ScreeningRow::TumourOrThrombosis, site) == ScreeningOutcome::Stop);
        CHECK(outcomeOf(ScreeningRow::LossOfSensation, site) == ScreeningOutcome::Stop);
        CHECK(outcomeOf(ScreeningRow::UnderFive, site) == ScreeningOutcome::Stop);
        // common practice, no source
        CHECK(outcomeOf(ScreeningRow::UnderEighteen, site) == ScreeningOutcome::AskFirst);
        // from memory
        CHECK(outcomeOf(ScreeningRow::EczemaAtSite, site) == ScreeningOutcome::AskFirst);
        // Hölzle 2018
        CHECK(outcomeOf(ScreeningRow::LargeWound, site) == ScreeningOutcome::AskFirst);
        // common practice, no source; one hospital leaflet lists them: mentioned
        CHECK(outcomeOf(ScreeningRow::FixedBraces, site) == ScreeningOutcome::Go);
    }
    CHECK(screeningRows().size() == allOf<ScreeningRow>().size());
}

TEST_CASE("fixed braces are mentioned and do not block")
{
    const auto verdict =
        screen(Diary().adult().screened(kToday, {ScreeningRow::FixedBraces}).record(), Site::Hands, kToday);
    CHECK(verdict.mention == std::vector{ScreeningRow::FixedBraces});
    CHECK(verdict.deciding.empty());
}

TEST_CASE("age decides by the birth date, whatever was answered")
{
    Diary d;
    d.add(Person{"Kim", day("2022-03-03"), {}, {}, {}}, day("2025-01-01")).screened(kToday);
    CHECK(screen(d.record(), Site::Hands, kToday).outcome == ScreeningOutcome::Stop); // not yet four
    Diary older;
    older.add(Person{"Kim", day("2012-03-03"), {}, {}, {}}, day("2025-01-01")).screened(kToday);
    CHECK(screen(older.record(), Site::Hands, kToday).deciding == std::vector{ScreeningRow::UnderEighteen});
}

TEST_CASE("a clinician's clearance opens the one row it names, until it expires")
{
    Diary d;
    d.adult().screened(kToday - 10, {ScreeningRow::MetalImplant, ScreeningRow::EczemaAtSite});
    d.add(Clearance{ScreeningRow::MetalImplant, "Dr Vance", kToday - 5, kToday + 5}, kToday - 5);
    const auto verdict = screen(d.record(), Site::Hands, kToday);
    CHECK(verdict.outcome == ScreeningOutcome::AskFirst);
    CHECK(verdict.deciding == std::vector{ScreeningRow::EczemaAtSite});
    CHECK(screen(d.record(), Site::Hands, kToday + 6).outcome == ScreeningOutcome::Stop);
}

TEST_CASE("a clearance without an end holds for a year")
{
    // our own choice, cautious
    Diary d;
    d.adult().screened(kToday, {ScreeningRow::MetalImplant});
    d.add(Clearance{ScreeningRow::MetalImplant, "Dr Vance", kToday, {}}, kToday);
    CHECK(screen(d.record(), Site::Hands, kToday + 365).outcome == ScreeningOutcome::Go);
    CHECK(screen(d.record(), Site::Hands, kToday + 366).outcome == ScreeningOutcome::Stop);
}

TEST_CASE("a clearance with no name behind it opens nothing")
{
    Diary d;
    d.adult().screened(kToday - 10, {ScreeningRow::MetalImplant});
    d.add(Clearance{ScreeningRow::MetalImplant, "", kToday - 5, {}}, kToday - 5);
    CHECK(screen(d.record(), Site::Hands, kToday).outcome == ScreeningOutcome::Stop);
}

TEST_CASE("a state of things newly arisen after the clearance needs a new one")
{
    Diary d;
    d.adult().screened(kToday - 40, {ScreeningRow::TumourOrThrombosis});
    d.add(Clearance{ScreeningRow::TumourOrThrombosis, "Dr Vance", kToday - 35, {}}, kToday - 35);
    d.screened(kToday - 20).screened(kToday, {ScreeningRow::TumourOrThrombosis});
    CHECK(screen(d.record(), Site::Hands, kToday).outcome == ScreeningOutcome::Stop);
    Diary sameDay;
    sameDay.adult().screened(kToday - 20);
    sameDay.add(Clearance{ScreeningRow::TumourOrThrombosis, "Dr Vance", kToday, {}}, kToday, 8 * 60);
    sameDay.add(Screening{false, {ScreeningRow::TumourOrThrombosis}, {ScreeningRow::TumourOrThrombosis}}, kToday,
                9 * 60);
    CHECK(screen(sameDay.record(), Site::Hands, kToday).outcome == ScreeningOutcome::Stop);
}

TEST_CASE("a changed answer to the short question blocks at once")
{
    Diary d;
    d.adult().screened(kToday - 5);
    CHECK(screen(d.record(), Site::Hands, kToday).outcome == ScreeningOutcome::Go);
    shortQuestion(d, kToday, {ScreeningRow::Pregnancy}, {ScreeningRow::Pregnancy});
    CHECK(screen(d.record(), Site::Hands, kToday).outcome == ScreeningOutcome::Stop);
    // nor does a clock that is set back take it away
    CHECK(screen(d.record(), Site::Hands, kToday - 1).outcome == ScreeningOutcome::Stop);
}

TEST_CASE("the full screening is due when there is none, and again after 28 days")
{
    // our own choice, cautious
    CHECK(screeningDue(Diary().record(), kToday) == ScreeningDue::Full);
    Diary d;
    d.screened(kToday);
    CHECK(screeningDue(d.record(), kToday) == ScreeningDue::None);
    CHECK(screeningDue(d.record(), kToday + 1) == ScreeningDue::ShortQuestion);
    CHECK(screeningDue(d.record(), kToday + 27) == ScreeningDue::ShortQuestion);
    CHECK(screeningDue(d.record(), kToday + 28) == ScreeningDue::Full);
    shortQuestion(d, kToday + 3, {}, {});
    CHECK(screeningDue(d.record(), kToday + 3) == ScreeningDue::None);
}

TEST_CASE("a clearance given or written down later opens nothing today")
{
    Diary d;
    d.adult().screened(kToday - 10, {ScreeningRow::MetalImplant});
    const auto outcome = [&](LocalDate given, LocalDate written) {
        const auto record =
            Diary(d).add(Clearance{ScreeningRow::MetalImplant, "Dr Vance", given, {}}, written).record();
        return screen(record, Site::Hands, kToday).outcome;
    };
    CHECK(outcome(kToday, kToday) == ScreeningOutcome::Go);
    CHECK(outcome(kToday + 1, kToday) == ScreeningOutcome::Stop);
    CHECK(outcome(kToday - 1, kToday + 1) == ScreeningOutcome::Stop);
}

TEST_CASE("a state of things told before the clinician spoke, or asked of anew without a change, stays cleared")
{
    const auto row = ScreeningRow::MetalImplant;
    Diary d;
    d.adult().screened(kToday - 40).screened(kToday - 30, {row});
    d.add(Clearance{row, "Dr Vance", kToday - 20, {}}, kToday - 20);
    d.screened(kToday - 10, {row}).add(Screening{false, {ScreeningRow::Pregnancy}, {}}, kToday - 5);
    CHECK(screen(d.record(), Site::Hands, kToday).outcome == ScreeningOutcome::Go);
    // A no of tomorrow and a yes after it are not known today, whatever the clock said then.
    d.screened(kToday + 1);
    CHECK(screen(d.record(), Site::Hands, kToday).outcome == ScreeningOutcome::Go);
}

TEST_CASE("nobody known, or no birth date: no age speaks against it, what was answered does")
{
    CHECK(screen(Diary().screened(kToday).record(), Site::Hands, kToday).outcome == ScreeningOutcome::Go);
    Diary d;
    d.add(Person{"Kim", {}, {}, {}, {}}, kToday - 9).screened(kToday);
    CHECK(screen(d.record(), Site::Hands, kToday).outcome == ScreeningOutcome::Go);
    d.screened(kToday, {ScreeningRow::UnderFive});
    CHECK(screen(d.record(), Site::Hands, kToday).outcome == ScreeningOutcome::Stop);
}

TEST_CASE("every question counts as answered once each was asked at some time, and age is asked of nobody")
{
    Diary d;
    d.adult();
    CHECK_FALSE(everyRowAnswered(d.record()));
    SetOf<ScreeningRow> asked;
    for (const auto row : allOf<ScreeningRow>())
        if (!knownByAge(row) && row != ScreeningRow::Pregnancy)
            asked.insert(row);
    shortQuestion(d, kToday, asked, {});
    CHECK_FALSE(everyRowAnswered(d.record()));
    shortQuestion(d, kToday + 1, {ScreeningRow::Pregnancy}, {ScreeningRow::Pregnancy});
    CHECK(everyRowAnswered(d.record()));
}

TEST_CASE("each question tells its latest answer, and whose clearance counts that day")
{
    Diary d;
    d.adult().screened(kToday - 10, {ScreeningRow::Pregnancy, ScreeningRow::FixedBraces});
    const auto answerTo = [&](ScreeningRow row, LocalDate on) {
        const auto all = answersOn(d.record(), on);
        return *std::find_if(all.begin(), all.end(), [&](const RowAnswer& a) { return a.rule.row == row; });
    };
    CHECK(answerTo(ScreeningRow::Pregnancy, kToday).blocks());
    CHECK(answerTo(ScreeningRow::FixedBraces, kToday).yes);
    CHECK_FALSE(answerTo(ScreeningRow::FixedBraces, kToday).blocks()); // mentioned alone
    CHECK(answerTo(ScreeningRow::MetalImplant, kToday).asked);
    CHECK_FALSE(answerTo(ScreeningRow::MetalImplant, kToday).yes);

    d.add(Clearance{ScreeningRow::Pregnancy, "Dr Ames", kToday - 5, kToday + 5}, kToday - 5);
    CHECK(answerTo(ScreeningRow::Pregnancy, kToday).clearedBy == "Dr Ames");
    CHECK_FALSE(answerTo(ScreeningRow::Pregnancy, kToday).blocks());
    CHECK(answerTo(ScreeningRow::Pregnancy, kToday + 6).blocks()); // it has run out

    shortQuestion(d, kToday, {ScreeningRow::Pregnancy}, {});
    CHECK_FALSE(answerTo(ScreeningRow::Pregnancy, kToday + 6).yes);
}

TEST_CASE("what age decides is no question")
{
    for (const RowAnswer& a : answersOn(Diary().record(), kToday)) {
        CHECK_FALSE(knownByAge(a.rule.row));
        CHECK_FALSE(a.asked);
    }
}
