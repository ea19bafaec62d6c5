#pragma once

#include "charts/TimeFrame.h"

#include <vector>

namespace firstdew::charts {

/// What one session's meter showed, and how it was felt.
struct SessionMark {
    LocalDate date;
    std::optional<double> comfortable; ///< highest comfortable reading, mA
    std::optional<double> peak;        ///< highest reading, mA
    bool bad = false;                  ///< unpleasant or painful
};

struct ReadingsData {
    LocalDate from;
    LocalDate to;
    std::vector<SessionMark> sessions; ///< ascending
    QStringList names;                 ///< those of the chart above, so that both stand in line
};

/// Draws a dot for the highest comfortable reading of each session, a ring where it was felt as bad, and a stroke up to
/// the highest reading of all.
void paintReadings(QPainter& painter, const QRectF& area, const ReadingsData& data, const ChartLook& look);

} // namespace firstdew::charts
