#pragma once

#include <compare>

// Each quantity names its unit in its only field, so that no function takes or returns a bare number.
namespace firstdew::facts {

struct Milliamps {
    double mA = 0;
    auto operator<=>(const Milliamps&) const = default;
};

struct MilliampMinutes {
    double mAmin = 0;
    auto operator<=>(const MilliampMinutes&) const = default;
};

struct Millicoulombs {
    double mC = 0;
    auto operator<=>(const Millicoulombs&) const = default;
};

struct Seconds {
    int s = 0;
    auto operator<=>(const Seconds&) const = default;
};

struct SquareCentimetres {
    double cm2 = 0;
    auto operator<=>(const SquareCentimetres&) const = default;
};

struct SquareMetres {
    double m2 = 0;
    auto operator<=>(const SquareMetres&) const = default;
};

struct Centimetres {
    double cm = 0;
    auto operator<=>(const Centimetres&) const = default;
};

struct Kilograms {
    double kg = 0;
    auto operator<=>(const Kilograms&) const = default;
};

struct Milligrams {
    double mg = 0;
    auto operator<=>(const Milligrams&) const = default;
};

} // namespace firstdew::facts
