#include "situation/Working.h"

#include "core/Build.h"
#include "core/Told.h"

#include <fmt/format.h>

using namespace firstdew::situation;
using build::day;
using build::Facts;

namespace {

const LocalDate kFirst = day("2026-01-05"); // a Monday, the day of the first session

/// A check-in a day from `from` on, one letter each: d dry, c clammy, w wet, x dripping, - none.
Facts& levels(Facts& d, LocalDate from, const std::string& said)
{
    const std::string letters = "dcwx";
    for (std::size_t i = 0; i < said.size(); ++i)
        if (const auto at = letters.find(said[i]); at != std::string::npos)
            d.checkIn(DiarySite::Hands, from + static_cast<int>(i), static_cast<Level>(at));
    return d;
}

std::string times(const std::string& what, int n)
{
    std::string out;
    for (int i = 0; i < n; ++i)
        out += what;
    return out;
}

/// A first course of that many sessions, each the day after the one before, and its review.
Facts treated(int sessions)
{
    Facts d;
    d.adult().screened(kFirst - 3);
    Course c;
    c.start = kFirst;
    d.add(c, kFirst - 1);
    for (int i = 0; i < sessions; ++i)
        d.session(Site::Hands, kFirst + 3 * i);
    return d;
}

SiteWorking askedOf(const Facts& d, LocalDate today)
{
    const auto diary = d.on(today);
    const auto situation = assess(diary);
    REQUIRE(situation.sites.size() == 1);
    return workingAt(diary, situation.sites.front());
}

std::string told(const SiteWorking& w)
{
    std::string out(token(w.answer));
    if (w.wait)
        out += fmt::format(" ({}, {})", token(*w.wait), w.missing);
    if (w.dampNow)
        out += fmt::format("; damp {:.1f} days a week", *w.dampNow);
    if (w.dampBefore)
        out += fmt::format(", {:.1f} before", *w.dampBefore);
    if (w.scoreNow)
        out += fmt::format("; score {}, {} before", *w.scoreNow, *w.scoreBefore);
    out += fmt::format("; {} sessions", w.sessions);
    if (w.manySessions)
        out += ", many";
    if (w.shortSpells)
        out += "; short spells";
    return out;
}

} // namespace

TEST_CASE("Nobody is told whether it works before anything was treated")
{
    Facts d;
    d.adult().screened(kFirst);
    levels(d, kFirst - 28, times("w", 28));
    const auto w = askedOf(d, kFirst);
    CHECK(w.answer == Working::TooEarly);
    CHECK(w.wait == WorkingWait::NoSession);
    CHECK_FALSE(w.dampBefore);
}

TEST_CASE("It takes seven check-ins after the first session to say anything")
{
    auto d = treated(7);
    levels(d, kFirst + 19, "dddddd");
    const auto six = askedOf(d, kFirst + 25);
    CHECK(six.answer == Working::TooEarly);
    CHECK(six.wait == WorkingWait::MoreCheckIns);
    CHECK(six.missing == 1);
    levels(d, kFirst + 25, "d");
    CHECK(askedOf(d, kFirst + 25).answer == Working::Yes);
    // Four weeks on, what was said then no longer counts.
    CHECK(askedOf(d, kFirst + 25 + 28).wait == WorkingWait::MoreCheckIns);
    CHECK(askedOf(d, kFirst + 25 + 28).missing == kLeastNow);
}

TEST_CASE("A fifth of the damp days before is working, half of them is partly, more is not yet")
{
    const auto asked = [](const std::string& before, const std::string& now) {
        auto d = treated(7);
        levels(d, kFirst - static_cast<int>(before.size()), before);
        levels(d, kFirst + 19, now);
        return askedOf(d, kFirst + 18 + static_cast<int>(now.size()));
    };
    const std::string wet = times("w", 10);
    CHECK(asked(wet, "cdddd"
                     "cdddd")
              .answer == Working::Yes);
    CHECK(asked(wet, "ccddd"
                     "cdddd")
              .answer == Working::Partly);
    CHECK(asked(wet, "cwcdd"
                     "ccddd")
              .answer == Working::Partly);
    CHECK(asked(wet, "cwcdd"
                     "cccdd")
              .answer == Working::NotYet);
    // Who was damp on every other day only has to come down from there.
    CHECK(asked("wdwdwdwdwd", "cdddd"
                              "ddddd")
              .answer == Working::Yes);
    CHECK(asked("wdwdwdwdwd", "cdddd"
                              "cdddd")
              .answer == Working::Partly);
    CHECK(asked("wdwdwdwdwd", "ccddd"
                              "cdddd")
              .answer == Working::NotYet);
    // Three days before are too few to compare with.
    CHECK_FALSE(asked("ddd", "cdddd"
                             "cdddd")
                    .dampBefore);
    CHECK(asked("ddd", "cdddd"
                       "cdddd")
              .answer == Working::Yes);
}

