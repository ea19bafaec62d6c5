#include "protocol/Screening.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace firstdew::protocol;
using build::day;
using build::Facts;

namespace {

const LocalDate kToday = day("2026-03-02");

ScreeningOutcome outcomeOf(ScreeningRow yes, Site site = Site::Hands)
{
    return screen(Facts().adult().screened(kToday, {yes}).on(kToday), site).outcome;
}

Facts& shortQuestion(Facts& d, LocalDate on, SetOf<ScreeningRow> asked, SetOf<ScreeningRow> yes)
{
    return d.add(Screening{false, asked, yes}, on);
}

} // namespace

TEST_CASE("each row of the screening has its outcome at every site")
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

TEST_CASE("fixed braces give a note and do not block")
{
    const auto verdict = screen(Facts().adult().screened(kToday, {ScreeningRow::FixedBraces}).on(kToday), Site::Hands);
    CHECK(verdict.mention == std::vector{ScreeningRow::FixedBraces});
    CHECK(verdict.deciding.empty());
}

TEST_CASE("the birth date decides the age, not the answer")
{
    Facts d;
    d.add(Person{"Kim", day("2022-03-03"), {}, {}, {}}, day("2025-01-01")).screened(kToday);
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Stop); // not yet four
    Facts older;
    older.add(Person{"Kim", day("2012-03-03"), {}, {}, {}}, day("2025-01-01")).screened(kToday);
    CHECK(screen(older.on(kToday), Site::Hands).deciding == std::vector{ScreeningRow::UnderEighteen});
}

TEST_CASE("a clearance clears only the row it names, until it expires")
{
    Facts d;
    d.adult().screened(kToday - 10, {ScreeningRow::MetalImplant, ScreeningRow::EczemaAtSite});
    d.add(Clearance{ScreeningRow::MetalImplant, "Dr Vance", kToday - 5, kToday + 5}, kToday - 5);
    const auto verdict = screen(d.on(kToday), Site::Hands);
    CHECK(verdict.outcome == ScreeningOutcome::AskFirst);
    CHECK(verdict.deciding == std::vector{ScreeningRow::EczemaAtSite});
    CHECK(screen(d.on(kToday + 6), Site::Hands).outcome == ScreeningOutcome::Stop);
}

// Our own choice, cautious.
TEST_CASE("a clearance holds for 180 days at most, a pregnancy's for 28, whatever end was named")
{
    for (const auto& [row, days] : {std::pair{ScreeningRow::MetalImplant, 180}, {ScreeningRow::Pregnancy, 28}})
        for (const std::optional<LocalDate> end : {std::optional<LocalDate>{}, std::optional(kToday + 900)}) {
            Facts d;
            d.adult().screened(kToday, {row}).add(Clearance{row, "Dr Vance", kToday, end}, kToday);
            CHECK(screen(d.on(kToday + days), Site::Hands).outcome == ScreeningOutcome::Go);
            CHECK(screen(d.on(kToday + days + 1), Site::Hands).outcome == ScreeningOutcome::Stop);
            CHECK(clearanceOf(d.on(kToday + days), row)->holds);
            CHECK_FALSE(clearanceOf(d.on(kToday + days + 1), row)->holds); // shown as expired, not as absent
            CHECK(clearanceOf(d.on(kToday), row)->until == kToday + days);
        }
    CHECK_FALSE(clearanceOf(Facts().on(kToday), ScreeningRow::Pregnancy));
}

TEST_CASE("a yes recorded last counts even if the clock was set back, and a later no revokes it")
{
    const auto answer = [](Facts& d, int minute, SetOf<ScreeningRow> yes) {
        Screening s;
        for (const auto row : allOf<ScreeningRow>())
            s.asked.insert(row);
        s.yes = yes;
        d.add(s, kToday, minute);
    };
    Facts d;
    d.adult();
    answer(d, 19 * 60, {});
    answer(d, 18 * 60, {ScreeningRow::Pregnancy}); // an hour later, by a clock set back
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Stop);
    answer(d, 18 * 60 + 5, {});
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Go);
    answer(d, 20 * 60, {ScreeningRow::Pregnancy});
    answer(d, 18 * 60 + 30, {}); // the no is recorded last, the yes is the later of them: the cautious one counts
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Stop);
}

