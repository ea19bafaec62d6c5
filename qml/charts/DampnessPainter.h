#pragma once

#include "charts/TimeFrame.h"
#include "facts/Enumerations.h"

#include <QString>
#include <array>
#include <optional>
#include <vector>

namespace firstdew::charts {

/// One site's line: levels by day, baths, the days of the chart.
struct DampnessData {
    LocalDate from;
    LocalDate to;
    std::vector<std::pair<LocalDate, Level>> levels;     ///< ascending
    std::vector<LocalDate> baths;                        ///< ascending
    std::vector<std::pair<LocalDate, double>> weighings; ///< ascending, mg a minute
    std::vector<std::pair<LocalDate, double>> chances;   ///< ascending, chance that dampness had begun, 0 to 1
    QString chanceName;                                  ///< beside them
    std::optional<LocalDate> marked;                     ///< a day looked at
    PerValue<Level, QString> levelNames;
};

/// Draws the line of dampness over time into `area`: four levels upwards from dry, a break where no check-in was made,
/// a tick below for each bath, a diamond above for each weighing; chances as a band of their own, higher where
/// dampness is likelier. Where days are narrower than a pixel, each pixel shows its worst day.
void paintDampness(QPainter& painter, const QRectF& area, const DampnessData& data, const ChartLook& look);

/// The day under a point of that chart, if any.
[[nodiscard]] std::optional<LocalDate> dayAt(const QRectF& area, const DampnessData& data, const ChartLook& look,
                                             QPointF point);

/// How wide a day is in that chart.
[[nodiscard]] double dayWidth(const QRectF& area, const DampnessData& data, const ChartLook& look);

} // namespace firstdew::charts
