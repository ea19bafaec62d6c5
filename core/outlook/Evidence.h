#pragma once

#include "outlook/FilterRules.h"
#include "outlook/Fit.h"
#include "outlook/Intervals.h"

#include <span>
#include <vector>

namespace firstdew::outlook {

/// The likelihood of one spell as a function of its time to clammy T:
/// regardless + sum of weight * P(from < T <= to) over the pieces.
struct Evidence {
    struct Piece {
        double from = 0;
        double to = 0; ///< infinite: no end
        double weight = 0;
        bool operator==(const Piece&) const = default;
    };
    std::vector<Piece> pieces;
    double regardless = 0; ///< likelihood of the reports if the session had no effect, for every T
    bool operator==(const Evidence&) const = default;
};

/// The evidence of an interval without errors.
[[nodiscard]] Evidence evidenceOf(const Interval& interval);

/// The evidence of the reports on the `days` days after `lastSession`. A report can be wrong, more often on a stirred
/// day. The weight of each day of onset is the likelihood of all reports. The greatest weight is scaled to 1.
[[nodiscard]] Evidence evidenceOf(std::span<const DayReport> reports, LocalDate lastSession, int days,
                                  const FilterRules& rules = {});

} // namespace firstdew::outlook
