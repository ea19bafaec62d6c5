#pragma once

#include "charts/DampnessPainter.h"

#include <span>

namespace firstdew::charts {

/// A dry spell as a bar: dry for certain up to `dry` days, and over by `over`; without it a bath came while still dry,
/// or it is the present one.
struct SpellBar {
    int dry = 0;
    std::optional<int> over;
    bool present = false;
    bool otherwise = false; ///< another treatment worked in it: drawn faintly
};

/// One site's dry spells. Days are counted from the last session of each.
struct DrySpellData {
    std::vector<double> lasting;   ///< chance that a spell lasts longer than i days
    std::array<double, 5> usual{}; ///< days by which 10, 25, 50, 75 and 90 % of spells are over
    std::vector<SpellBar> spells;  ///< latest first
    int day = 0;                   ///< today
    QString dayName;               ///< "Day 9", beside the mark of today
    QString daysName;              ///< below the days
    std::array<QString, 3> shares; ///< none, half and all, as they are written
};

/// Colours of the chart beside those of ChartLook.
struct DrySpellLook {
    ChartLook chart;
    QColor wide;   ///< band of the middle 80 %
    QColor narrow; ///< band of the middle 50 %
    QColor now;    ///< today
};

/// Height that the bars need below the plot, for so many spells.
[[nodiscard]] double spellBarsHeight(std::size_t spells, double unit);

/// Draws the curve of how long spells last, the bands that hold the middle half and the middle four fifths, the median,
/// today, and below on the same days a bar for each spell: whole where it was dry, hollow up to where it was over,
/// open-ended with an arrow where it was not seen to end.
void paintDrySpells(QPainter& painter, const QRectF& area, const DrySpellData& data, const DrySpellLook& look);

} // namespace firstdew::charts