TEST_CASE("a no alone does not end a yes that stops; a clinician's word before it does")
{
    // No session until a clinician has cleared it: NHS dermatology leaflets (Newcastle; South Tees)
    Facts d;
    d.adult().screened(kToday - 20, {ScreeningRow::TumourOrThrombosis}).screened(kToday - 10);
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Stop);
    const auto rowOf = [](const Diary& diary) {
        const auto rows = answersOf(diary);
        return *std::ranges::find(rows, ScreeningRow::TumourOrThrombosis, [](const auto& r) { return r.rule.row; });
    };
    CHECK(rowOf(d.on(kToday)).yes);
    CHECK(rowOf(d.on(kToday)).since == kToday - 20);
    CHECK(rowOf(d.on(kToday)).waits);
    // A second yes does not make the first one younger, so that a no on its day is no slip taken back.
    d.screened(kToday, {ScreeningRow::TumourOrThrombosis})
        .add(Screening{false, {ScreeningRow::TumourOrThrombosis}, {}}, kToday, 1);
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Stop);
    d.add(Clearance{ScreeningRow::TumourOrThrombosis, "Dr Vance", kToday + 1, kToday + 2}, kToday + 1);
    CHECK(screen(d.on(kToday + 3), Site::Hands).outcome == ScreeningOutcome::Stop); // it has expired
    CHECK_FALSE(rowOf(d.on(kToday + 3)).waits);
    d.screened(kToday + 4);
    CHECK(screen(d.on(kToday + 4), Site::Hands).outcome == ScreeningOutcome::Go);
}

TEST_CASE("a word given before the yes, or without a name, is not about that yes")
{
    for (const auto& word : {Clearance{ScreeningRow::MetalImplant, "Dr Vance", kToday - 30, {}},
                             Clearance{ScreeningRow::MetalImplant, " ", kToday - 10, {}},
                             Clearance{ScreeningRow::PoweredImplant, "Dr Vance", kToday - 10, {}}}) {
        Facts d;
        d.adult().screened(kToday - 20, {ScreeningRow::MetalImplant}).add(word, kToday - 10).screened(kToday);
        CHECK(yesSince(d.on(kToday), ScreeningRow::MetalImplant) == kToday - 20);
    }
}

TEST_CASE("a no ends a yes about the skin, which heals, and a slip of the same day")
{
    Facts healed;
    healed.adult().screened(kToday - 20, {ScreeningRow::EczemaAtSite, ScreeningRow::LargeWound}).screened(kToday);
    CHECK(screen(healed.on(kToday), Site::Hands).outcome == ScreeningOutcome::Go);
    Facts slip;
    slip.adult()
        .screened(kToday, {ScreeningRow::Pregnancy})
        .add(Screening{false, {ScreeningRow::Pregnancy}, {}}, kToday, 60);
    CHECK(screen(slip.on(kToday), Site::Hands).outcome == ScreeningOutcome::Go);
}

TEST_CASE("a clearance without a name clears nothing")
{
    Facts d;
    d.adult().screened(kToday - 10, {ScreeningRow::MetalImplant});
    d.add(Clearance{ScreeningRow::MetalImplant, "", kToday - 5, {}}, kToday - 5);
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Stop);
}

TEST_CASE("a yes that is new since the clearance needs a new clearance")
{
    Facts d;
    d.adult().screened(kToday - 40, {ScreeningRow::TumourOrThrombosis});
    d.add(Clearance{ScreeningRow::TumourOrThrombosis, "Dr Vance", kToday - 35, {}}, kToday - 35);
    d.screened(kToday - 20).screened(kToday, {ScreeningRow::TumourOrThrombosis});
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Stop);
    Facts sameDay;
    sameDay.adult().screened(kToday - 20);
    sameDay.add(Clearance{ScreeningRow::TumourOrThrombosis, "Dr Vance", kToday, {}}, kToday, 8 * 60);
    sameDay.add(Screening{false, {ScreeningRow::TumourOrThrombosis}, {ScreeningRow::TumourOrThrombosis}}, kToday,
                9 * 60);
    CHECK(screen(sameDay.on(kToday), Site::Hands).outcome == ScreeningOutcome::Stop);
}

