#include "protocol/Sweat.h"

#include <catch2/catch.hpp>
#include <cmath>

using namespace firstdew::protocol;

namespace {

Weighing paper(double before, double after, double minutes) { return {DiarySite::Hands, {before}, {after}, minutes}; }

} // namespace

TEST_CASE("the published limits are mean and two deviations, to within the rounding of the paper")
{
    // Stefaniak & Proczko, Clin Auton Res 2013;23(4): 46, 50 and 136 from 18.49 ± 14.06, 15.77 ± 16.87,
    // 42.39 ± 47.08. Recomputed 46.61, 49.51 and 136.55; printed without decimals, twice cut off and once rounded.
    const double recomputed[] = {46.61, 49.51, 136.55};
    for (const auto site : allOf<DiarySite>()) {
        const auto n = normalSweat(site);
        CHECK(n.site == site);
        CHECK(n.mean + 2 * n.sd == Approx(recomputed[static_cast<int>(site)]));
        CHECK(std::abs(n.mean + 2 * n.sd - n.upperNormal) < 1);
    }
    CHECK(normalSweat(DiarySite::Hands).upperNormal == 46);
    CHECK(normalSweat(DiarySite::Feet).upperNormal == 50);
    CHECK(normalSweat(DiarySite::Armpits).upperNormal == 136);
}

TEST_CASE("the weight gain of the paper per minute and per body surface")
{
    const auto rate = sweatRate(paper(1000, 1500, 5), {1.8});
    REQUIRE(rate);
    CHECK(rate->mgPerMin == Approx(100));
    CHECK(rate->mgPerMinPerM2 == Approx(55.56).margin(0.01));
    CHECK(rate->above);
    CHECK(rate->aboveFiveMinuteCut == true);
    CHECK_FALSE(sweatRate(paper(1000, 1414, 5), {1.8})->above); // exactly 46
}

TEST_CASE("the other cut-off is 100 mg in five minutes, whatever the time taken")
{
    // Thorlacius et al., Int J Dermatol 2015;54:e409-15
    CHECK(sweatRate(paper(1000, 1100, 5), {1.8})->aboveFiveMinuteCut == false);
    CHECK(sweatRate(paper(1000, 1101, 5), {1.8})->aboveFiveMinuteCut == true);
    CHECK(sweatRate(paper(1000, 1021, 1), {1.8})->aboveFiveMinuteCut == true);
    Weighing feet = paper(1000, 1500, 5);
    feet.site = DiarySite::Feet; // not measured in that paper
    CHECK_FALSE(sweatRate(feet, {1.8})->aboveFiveMinuteCut);
}

TEST_CASE("impossible weighings are refused")
{
    const double nan = std::nan("");
    CHECK(sweatRate(paper(1000, 999, 5), {1.8}).error().code == "lighter-after");
    CHECK(sweatRate(paper(0, 999, 5), {1.8}).error().code == "weight-of-paper");
    CHECK(sweatRate(paper(1000, 1e9, 5), {1.8}).error().code == "weight-of-paper");
    CHECK(sweatRate(paper(nan, 999, 5), {1.8}).error().code == "weight-of-paper");
    CHECK(sweatRate(paper(1000, 1100, 0), {1.8}).error().code == "minutes-out-of-range");
    CHECK(sweatRate(paper(1000, 1100, nan), {1.8}).error().code == "minutes-out-of-range");
    CHECK(sweatRate(paper(1000, 1100, 5), {0}).error().code == "no-body-surface");
}

TEST_CASE("paper that lay for longer than a day, or a body surface without end, gives no rate")
{
    CHECK(sweatRate(paper(1000, 1100, 1440), {1.8}).ok());
    CHECK(sweatRate(paper(1000, 1100, 1441), {1.8}).error().code == "minutes-out-of-range");
    CHECK(sweatRate(paper(1000, 1100, 5), {HUGE_VAL}).error().code == "no-body-surface");
    CHECK(sweatRate(paper(1000, 1100, 5), {std::nan("")}).error().code == "no-body-surface");
}

TEST_CASE("paper of up to a hundred grams is weighed")
{
    CHECK(sweatRate(paper(100'000, 100'000, 5), {1.8}).ok());
    CHECK(sweatRate(paper(100'000, 100'001, 5), {1.8}).error().code == "weight-of-paper");
}
