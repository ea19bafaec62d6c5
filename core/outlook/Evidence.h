#pragma once

#include "outlook/FilterRules.h"
#include "outlook/Fit.h"
#include "outlook/Intervals.h"

#include <span>
#include <vector>

namespace firstdew::outlook {

/// What one spell says about its time to clammy T: the likelihood is
/// regardless + sum of weight * P(from < T <= to) over the pieces.
struct Evidence {
    struct Piece {
        double from = 0;
        double to = 0; ///< infinite: no end
        double weight = 0;
        bool operator==(const Piece&) const = default;
    };
    std::vector<Piece> pieces;
    double regardless = 0; ///< of what was reported if the session never took hold, whatever T would have been
    bool operator==(const Evidence&) const = default;
};

/// An interval taken at its word.
[[nodiscard]] Evidence evidenceOf(const Interval& interval);

/// The reports of the `days` days after `lastSession` as what they are: signs that can mislead, more so on a stirred
/// day. Each day of onset is weighed by how well it explains all of them. Scaled so that the greatest weight is 1.
[[nodiscard]] Evidence evidenceOf(std::span<const DayReport> reports, LocalDate lastSession, int days,
                                  const FilterRules& rules = {});

} // namespace firstdew::outlook