TEST_CASE("a changed answer to the short question blocks at once")
{
    Facts d;
    d.adult().screened(kToday - 5);
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Go);
    shortQuestion(d, kToday, {ScreeningRow::Pregnancy}, {ScreeningRow::Pregnancy});
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Stop);
    // nor does a clock that is set back take it away
    CHECK(screen(d.on(kToday - 1), Site::Hands).outcome == ScreeningOutcome::Stop);
}

TEST_CASE("the full screening is due when there is none, and again after 28 days")
{
    // our own choice, cautious
    CHECK(screeningDue(Facts().on(kToday)) == ScreeningDue::Full);
    Facts d;
    d.screened(kToday);
    CHECK(screeningDue(d.on(kToday)) == ScreeningDue::None);
    CHECK(screeningDue(d.on(kToday + 1)) == ScreeningDue::ShortQuestion);
    CHECK(screeningDue(d.on(kToday + 27)) == ScreeningDue::ShortQuestion);
    CHECK(screeningDue(d.on(kToday + 28)) == ScreeningDue::Full);
    shortQuestion(d, kToday + 3, {}, {});
    CHECK(screeningDue(d.on(kToday + 3)) == ScreeningDue::None);
}

TEST_CASE("a clearance dated or recorded later clears nothing today")
{
    Facts d;
    d.adult().screened(kToday - 10, {ScreeningRow::MetalImplant});
    const auto outcome = [&](LocalDate given, LocalDate written) {
        Facts with = d;
        with.add(Clearance{ScreeningRow::MetalImplant, "Dr Vance", given, {}}, written);
        return screen(with.on(kToday), Site::Hands).outcome;
    };
    CHECK(outcome(kToday, kToday) == ScreeningOutcome::Go);
    CHECK(outcome(kToday + 1, kToday) == ScreeningOutcome::Stop);
    CHECK(outcome(kToday - 1, kToday + 1) == ScreeningOutcome::Stop);
}

TEST_CASE("a yes from before the clearance, or repeated unchanged, stays cleared")
{
    const auto row = ScreeningRow::MetalImplant;
    Facts d;
    d.adult().screened(kToday - 40).screened(kToday - 30, {row});
    d.add(Clearance{row, "Dr Vance", kToday - 20, {}}, kToday - 20);
    d.screened(kToday - 10, {row}).add(Screening{false, {ScreeningRow::Pregnancy}, {}}, kToday - 5);
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Go);
    // A no of tomorrow and a yes after it are not known today, whatever the clock said then.
    d.screened(kToday + 1);
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Go);
}

TEST_CASE("without a birth date the age rows do not block, and the answers still do")
{
    CHECK(screen(Facts().screened(kToday).on(kToday), Site::Hands).outcome == ScreeningOutcome::Go);
    Facts d;
    d.add(Person{"Kim", {}, {}, {}, {}}, kToday - 9).screened(kToday);
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Go);
    d.screened(kToday, {ScreeningRow::UnderFive});
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Stop);
}

TEST_CASE("all questions count as answered once each was asked, and nobody is asked about age")
{
    Facts d;
    d.adult();
    CHECK_FALSE(everyRowAnswered(d.on(firstdew::diary::kEndOfTime)));
    SetOf<ScreeningRow> asked;
    for (const auto row : allOf<ScreeningRow>())
        if (!knownByAge(row) && row != ScreeningRow::Pregnancy)
            asked.insert(row);
    shortQuestion(d, kToday, asked, {});
    CHECK_FALSE(everyRowAnswered(d.on(firstdew::diary::kEndOfTime)));
    shortQuestion(d, kToday + 1, {ScreeningRow::Pregnancy}, {ScreeningRow::Pregnancy});
    CHECK(everyRowAnswered(d.on(firstdew::diary::kEndOfTime)));
}

