#include "outlook/Filter.h"

#include "core/Build.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

// The filter and the evidence against exact enumeration of every way the states could have gone.

using namespace firstdew::outlook;
using build::day;

namespace {

const LocalDate kStart = day("2026-01-05");
constexpr std::size_t kDays = 7;

/// States of days 0 (after the session) to n: 0 dry, 1 clammy, 2 sweating.
using Path = std::array<std::size_t, kDays + 1>;

std::array<double, 3> statesAfterSession(const FilterRules& rules)
{
    const double not_ = 1 - rules.stayDryAfterSession;
    return {rules.stayDryAfterSession, not_ * (1 - rules.sweatingIfNot), not_ * rules.sweatingIfNot};
}

double chanceOf(const Path& path, const Predictive& clock, std::span<const DayReport> reports, const FilterRules& rules)
{
    double p = statesAfterSession(rules)[path[0]];
    for (std::size_t d = 1; d <= kDays; ++d) {
        const auto at = static_cast<double>(d);
        const double hazard = 1 - clock.survivor(at) / clock.survivor(at - 1);
        const double on = rules.clammyToSweating;
        const double move[3][3] = {{1 - hazard, hazard, 0}, {0, 1 - on, on}, {0, 0, 1}};
        p *= move[path[d - 1]][path[d]];
        for (const DayReport& r : reports)
            if (r.date == kStart + static_cast<int>(d))
                p *= (r.stirred() ? rules.stirred : rules.calm)[path[d]][static_cast<std::size_t>(r.level)];
    }
    return p;
}

/// Likelihood of the reports, split by the state of the last day.
std::array<double, 3> byEnumeration(const Predictive& clock, std::span<const DayReport> reports,
                                    const FilterRules& rules)
{
    std::array<double, 3> out{};
    const auto ways = static_cast<int>(std::pow(3, kDays + 1));
    for (int code = 0; code < ways; ++code) {
        Path path{};
        for (std::size_t d = 0, rest = static_cast<std::size_t>(code); d <= kDays; ++d, rest /= 3)
            path[d] = rest % 3;
        out[path[kDays]] += chanceOf(path, clock, reports, rules);
    }
    return out;
}

std::vector<DayReport> someReports(std::mt19937& random)
{
    std::vector<DayReport> out;
    for (std::size_t d = 1; d <= kDays; ++d)
        if (random() % 3 != 0)
            out.push_back({kStart + static_cast<int>(d), static_cast<Level>(random() % 2 == 0 ? 0 : random() % 4),
                           random() % 4 == 0 ? SetOf<Circumstance>{Circumstance::Heat} : SetOf<Circumstance>{}});
    return out;
}

Predictive clockOf(std::vector<Interval> intervals)
{
    std::vector<Evidence> evidence;
    for (const Interval& x : intervals)
        evidence.push_back(evidenceOf(x));
    return Predictive(evidence);
}

/// What the evidence says of a clock: sum of weight * mass, and the rest.
double likelihood(const Evidence& e, const Predictive& clock)
{
    double sum = e.regardless;
    for (const Evidence::Piece& p : e.pieces)
        sum += p.weight * (clock.survivor(p.from) - (std::isinf(p.to) ? 0 : clock.survivor(p.to)));
    return sum;
}

} // namespace

TEST_CASE("the filter equals exact enumeration of all state sequences")
{
    std::mt19937 random(3);
    const auto clock = clockOf({{3, 5}, {4, 6}});
    for (int round = 0; round < 20; ++round) {
        const auto reports = someReports(random);
        const auto exact = byEnumeration(clock, reports, {});
        const double sum = exact[0] + exact[1] + exact[2];
        const auto states = filterStates(clock, reports, kStart, kStart + static_cast<int>(kDays), 3);
        REQUIRE(states.size() == kDays + 4);
        CHECK(states[kDays].dry == Approx(exact[0] / sum).epsilon(1e-9));
        CHECK(states[kDays].clammy == Approx(exact[1] / sum).epsilon(1e-9));
        CHECK(states[kDays].sweating == Approx(exact[2] / sum).epsilon(1e-9));
    }
}

TEST_CASE("the evidence of a spell equals enumeration of all state sequences")
{
    std::mt19937 random(4);
    const auto quick = clockOf({{2, 3}, {2, 3}, {1, 3}});
    const auto slow = clockOf({{20, 25}, {18, 20}});
    for (int round = 0; round < 20; ++round) {
        const auto reports = someReports(random);
        const auto sum = [&](const Predictive& clock) {
            const auto parts = byEnumeration(clock, reports, {});
            return parts[0] + parts[1] + parts[2];
        };
        const auto evidence = evidenceOf(reports, kStart, static_cast<int>(kDays));
        CHECK(likelihood(evidence, quick) / likelihood(evidence, slow) == Approx(sum(quick) / sum(slow)).epsilon(1e-5));
    }
}

TEST_CASE("ten years of reports without a session give evidence without overflow")
{
    for (const Level level : {Level::Dry, Level::Clammy, Level::Dripping}) {
        std::vector<DayReport> reports;
        for (int d = 1; d <= 3650; ++d)
            reports.push_back({kStart + d, level, {}});
        const auto evidence = evidenceOf(reports, kStart, 3650);
        double greatest = evidence.regardless;
        for (const auto& p : evidence.pieces) {
            CHECK(std::isfinite(p.weight));
            greatest = std::max(greatest, p.weight);
        }
        CHECK(greatest == Approx(1));
        for (const auto& s : filterStates(Predictive({&evidence, 1}), reports, kStart, kStart + 3650, 28))
            REQUIRE(s.dry + s.clammy + s.sweating == Approx(1));
    }
}
