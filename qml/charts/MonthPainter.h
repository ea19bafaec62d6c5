#pragma once

#include "charts/TimeFrame.h"
#include "facts/Enumerations.h"

#include <map>
#include <set>

namespace firstdew::charts {

/// One site's last five weeks: about a month, and never an empty one.
struct MonthData {
    static constexpr int kWeeks = 5;
    static constexpr int kDays = 7 * kWeeks;
    LocalDate first; ///< begins a week
    LocalDate today; ///< later days are faint
    std::map<LocalDate, Level> levels;
    std::set<LocalDate> sessions;
    QStringList weekdays;              ///< seven letters, in the order of the columns
    std::optional<LocalDate> selected; ///< where the keyboard is
};

/// Radius of the dot of a level, in dp: a ring where dry, and larger the damper.
[[nodiscard]] double dotRadius(Level level);

/// Height that the weeks need.
[[nodiscard]] double monthHeight(const ChartLook& look);

/// Draws a cell for each day: its number, with the month where that begins, a dot for its level, a bar below for a
/// session. Days without a check-in have no dot.
void paintMonth(QPainter& painter, const QRectF& area, const MonthData& data, const ChartLook& look);

/// The day under a point, up to today.
[[nodiscard]] std::optional<LocalDate> dayAt(const QRectF& area, const MonthData& data, const ChartLook& look,
                                             QPointF point);

} // namespace firstdew::charts