TEST_CASE("A score decides only together with the damp days, and only for fourteen days")
{
    const auto asked = [](int before, int now, int daysAgo) {
        auto d = treated(7);
        levels(d, kFirst - 10, times("w", 10));
        levels(d, kFirst + 19, times("d", 30));
        const LocalDate today = kFirst + 48;
        d.add(Hdss{DiarySite::Hands, before}, kFirst - 1).add(Hdss{DiarySite::Hands, now}, today - daysAgo);
        return askedOf(d, today);
    };
    CHECK(asked(4, 2, 14).answer == Working::Yes);
    CHECK(asked(4, 2, 14).scoreNow == 2);
    CHECK(asked(4, 4, 14).answer == Working::Partly);
    CHECK(asked(4, 3, 0).answer == Working::Partly);
    CHECK(asked(4, 4, 15).answer == Working::Yes);
    CHECK_FALSE(asked(4, 4, 15).scoreNow);
}

TEST_CASE("No change in fewer sessions than a course has is too early; from ten on they are many")
{
    const auto asked = [](int sessions) {
        auto d = treated(sessions);
        levels(d, kFirst - 10, times("w", 10));
        levels(d, kFirst + 1, times("w", 3 * sessions));
        return askedOf(d, kFirst + 3 * sessions);
    };
    CHECK(asked(6).wait == WorkingWait::MoreSessions);
    CHECK(asked(6).missing == 1);
    CHECK(asked(7).answer == Working::NotYet);
    CHECK_FALSE(asked(9).manySessions);
    CHECK(asked(10).manySessions);
}

TEST_CASE("Dry spells of a few days, and sweating again, keep it from counting as working")
{
    auto d = treated(7);
    const LocalDate review = kFirst + 18;
    levels(d, kFirst - 10, times("w", 10));
    d.add(ReviewDone{Site::Hands, true}, review);
    levels(d, review + 1, "ddddddddddddc"); // twelve days dry
    d.session(Site::Hands, review + 13);
    CHECK_FALSE(askedOf(d, review + 13).shortSpells);
    for (int i = 0; i < 3; ++i) { // then damp on the third day, three times
        levels(d, review + 14 + 3 * i, "ddc");
        d.session(Site::Hands, review + 16 + 3 * i);
    }
    const auto w = askedOf(d, review + 22);
    CHECK(w.shortSpells);
    CHECK(w.dampNow.value() <= 1.4);
    CHECK(w.answer == Working::Partly);
}

TEST_CASE("told: whether it works, over a course and the months after")
{
    std::vector<std::string> lines;
    auto d = treated(0);
    levels(d, kFirst - 14, "wxwwcwwxwwdwww");
    d.add(Hdss{DiarySite::Hands, 4}, kFirst - 1);
    const std::vector<int> sessions{0, 1, 3, 6, 9, 14, 21, 40, 62};
    const std::string said = "wwwcwwcdcdcddcdddcddddddddddddddddddddddcddddddddddddddddddddcdddddd";
    for (int i = 0; i < static_cast<int>(said.size()); ++i) {
        levels(d, kFirst + i, said.substr(static_cast<std::size_t>(i), 1));
        if (std::find(sessions.begin(), sessions.end(), i) != sessions.end())
            d.session(Site::Hands, kFirst + i);
        if (i == 14 || i == 28)
            d.add(Hdss{DiarySite::Hands, i == 14 ? 3 : 2}, kFirst + i);
        if (i == 29)
            d.add(ReviewDone{Site::Hands, true}, kFirst + i);
        if (i % 3 == 0)
            lines.push_back(fmt::format("{} {}", (kFirst + i).iso(), told(askedOf(d, kFirst + i))));
    }
    lines.push_back(fmt::format("{} {}", (kFirst + 90).iso(), told(askedOf(d, kFirst + 90))));
    build::checkTold("working", lines);
}

TEST_CASE("skin that was dry before is compared with dampness on every day, not with none")
{
    auto d = treated(7);
    levels(d, kFirst - 10, times("d", 10));
    levels(d, kFirst + 19, "cddddddddd");
    const auto w = askedOf(d, kFirst + 28);
    REQUIRE(w.dampBefore);
    CHECK(*w.dampBefore == 0);
    CHECK(w.answer == Working::Yes);
}

TEST_CASE("scores of another site, earlier ones, and one that the scale does not have change no answer")
{
    auto d = treated(7);
    levels(d, kFirst - 10, times("w", 10));
    levels(d, kFirst + 19, times("d", 10));
    const LocalDate today = kFirst + 28;
    d.add(Hdss{DiarySite::Hands, 4}, kFirst - 1).add(Hdss{DiarySite::Hands, 3}, today - 2);
    d.add(Hdss{DiarySite::Feet, 4}, today - 1).add(Hdss{DiarySite::Hands, 2}, today);
    CHECK(askedOf(d, today).scoreNow == 2);
    CHECK(askedOf(d, today).answer == Working::Yes);
    d.add(Hdss{DiarySite::Hands, 9}, today, 23 * 60);
    CHECK(askedOf(d, today).answer == Working::Yes);
}

TEST_CASE("skin that sweats again today is not said to be fine by the weeks before")
{
    auto d = treated(7);
    levels(d, kFirst - 10, times("w", 10));
    d.add(ReviewDone{Site::Hands, true}, kFirst + 18);
    levels(d, kFirst + 19, times("d", 18) + "ww");
    const auto diary = d.on(kFirst + 38);
    const auto site = assess(diary).sites.front();
    REQUIRE(site.stage == Stage::SweatingAgain);
    const auto w = workingAt(diary, site);
    CHECK(w.dampNow.value() <= 1.4);
    CHECK(w.answer == Working::Partly);
}