TEST_CASE("each question gives its latest answer and the clearance that counts that day")
{
    Facts d;
    d.adult().screened(kToday - 10, {ScreeningRow::Pregnancy, ScreeningRow::FixedBraces});
    const auto answerTo = [&](ScreeningRow row, LocalDate on) {
        const auto all = answersOf(d.on(on));
        return *std::find_if(all.begin(), all.end(), [&](const RowAnswer& a) { return a.rule.row == row; });
    };
    CHECK(answerTo(ScreeningRow::Pregnancy, kToday).blocks());
    CHECK(answerTo(ScreeningRow::FixedBraces, kToday).yes);
    CHECK_FALSE(answerTo(ScreeningRow::FixedBraces, kToday).blocks()); // mentioned alone
    CHECK(answerTo(ScreeningRow::MetalImplant, kToday).asked);
    CHECK_FALSE(answerTo(ScreeningRow::MetalImplant, kToday).yes);

    d.add(Clearance{ScreeningRow::Pregnancy, "Dr Ames", kToday - 5, kToday + 5}, kToday - 5);
    CHECK(answerTo(ScreeningRow::Pregnancy, kToday).clearance->who == "Dr Ames");
    CHECK_FALSE(answerTo(ScreeningRow::Pregnancy, kToday).blocks());
    CHECK(answerTo(ScreeningRow::Pregnancy, kToday + 6).blocks()); // it has expired, and is shown as such
    CHECK(answerTo(ScreeningRow::Pregnancy, kToday + 6).clearance->who == "Dr Ames");

    shortQuestion(d, kToday, {ScreeningRow::Pregnancy}, {});
    CHECK_FALSE(answerTo(ScreeningRow::Pregnancy, kToday + 6).yes);
}

TEST_CASE("rows that age decides are not asked")
{
    for (const RowAnswer& a : answersOf(Facts().on(kToday))) {
        CHECK_FALSE(knownByAge(a.rule.row));
        CHECK_FALSE(a.asked);
    }
}

TEST_CASE(
    "the questions are about a child up to the eighteenth birthday, and about oneself where no birth date is known")
{
    const LocalDate birthday = day("2026-03-05");
    Facts d;
    CHECK_FALSE(isKnownChild(d.on(birthday)));
    d.add(Person{"Bo", {}, {}, {}, "Ada"}, day("2026-01-01"));
    CHECK_FALSE(isKnownChild(d.on(birthday)));
    d.add(Person{"Bo", day("2008-03-05"), {}, {}, "Ada"}, day("2026-01-01"), 9 * 60);
    CHECK(isKnownChild(d.on(birthday - 1)));
    CHECK_FALSE(isKnownChild(d.on(birthday)));
}

TEST_CASE("a yes that is new since the clearance blocks even where a clock that was ahead dated it tomorrow")
{
    const auto row = ScreeningRow::PoweredImplant;
    Facts d;
    d.adult().screened(kToday - 30, {row});
    d.add(Clearance{row, "Dr Vance", kToday - 20, {}}, kToday - 20);
    d.screened(kToday - 10); // ends the yes, after a clinician's word
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Go);
    d.screened(kToday + 1, {row});
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Stop);
    CHECK_FALSE(clearanceOf(d.on(kToday), row)->holds);
    CHECK(screen(d.on(kToday + 1), Site::Hands).outcome == ScreeningOutcome::Stop);
}

TEST_CASE("of several clearances the one given last counts, in whatever order they were written down")
{
    const auto row = ScreeningRow::MetalImplant;
    Facts d;
    d.adult().screened(kToday - 20, {row});
    d.add(Clearance{row, "Dr Ames", kToday - 5, kToday + 30}, kToday - 5);
    d.add(Clearance{row, "Dr Vance", kToday - 9, kToday - 1}, kToday - 4);
    CHECK(clearanceOf(d.on(kToday), row)->who == "Dr Ames");
    d.add(Clearance{row, "Dr Cole", kToday - 2, kToday - 1}, kToday - 2);
    CHECK(clearanceOf(d.on(kToday), row)->who == "Dr Cole");
    CHECK(screen(d.on(kToday), Site::Hands).outcome == ScreeningOutcome::Stop); // it ended yesterday
}

TEST_CASE("a question that was never answered, or with no, stands in nobody's way")
{
    for (const auto& d : {Facts(), Facts().screened(kToday)})
        for (const RowAnswer& a : answersOf(d.on(kToday)))
            CHECK_FALSE(a.blocks());
}
