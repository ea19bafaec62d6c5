#pragma once

#include "facts/LocalDate.h"

#include <QColor>
#include <QFont>
#include <QRectF>
#include <QStringList>
#include <optional>
#include <vector>

class QPainter;

namespace firstdew::charts {

using namespace facts;

/// Colours by role, so that screen and paper each bring their own.
struct ChartLook {
    QColor ink;   ///< text
    QColor faint; ///< rules
    QColor line;
    QColor bath;
    QColor wet;            ///< fill below the line, drawn as it is: paper for archives takes no transparency
    QFont font;            ///< of the labels, at the size wanted
    double unit = 1;       ///< device units of one dp
    bool mirrored = false; ///< time runs from right to left, as the script does
};

/// Days along an area, with names for heights beside them; charts of the same days and names stand in line.
class TimeFrame {
public:
    /// Room is left beside the plot for `names`, and that many lines of text above and below.
    TimeFrame(const QRectF& area, LocalDate from, LocalDate to, const QStringList& names, double linesAbove,
              double below, const ChartLook& look);
    [[nodiscard]] const QRectF& plot() const { return m_plot; }
    [[nodiscard]] double lineHeight() const { return m_lineHeight; }
    [[nodiscard]] double dayWidth() const { return m_plot.width() / (m_to - m_from + 1); }
    [[nodiscard]] LocalDate from() const { return m_from; }
    [[nodiscard]] LocalDate to() const { return m_to; }
    [[nodiscard]] bool holds(LocalDate d) const { return d >= m_from && d <= m_to; }
    [[nodiscard]] double x(LocalDate d) const;
    /// The height of a share from 0 (below) to 1.
    [[nodiscard]] double y(double share) const { return m_plot.bottom() - share * m_plot.height(); }
    [[nodiscard]] std::optional<LocalDate> dayAt(QPointF point) const;

    /// A name beside the plot, at the height `y`.
    void paintName(QPainter& p, double y, const QString& name, const ChartLook& look) const;
    /// A rule at that share, with its name beside it.
    void paintRule(QPainter& p, double share, const QString& name, const ChartLook& look) const;
    /// Month starts so far below the plot, thinned until they fit; single days where the span is short.
    void paintDates(QPainter& p, double below, const ChartLook& look) const;

private:
    LocalDate m_from;
    LocalDate m_to;
    QRectF m_plot;
    QRectF m_names;
    double m_lineHeight = 0;
    bool m_mirrored = false;
};

} // namespace firstdew::charts
