#include "rehearsal/Belief.h"

#include "core/rehearsal/Worlds.h"
#include "outlook/Filter.h"

#include <catch2/catch.hpp>

using namespace firstdew::rehearsal;

namespace {

/// What was believed on days, and on how many of them it was so.
struct Bin {
    double believed = 0;
    int came = 0;
    int days = 0;

    void add(double chance, bool was)
    {
        believed += chance;
        came += was ? 1 : 0;
        ++days;
    }
};

} // namespace

TEST_CASE("what is believed of the skin by the check-ins is true as often as it is believed")
{
    const World world = GENERATE(World{}, combined());
    std::array<Bin, 10> dry;
    std::array<Bin, 10> sweating;
    for (std::uint64_t person = 0; person < 400; ++person) {
        const Chance chance(3, person);
        Body body(world, chance);
        Belief belief(world);
        int last = 0;
        for (int day = 1; day <= 365; ++day) {
            body.pass(day);
            const int age = day - last;
            belief.pass(firstdew::outlook::hazardOf(body.survivor(age - 1), body.survivor(age)));
            if (const auto said = checkInOf(world, chance, body.skin(), day))
                belief.hear(*said);
            const auto binOf = [](double p) { return std::min<std::size_t>(9, static_cast<std::size_t>(10 * p)); };
            dry[binOf(belief.dry())].add(belief.dry(), body.skin() == Skin::Dry);
            sweating[binOf(belief.sweating())].add(belief.sweating(), body.skin() == Skin::Sweating);
            if (day % 5 == 0 && chance.happens(0.4, Draw::Felt, static_cast<std::uint64_t>(day))) {
                body.treat(false);
                belief.treat();
                last = day;
            }
        }
    }
    for (const auto& bins : {dry, sweating})
        for (const Bin& bin : bins) {
            CAPTURE(bin.believed / bin.days, static_cast<double>(bin.came) / bin.days, bin.days);
            // Days of one spell are alike, so that as many of them count for one.
            const double error = std::sqrt(0.25 / (bin.days / 10.0 + 1));
            CHECK(std::abs(bin.believed - bin.came) <= (0.02 + 3 * error) * bin.days);
        }
}

TEST_CASE("a belief sums to 1, and a session changes only what was not dry")
{
    Belief belief{World{}};
    CHECK(belief.dry() == Approx(1));
    belief.treat();
    CHECK(belief.dry() == Approx(1));
    belief.pass(0.5);
    const double dry = belief.dry();
    CHECK(dry == Approx(0.5));
    belief.hear({firstdew::facts::Level::Wet, false});
    CHECK(belief.sweating() == Approx(1)); // nobody else says so in this world
    for (int session = 0; session < 6; ++session)
        belief.treat();
    CHECK(belief.dry() == Approx(0.8)); // of three to seven sessions, evenly
    belief.treat();
    CHECK(belief.dry() == Approx(1));
}
