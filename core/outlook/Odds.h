#pragma once

#include <cstddef>

namespace firstdew::outlook {

/// A chance as people say it: so many out of so many. The steps are our own choice.
enum class Odds {
    Hardly,
    OneInTwenty,
    OneInTen,
    OneInFive,
    OneInThree,
    OneInTwo,
    TwoInThree,
    FourInFive,
    NineInTen,
    Nearly
};

struct Frequency {
    int of = 0;
    int in = 20;
    bool operator==(const Frequency&) const = default;
};

/// Dots that picture a chance.
inline constexpr int kDots = 20;

/// The step that is nearest to `chance` (0 to 1) in log-odds. Below 1 in 40 it is Hardly, above 39 in 40 Nearly.
[[nodiscard]] Odds oddsOf(double chance);
/// That step in numbers: Hardly is 0 in 20 and stands for less than 1 in 20, Nearly 20 in 20 for more than 19 in 20.
[[nodiscard]] Frequency frequencyOf(Odds odds);
/// How many of the twenty dots are filled.
[[nodiscard]] int dotsOf(Odds odds);

} // namespace firstdew::outlook
