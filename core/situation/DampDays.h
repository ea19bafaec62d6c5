#pragma once

#include "diary/Diary.h"

#include <optional>
#include <vector>

namespace firstdew::situation {

using namespace facts;

/// Days with a check-in, and how many of them were damp.
struct DampDays {
    int reported = 0;
    int damp = 0; ///< clammy or more
    int wet = 0;  ///< of these, wet or dripping
    bool operator==(const DampDays&) const = default;

    /// Damp days in a week of such days. Nullopt if fewer than `least` days were reported.
    [[nodiscard]] std::optional<double> aWeek(int least) const;
    /// Wet days in a week of such days, in the same way.
    [[nodiscard]] std::optional<double> wetAWeek(int least) const;
};

/// Check-ins in a week from which it tells how many of its days were damp (our own choice).
inline constexpr int kLeastInWeek = 3;

/// The days from `from` to `to`, both included.
[[nodiscard]] DampDays dampDaysIn(const diary::SiteDiary& site, LocalDate from, LocalDate to);

struct DampWeek {
    LocalDate monday;
    DampDays days;
    bool operator==(const DampWeek&) const = default;
};

/// Every week, from Monday, that has a day from `from` to `to`. Only those days are counted.
[[nodiscard]] std::vector<DampWeek> dampWeeks(const diary::SiteDiary& site, LocalDate from, LocalDate to);

} // namespace firstdew::situation
