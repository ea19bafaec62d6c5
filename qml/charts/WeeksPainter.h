#pragma once

#include "charts/TimeFrame.h"

namespace firstdew::charts {

/// One week, from its Monday. Nullopt where too few days are known.
struct WeekBar {
    LocalDate monday;
    std::optional<double> damp; ///< damp days, 0 to 7
    double wet = 0;             ///< of them wet or dripping
};

/// One site's weeks.
struct WeeksData {
    LocalDate from;
    LocalDate to;
    std::vector<WeekBar> weeks; ///< ascending
    std::vector<LocalDate> sessions;
};

/// Draws a bar for each week, as high as its damp days: whole where wet, light where clammy. A week that is not known
/// has none. Where weeks are too thin to tell apart, some stand as one, with their mean. A tick below for each session.
void paintWeeks(QPainter& painter, const QRectF& area, const WeeksData& data, const ChartLook& look);

} // namespace firstdew::charts
