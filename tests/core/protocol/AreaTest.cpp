#include "protocol/Area.h"

#include "protocol/Limits.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <rapidcheck.h>

using namespace firstdew::protocol;

TEST_CASE("body surface of 170 cm and 70 kg by both formulae")
{
    const auto body = bodySurface({170}, {70});
    REQUIRE(body);
    CHECK(body->mosteller.m2 == Approx(1.818).margin(0.0005)); // Mosteller, N Engl J Med 1987;317:1098
    CHECK(body->duBois.m2 == Approx(1.810).margin(0.0005));    // Du Bois & Du Bois, Arch Intern Med 1916;17:863
    CHECK(body->cautious().m2 == body->duBois.m2);
    // The root of 180 × 80 / 3600, which is 4.
    CHECK(bodySurface({180}, {80})->mosteller.m2 == Approx(2).epsilon(1e-12));
}

TEST_CASE("hand area and density at 20 mA for that person")
{
    const auto body = bodySurface({170}, {70});
    // 0.87 % of 1.818 m² is 158.2 cm²; 20 mA over it 0.126 mA/cm²: below 0.2, worked by hand from the published
    // share (Rhodes et al., Br J Dermatol 2013;169:76-84)
    CHECK(handArea(body->mosteller, AgeGroup::Adult).cm2 == Approx(158.2).margin(0.05));
    CHECK(20 / handArea(body->mosteller, AgeGroup::Adult).cm2 == Approx(0.1264).margin(0.0001));
    CHECK(20 / handArea(body->duBois, AgeGroup::Adult).cm2 == Approx(0.1270).margin(0.0001));
    CHECK(20 / handArea(body->duBois, AgeGroup::Adult).cm2 < kDensityWarning);
}

TEST_CASE("the contact area is the smallest on the path, and the hand's with hand + foot")
{
    const SquareMetres body{1.8};
    CHECK(contactArea(Site::Hands, AgeGroup::Adult, body, {})->cm2 == Approx(156.6));
    CHECK(contactArea(Site::Feet, AgeGroup::Adult, body, {})->cm2 == Approx(270));
    CHECK(contactArea(Site::HandFoot, AgeGroup::Adult, body, {})->cm2 == Approx(156.6));
    CHECK(contactArea(Site::Armpits, AgeGroup::Adult, body, SquareCentimetres{60})->cm2 == 60);
    CHECK_FALSE(contactArea(Site::Armpits, AgeGroup::Adult, body, {}));
    CHECK_FALSE(contactArea(Site::Hands, AgeGroup::Adult, {}, {}));
    CHECK_FALSE(contactArea(Site::Hands, AgeGroup::Adult, SquareMetres{0}, SquareCentimetres{-5}));
    CHECK(contactArea(Site::Hands, AgeGroup::Adult, body, SquareCentimetres{60})->cm2 == 60);
    CHECK(contactArea(Site::Hands, AgeGroup::Adult, body, SquareCentimetres{900})->cm2 == Approx(156.6));
}

TEST_CASE("the hand of a small child gives a warning below the limit")
{
    // 85 cm and 12 kg: 0.53 m², one hand about 50 cm², 0.2 mA/cm² at 10 mA; worked by hand
    const auto body = bodySurface({85}, {12});
    REQUIRE(body);
    const auto hand = contactArea(Site::Hands, AgeGroup::Child, body->cautious(), {});
    const auto limit = limitFor({Site::Hands, Waveform::Direct, AgeGroup::Child, {}, {}, hand});
    CHECK(limit.limit.mA == 15);
    REQUIRE(limit.warnAbove);
    CHECK(limit.warnAbove->mA == Approx(0.2 * 10'000 * 0.0094 * 0.521).epsilon(0.01));
}

TEST_CASE("an impossible height or weight is refused")
{
    for (const double bad : {0.0, -170.0, 1.7, 1e9, std::nan(""), HUGE_VAL})
        CHECK(bodySurface({bad}, {70}).error().code == "height-out-of-range");
    for (const double bad : {0.0, -1.0, 1e9, std::nan(""), HUGE_VAL})
        CHECK(bodySurface({170}, {bad}).error().code == "weight-out-of-range");
}

TEST_CASE("both formulae agree to a tenth for adults")
{
    CHECK(rc::check([] {
        const double cm = *rc::gen::inRange(145, 201);
        const double bmi = *rc::gen::inRange(18, 35);
        const auto body = bodySurface({cm}, {bmi * cm * cm / 10'000});
        RC_ASSERT(body.ok());
        RC_ASSERT(std::abs(body->mosteller.m2 / body->duBois.m2 - 1) < 0.1);
    }));
}

TEST_CASE("there is no warning where it would come at the limit itself")
{
    const auto warns = [](double cm2) {
        return limitFor({Site::Hands, Waveform::Direct, AgeGroup::Adult, {}, {}, SquareCentimetres{cm2}}).warnAbove;
    };
    CHECK_FALSE(warns(100)); // 0.2 mA/cm²: 20 mA, the limit
    CHECK(warns(99));
}
