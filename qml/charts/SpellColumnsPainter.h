#pragma once

#include "charts/TimeFrame.h"

#include <QString>

namespace firstdew::charts {

/// A dry spell as a column: dry for certain for `dry` days, and over by `over`; without it a session came while still
/// dry, or it is the present one.
struct SpellColumn {
    LocalDate from; ///< its session
    int dry = 0;
    std::optional<int> over;
    bool present = false;
};

/// How many columns have room for their numbers.
[[nodiscard]] std::size_t columnsIn(double width, const ChartLook& look);

/// Draws a column for each spell, oldest first, in the direction of reading: its dry days above it, as far as they are
/// known, and the day of its session below where there is room. A column is hollow up to where dampness was noticed.
/// One that was not seen to end has a tip. The present one has the colour that stands out.
void paintSpellColumns(QPainter& painter, const QRectF& area, const std::vector<SpellColumn>& spells,
                       const ChartLook& look);

} // namespace firstdew::charts
