#pragma once

#include <QString>

namespace firstdew::words {

enum class Unit {
    Milliamps,
    MilliampMinutes,
    Minutes,
    Seconds,
    Milligrams,
    Millilitres,
    SquareCentimetres,
    Percent,
};

/// Number and unit as the language writes them, in one piece: no line ends between the two. Every quantity that is
/// shown, said in a notice or printed comes from here.
[[nodiscard]] QString quantity(const QString& number, Unit unit);
/// The same with as many decimals as asked for.
[[nodiscard]] QString quantity(double value, Unit unit, int decimals = 0);
/// "12.5 mA"; whole numbers without a decimal.
[[nodiscard]] QString milliamps(double mA);
/// "10 min".
[[nodiscard]] QString minutes(int count);
/// "20%" of 0.2.
[[nodiscard]] QString percent(double share);

} // namespace firstdew::words
