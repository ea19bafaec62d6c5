#include "sound/Timeline.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>

using namespace firstdew::sound;

namespace {

constexpr long long kSecond = 16'000;
constexpr long long kLead = 400;

/// A clip of that many samples that all have that value.
Timeline::Sound clip(const char* id, long long due, std::size_t length, std::int16_t value, bool spoken = true)
{
    return {due, std::make_shared<const Samples>(length, value), id, spoken};
}

Timeline::Sound loudAt(long long due)
{
    auto sound = clip("alarm", due, 1000, 9, false);
    sound.cuts = true;
    return sound;
}

std::int16_t at(const Timeline& t, long long position)
{
    Samples one(1);
    t.render(position, one);
    return one.front();
}

Timeline fresh() { return Timeline(kLead, 8 * kSecond); }

} // namespace

TEST_CASE("What is planned is heard at its sample, and one sound waits for the one before it")
{
    Timeline t = fresh();
    t.plan(0, {clip("a", kSecond, 3000, 1), clip("b", kSecond + 1000, 3000, 2)}, 0);
    CHECK(at(t, kSecond - 1) == 0);
    CHECK(at(t, kSecond) == 1);
    CHECK(at(t, kSecond + 2999) == 1);
    CHECK(at(t, kSecond + 3000) == 2);
    CHECK(at(t, kSecond + 3000 + 3000 - kLead - 1) == 2); // without its silence at the beginning
    CHECK(at(t, kSecond + 3000 + 3000 - kLead) == 0);
    CHECK(t.left(0) == 0); // nothing is being said
    CHECK(t.left(kSecond + 10) > 0);
}

TEST_CASE("A new plan lets be finished what is being said, and what waits for it, and drops the rest")
{
    Timeline t = fresh();
    t.plan(0, {clip("a", 100, 8000, 1), clip("b", 200, 8000, 2), clip("c", 9 * kSecond, 100, 3)}, 0);
    t.plan(1000, {clip("d", 2 * kSecond, 100, 4)}, 0);
    CHECK(at(t, 5000) == 1);
    CHECK(at(t, 8200) == 2);
    CHECK(at(t, 2 * kSecond) == 4);
    CHECK(at(t, 9 * kSecond) == 0);
}

TEST_CASE("What has begun a little before the session knew is not said twice")
{
    Timeline t = fresh();
    t.plan(0, {clip("a", 1000, 500, 1)}, 0);
    t.plan(1100, {clip("a", 1150, 500, 1)}, 0);
    CHECK(at(t, 1499) == 1);
    CHECK(at(t, 1501) == 0);
}

TEST_CASE("What is added goes before what is planned, and what would come too late is left out")
{
    Timeline t = fresh();
    t.plan(0, {clip("late", kSecond, 100, 2), clip("later", 20 * kSecond, 100, 3)}, 0);
    t.add(0, clip("long", 0, 10 * kSecond, 1));
    CHECK(at(t, kSecond) == 1);
    CHECK(at(t, 10 * kSecond + 10) == 0);
    CHECK(at(t, 20 * kSecond) == 3);
    CHECK(t.left(0) == 10 * kSecond);
}

TEST_CASE("A planned alarm cuts off what is said at its time")
{
    Timeline t = fresh();
    t.plan(0, {clip("a", 100, 8000, 1), loudAt(4000), clip("too-high", 4000, 500, 2)}, 0);
    CHECK(at(t, 3999) == 1);
    CHECK(at(t, 4000) == 9);
    CHECK(at(t, 5000) == 2);
}

TEST_CASE("Hushed, nothing but the bed is left, and at its end there is silence")
{
    Timeline t = fresh();
    t.setBed(std::make_shared<const Samples>(7, std::int16_t{50}));
    t.plan(0, {clip("a", 9 * kSecond, 500, 100)}, 20 * kSecond);
    CHECK(at(t, 9 * kSecond) == 150);
    t.hush();
    CHECK(at(t, 9 * kSecond) == 50);
    CHECK(at(t, 0) == 0); // it comes softly
    CHECK(at(t, 20 * kSecond) == 0);
    CHECK_FALSE(t.silentFrom(10 * kSecond));
    t.end(10 * kSecond);
    CHECK(t.silentFrom(11 * kSecond));
}

TEST_CASE("However a timeline is cut into pieces, it is the same sound")
{
    Timeline t = fresh();
    t.setBed(std::make_shared<const Samples>(Samples{1, 2, 3, 4, 5}));
    t.plan(0, {clip("a", 1000, 3000, 100), loudAt(3000), clip("b", 3100, 500, 30'000)}, 6000);
    Samples whole(8000);
    t.render(0, whole);
    for (const std::size_t piece : {1U, 7U, 640U, 4096U})
        for (std::size_t from = 0; from < whole.size(); from += piece) {
            Samples part(std::min(piece, whole.size() - from));
            t.render(static_cast<long long>(from), part);
            REQUIRE(std::equal(part.begin(), part.end(), whole.begin() + static_cast<long>(from)));
        }
}
