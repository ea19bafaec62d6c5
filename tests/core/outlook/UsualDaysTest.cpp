#include "outlook/UsualDays.h"

#include <catch2/catch.hpp>

using namespace firstdew::outlook;

TEST_CASE("Usual days are whole, at least one, and in their order")
{
    Forecast f;
    f.usualFrom = 3.5;
    f.usualMedian = 9.49;
    f.usualTo = 34.6;
    CHECK(usualDays(f) == UsualDays{4, 9, 35});
    f.usualFrom = 0.2;
    f.usualMedian = 0.3;
    f.usualTo = 0.4;
    CHECK(usualDays(f) == UsualDays{1, 1, 1});
}
