#include "outlook/HoldRatio.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>
#include <vector>

using namespace firstdew::outlook;

namespace {

struct World {
    double ratio = 1;
    double shape = 3;
    double median = 10;
    double missed = 0.15; ///< chance that a day has no check-in
};

/// A person's spells in pairs of random order, ended by the first clammy report.
class Pairs {
public:
    Pairs(const World& world, unsigned seed) : m_world(world), m_random(seed) {}

    void add(std::vector<ComparedSpell>& spells)
    {
        const bool first = chance() < 0.5;
        spells.push_back({interval(first), first});
        spells.push_back({interval(!first), !first});
    }

private:
    double chance() { return std::uniform_real_distribution<>(0, 1)(m_random); }

    Interval interval(bool shorter)
    {
        const double time = m_world.median * (shorter ? m_world.ratio : 1) *
                            std::pow(-std::log(1 - chance()) / std::log(2), 1 / m_world.shape);
        Interval x;
        for (int day = 1; !x.right; ++day)
            if (chance() >= m_world.missed) {
                if (day >= time)
                    x.right = day;
                else
                    x.left = day;
            }
        return x;
    }

    World m_world;
    std::mt19937_64 m_random;
};

struct Lived {
    bool early = false;
    HoldAnswer answer{};
    std::size_t spells = 0;
    [[nodiscard]] bool saysLess() const { return early || answer == HoldAnswer::Less; }
};

Lived live(const World& world, unsigned seed)
{
    Pairs pairs(world, seed);
    std::vector<ComparedSpell> spells;
    Lived out;
    for (int pair = 1; pair <= kPairs && !out.early; ++pair) {
        pairs.add(spells);
        out.early = std::ranges::find(kEarlyLooks, pair) != std::end(kEarlyLooks) && plainlyLess(spells);
    }
    const auto held = holdRatioOf(spells);
    out.answer = held ? answerOf(*held) : HoldAnswer::NotTold;
    out.spells = spells.size();
    return out;
}

struct Shares {
    double less = 0, early = 0, asLong = 0, spells = 0;
};

Shares sharesOf(const World& world, int people)
{
    Shares out;
    for (int i = 0; i < people; ++i) {
        const Lived one = live(world, 1000U + static_cast<unsigned>(i));
        out.less += one.saysLess();
        out.early += one.early;
        out.asLong += !one.saysLess() && one.answer == HoldAnswer::AsLong;
        out.spells += static_cast<double>(one.spells);
    }
    for (double* x : {&out.less, &out.early, &out.asLong, &out.spells})
        *x /= people;
    return out;
}

constexpr int kPeople = 1000;

} // namespace

TEST_CASE("a shorter session that holds as long is said to hold less in one comparison of twenty at most")
{
    for (const double shape : {2.0, 3.0, 4.0}) {
        const Shares s = sharesOf({1, shape, 10, 0.15}, kPeople);
        CAPTURE(shape, s.less, s.early, s.asLong);
        CHECK(s.less <= 0.06); // 0.05, and 1.5 standard errors
        CHECK(s.early <= 0.015);
    }
}

TEST_CASE("one that holds 0.6 times as long is found in four comparisons of five, a fifth of them early")
{
    const Shares s = sharesOf({0.6, 3, 10, 0.15}, kPeople);
    CAPTURE(s.less, s.early, s.asLong, s.spells);
    CHECK(s.less >= 0.78);
    CHECK(s.less <= 0.90);
    CHECK(s.early >= 0.15);
    CHECK(s.asLong <= 0.02);
}

TEST_CASE("one that holds 0.7 times as long is said to hold about as long in one comparison of twenty at most")
{
    const Shares s = sharesOf({kAboutAsLong, 3, 10, 0.15}, kPeople);
    CAPTURE(s.less, s.asLong);
    CHECK(s.asLong <= 0.06);
}

TEST_CASE("of those that hold as long, about half are told so after eight pairs")
{
    const Shares s = sharesOf({1, 3, 10, 0.15}, kPeople);
    CAPTURE(s.asLong);
    CHECK(s.asLong >= 0.4);
    CHECK(s.asLong <= 0.65);
}

