#include "outlook/Reporting.h"

#include "core/Build.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <numeric>
#include <random>

using namespace firstdew::outlook;
using build::day;

namespace {

const LocalDate kStart = day("2026-01-05");
constexpr int kSpellDays = 12;
/// Chances to last of somebody whose spells end at about day 9.
const std::vector<double>& lasting()
{
    static const auto kAll = [] {
        std::vector<double> out;
        for (int d = 0; d <= kSpellDays; ++d)
            out.push_back(std::exp(-std::numbers::ln2 * std::pow(d / 9.0, 4)));
        return out;
    }();
    return kAll;
}

/// One invented spell of that person with reports that err as `rates` say; clamminess stays.
std::vector<DayReport> reportsOf(std::mt19937& random, const ErrorRates& rates)
{
    const auto uniform = [&] { return (random() + 0.5) / 4294967296.0; };
    const double ends = 9 * std::pow(-std::log(uniform()) / std::numbers::ln2, 1.0 / 4);
    std::vector<DayReport> out;
    for (int d = 1; d <= kSpellDays; ++d) {
        const bool stirred = uniform() < 0.2;
        const double wrong = d >= ends ? rates.missed : stirred ? rates.falseStirred : rates.falseCalm;
        out.push_back({kStart + d, (d >= ends) != (uniform() < wrong) ? Level::Clammy : Level::Dry,
                       stirred ? SetOf<Circumstance>{Circumstance::Heat} : SetOf<Circumstance>{}});
    }
    return out;
}

Spell spellOf()
{
    Spell s;
    s.lastSession = kStart;
    s.watched = kSpellDays;
    return s;
}

double wrongOnDry(const std::array<std::array<double, 4>, 3>& table) { return 1 - table[0][0]; }

} // namespace

TEST_CASE("rules with other shares of errors keep sums of 1 and the proportions of the levels")
{
    const FilterRules usual;
    const FilterRules other = erring(usual, {0.08, 0.4, 0.2});
    for (const auto* table : {&other.calm, &other.stirred})
        for (const auto& row : *table)
            CHECK(std::accumulate(row.begin(), row.end(), 0.0) == Approx(1));
    CHECK(wrongOnDry(other.calm) == Approx(0.08));
    CHECK(wrongOnDry(other.stirred) == Approx(0.4));
    CHECK(other.calm[1][0] == Approx(0.2));
    CHECK(other.calm[0][2] / other.calm[0][1] == Approx(usual.calm[0][2] / usual.calm[0][1]));
    CHECK(other.stirred[1][3] / other.stirred[1][1] == Approx(usual.stirred[1][3] / usual.stirred[1][1]));
    CHECK(other.calm[2] == usual.calm[2]);
    const FilterRules same = erring(usual, {wrongOnDry(usual.calm), wrongOnDry(usual.stirred), usual.calm[1][0]});
    CHECK(same.calm[0][1] == Approx(usual.calm[0][1]));
}

TEST_CASE("before any report the chances are those of the start")
{
    const Reporting nothing;
    CHECK(std::accumulate(nothing.chances().begin(), nothing.chances().end(), 0.0) == Approx(1));
    CHECK(nothing.rates().falseCalm == Approx(0.84 * 0.02 + 0.10 * 0.06 + 0.04 * 0.01 + 0.02 * 0.02));
    Reporting silent;
    silent.see({}, spellOf(), lasting(), {});
    CHECK(silent.rates().falseCalm == Approx(nothing.rates().falseCalm));
    CHECK(silent.rates().missed == Approx(nothing.rates().missed));
}

TEST_CASE("a set's chance is multiplied by the chance of the reports, by every day on which dampness may have begun")
{
    const std::vector<DayReport> reports{
        {kStart + 1, Level::Dry, {}}, {kStart + 2, Level::Clammy, {Circumstance::Heat}}, {kStart + 3, Level::Dry, {}}};
    const std::array<double, 4> survivors{1, 0.95, 0.85, 0.7};
    FilterRules rules;
    rules.stayDryAfterSession = 1;
    rules.clammyToSweating = 0; // two states, and damp for good
    Reporting seen;
    seen.see(reports, spellOf(), survivors, rules);
    const std::array<ErrorRates, 4> sets{
        {{0.02, 0.15, 0.10}, {0.06, 0.30, 0.10}, {0.01, 0.08, 0.05}, {0.02, 0.15, 0.25}}};
    const std::array<double, 4> first{0.84, 0.10, 0.04, 0.02};
    std::array<double, 4> exact{};
    for (std::size_t i = 0; i < sets.size(); ++i) {
        const FilterRules own = erring(rules, sets[i]);
        for (std::size_t begins = 1; begins <= 4; ++begins) { // 4: not yet
            double p = begins < 4 ? survivors[begins - 1] - survivors[begins] : survivors[3];
            for (std::size_t d = 1; d <= 3; ++d) {
                const auto& says = d == 2 ? own.stirred : own.calm;
                p *= says[d >= begins ? 1 : 0][static_cast<std::size_t>(reports[d - 1].level)];
            }
            exact[i] += first[i] * p;
        }
    }
    const double sum = std::accumulate(exact.begin(), exact.end(), 0.0);
    for (std::size_t i = 0; i < sets.size(); ++i)
        CHECK(seen.chances()[i] == Approx(exact[i] / sum).epsilon(1e-9));
}

TEST_CASE("in a long diary the right set wins, whichever it is")
{
    const std::array<ErrorRates, 4> sets{
        {{0.02, 0.15, 0.10}, {0.06, 0.30, 0.10}, {0.01, 0.08, 0.05}, {0.02, 0.15, 0.25}}};
    for (std::size_t truth = 0; truth < sets.size(); ++truth)
        for (unsigned person = 0; person < 5; ++person) {
            std::mt19937 random(19 + person);
            Reporting r;
            for (int spell = 0; spell < 150; ++spell)
                r.see(reportsOf(random, sets[truth]), spellOf(), lasting(), {});
            CAPTURE(truth, person, r.rates().falseCalm, r.rates().falseStirred, r.rates().missed);
            CHECK(r.chances()[truth] > 0.9);
        }
}