TEST_CASE("the ratio is where the likelihood is greatest, and the interval lies around it")
{
    std::vector<ComparedSpell> spells;
    Pairs pairs({0.6, 3, 10, 0.15}, 7);
    for (int i = 0; i < 8; ++i)
        pairs.add(spells);
    const auto held = holdRatioOf(spells);
    REQUIRE(held);
    CHECK(held->low < held->ratio);
    CHECK(held->ratio < held->high);
    const auto valueAt = [&](double ratio) {
        std::vector<Interval> all;
        for (const auto& s : spells) {
            const double by = s.shorter ? ratio : 1;
            all.push_back({s.held.left / by, *s.held.right / by});
        }
        return fit(Family::Weibull, all)->logLikelihood;
    };
    CHECK(valueAt(held->ratio) == Approx(held->logLikelihood));
    for (const double by : {0.9, 0.99, 1.01, 1.1})
        CHECK(valueAt(held->ratio * by) < held->logLikelihood);
    CHECK(held->logLikelihood - valueAt(held->low) == Approx(1.9207).epsilon(1e-3));
    CHECK(held->logLikelihood - valueAt(held->high) == Approx(1.9207).epsilon(1e-3));
}

TEST_CASE("spells that say nothing have no ratio, and spells without any scatter still have one")
{
    CHECK_FALSE(holdRatioOf({}));
    const std::vector<ComparedSpell> open{{{5, {}}, false}, {{4, {}}, true}};
    CHECK_FALSE(holdRatioOf(open));
    CHECK_FALSE(plainlyLess(open));
    std::vector<ComparedSpell> regular;
    for (int i = 0; i < 4; ++i) {
        regular.push_back({{9, 10}, false});
        regular.push_back({{4, 5}, true});
    }
    const auto held = holdRatioOf(regular);
    REQUIRE(held);
    CHECK(held->ratio > 0.3);
    CHECK(held->ratio < 0.6);
    CHECK(held->usualMedian >= 9);
    CHECK(held->usualMedian <= 10);
    CHECK(held->high < 1);
    CHECK(plainlyLess(regular));
    // One length never ended: the ratio has no upper end.
    const std::vector<ComparedSpell> longer{{{9, 10}, false}, {{7, 8}, false}, {{30, {}}, true}, {{30, {}}, true}};
    const auto more = holdRatioOf(longer);
    REQUIRE(more);
    CHECK(more->high == Approx(1 / kLeastRatio));
    CHECK(more->low > 1);
    CHECK(answerOf(*more) == HoldAnswer::AsLong);
}

TEST_CASE("a few regular spells have a ratio in whatever order the lengths come")
{
    for (unsigned order = 0; order < 32; ++order) {
        std::vector<ComparedSpell> spells;
        for (unsigned i = 0; i < 4; ++i) {
            const bool shorter = (order >> i & 1U) == 1;
            const double right = (shorter ? 6 : 12) + (i + 1) % 3 - 1.0;
            spells.push_back({{right - 1, right}, shorter});
        }
        spells.push_back({{3, {}}, order >= 16});
        const auto held = holdRatioOf(spells);
        CAPTURE(order);
        REQUIRE(held);
        CHECK(held->low <= held->ratio);
        CHECK(held->ratio <= held->high);
        if (order % 16 != 0 && order % 16 != 15) { // both lengths have ended
            CHECK(held->ratio > 0.3);
            CHECK(held->ratio < 0.8);
        }
    }
}

TEST_CASE("the answer goes by the interval")
{
    const auto answer = [](double low, double high) { return answerOf({1, low, high, 10, 0}); };
    CHECK(answer(0.70, 1.3) == HoldAnswer::AsLong);
    CHECK(answer(0.75, 0.95) == HoldAnswer::AsLong); // surely less, and surely not much less
    CHECK(answer(0.69, 0.99) == HoldAnswer::Less);
    CHECK(answer(0.69, 1.0) == HoldAnswer::NotTold);
    CHECK(answer(0.3, 3) == HoldAnswer::NotTold);
}
