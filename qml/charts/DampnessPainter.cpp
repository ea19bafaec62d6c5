#include "charts/DampnessPainter.h"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace firstdew::charts {

namespace {

double heightOf(const TimeFrame& f, double level) { return f.y(level / 3); }

constexpr double kTicks = 12; // of height below the plot, in dp: the baths

double bandHeight(const DampnessData& data, const ChartLook& look)
{
    return data.chances.empty() ? 0 : QFontMetricsF(look.font).height() + 4 * look.unit;
}

TimeFrame frameOf(const QRectF& area, const DampnessData& data, const ChartLook& look)
{
    QStringList names(data.levelNames.values.begin(), data.levelNames.values.end());
    if (!data.chances.empty())
        names << data.chanceName;
    const double below = QFontMetricsF(look.font).height() + (kTicks + 2) * look.unit + bandHeight(data, look);
    return {area, data.from, data.to, names, data.weighings.empty() ? 0.5 : 1.5, below, look};
}

struct Point {
    QPointF at;
    LocalDate date;
};

/// One column a pixel where days are narrower: the worst day of each.
std::vector<Point> columnsOf(const TimeFrame& f, const DampnessData& data, double least)
{
    std::vector<Point> out;
    const auto from = std::lower_bound(data.levels.begin(), data.levels.end(), data.from,
                                       [](const auto& a, LocalDate d) { return a.first < d; });
    for (auto i = from; i != data.levels.end() && i->first <= data.to; ++i) {
        const QPointF at(f.x(i->first), heightOf(f, static_cast<double>(i->second)));
        if (!out.empty() && f.dayWidth() < least && std::abs(at.x() - out.back().at.x()) < least)
            out.back() = {{out.back().at.x(), std::min(out.back().at.y(), at.y())}, i->first};
        else
            out.push_back({at, i->first});
    }
    return out;
}

/// Runs of days with check-ins; a missed day or two is bridged, a longer gap breaks the line.
void paintLine(QPainter& p, const TimeFrame& f, const DampnessData& data, const ChartLook& look)
{
    const double least = look.unit;
    const auto points = columnsOf(f, data, least);
    const int bridged = std::max(3, static_cast<int>(4 * look.unit / f.dayWidth()));
    QPainterPath path;
    QPainterPath fill;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const QPointF at = points[i].at;
        if (i > 0 && points[i].date - points[i - 1].date <= bridged) {
            path.lineTo(at);
        } else {
            if (i > 0)
                fill.lineTo(points[i - 1].at.x(), heightOf(f, 0));
            path.moveTo(at);
            fill.moveTo(at.x(), heightOf(f, 0));
        }
        fill.lineTo(at);
    }
    if (!points.empty())
        fill.lineTo(points.back().at.x(), heightOf(f, 0));
    // Thousands of smoothed slants a hair wide cost far more than anybody sees of them.
    const bool dense = f.dayWidth() < least;
    p.setRenderHint(QPainter::Antialiasing, !dense);
    p.fillPath(fill, look.wet);
    p.setBrush(Qt::NoBrush);
    p.setPen(dense ? QPen(look.line, look.unit, Qt::SolidLine, Qt::FlatCap, Qt::BevelJoin)
                   : QPen(look.line, 2 * look.unit, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.drawPath(path);
    p.setRenderHint(QPainter::Antialiasing);
    if (f.dayWidth() < 5 * look.unit)
        return;
    p.setPen(Qt::NoPen);
    p.setBrush(look.line);
    for (const auto& point : points)
        p.drawEllipse(point.at, 2.4 * look.unit, 2.4 * look.unit);
}

void paintBaths(QPainter& p, const TimeFrame& f, const DampnessData& data, const ChartLook& look)
{
    p.setPen(QPen(look.bath, std::clamp(f.dayWidth() * 0.6, look.unit, 3 * look.unit), Qt::SolidLine, Qt::FlatCap));
    for (const LocalDate d : data.baths)
        if (f.holds(d))
            p.drawLine(QPointF(f.x(d), f.plot().bottom() + 3 * look.unit),
                       QPointF(f.x(d), f.plot().bottom() + 10 * look.unit));
}

/// A step for each day, as high as the chance; the highest of those that share a pixel.
void paintChances(QPainter& p, const TimeFrame& f, const DampnessData& data, const ChartLook& look)
{
    if (data.chances.empty())
        return;
    const QRectF band(f.plot().left(), f.plot().bottom() + kTicks * look.unit, f.plot().width(),
                      bandHeight(data, look) - 4 * look.unit);
    f.paintName(p, band.center().y(), data.chanceName, look);
    p.setPen(QPen(look.faint, look.unit));
    p.drawLine(band.bottomLeft(), band.bottomRight());
    p.setRenderHint(QPainter::Antialiasing, false);
    p.setPen(Qt::NoPen);
    p.setBrush(look.wet);
    const double width = std::max(f.dayWidth(), look.unit);
    std::optional<QRectF> step;
    for (const auto& [date, chance] : data.chances) {
        if (!f.holds(date))
            continue;
        const double height = std::clamp(chance, 0.0, 1.0) * band.height();
        const QRectF next(f.x(date) - width / 2, band.bottom() - height, width, height);
        if (step && std::abs(next.left() - step->left()) < look.unit) {
            step->setTop(std::min(step->top(), next.top()));
            continue;
        }
        if (step)
            p.drawRect(*step);
        step = next;
    }
    if (step)
        p.drawRect(*step);
    p.setRenderHint(QPainter::Antialiasing);
}

/// Above the plot: a diamond for each weighing, and what it gave where there is room.
void paintWeighings(QPainter& p, const TimeFrame& f, const DampnessData& data, const ChartLook& look)
{
    const QFontMetricsF metrics(look.font);
    const double half = 3.5 * look.unit;
    const double y = f.plot().top() - f.lineHeight();
    std::optional<double> taken;
    for (const auto& [date, rate] : data.weighings) {
        if (!f.holds(date))
            continue;
        const QPointF at(f.x(date), y);
        p.setPen(QPen(look.line, look.unit));
        p.setBrush(Qt::NoBrush);
        p.drawPolygon(
            QPolygonF({at + QPointF(0, -half), at + QPointF(half, 0), at + QPointF(0, half), at + QPointF(-half, 0)}));
        const QString text = QLocale().toString(rate, 'f', rate < 10 ? 1 : 0);
        const double width = metrics.horizontalAdvance(text);
        const double beside = half + 2 * look.unit;
        const bool room = at.x() + beside + width <= f.plot().right() + 4 * look.unit;
        const double left = room ? at.x() + beside : at.x() - beside - width;
        if (left < f.plot().left() || (taken && std::abs(left - *taken) < width + 4 * half))
            continue;
        p.setPen(look.ink);
        p.drawText(QRectF(left, y - f.lineHeight() / 2, width + 1, f.lineHeight()),
                   Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignVCenter | Qt::TextDontClip, text);
        taken = left;
    }
}

} // namespace

void paintDampness(QPainter& painter, const QRectF& area, const DampnessData& data, const ChartLook& look)
{
    if (data.to < data.from || area.isEmpty())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const TimeFrame frame = frameOf(area, data, look);
    for (int level = 0; level < 4; ++level)
        frame.paintRule(painter, level / 3.0, data.levelNames.values[static_cast<std::size_t>(level)], look);
    if (data.marked && frame.holds(*data.marked)) {
        painter.setPen(QPen(look.ink, look.unit, Qt::DotLine));
        painter.drawLine(QPointF(frame.x(*data.marked), frame.plot().top()),
                         QPointF(frame.x(*data.marked), frame.plot().bottom()));
    }
    paintLine(painter, frame, data, look);
    paintBaths(painter, frame, data, look);
    paintChances(painter, frame, data, look);
    paintWeighings(painter, frame, data, look);
    frame.paintDates(painter, kTicks * look.unit + bandHeight(data, look), look);
    painter.restore();
}

std::optional<LocalDate> dayAt(const QRectF& area, const DampnessData& data, const ChartLook& look, QPointF point)
{
    return data.to < data.from ? std::nullopt : frameOf(area, data, look).dayAt(point);
}

double dayWidth(const QRectF& area, const DampnessData& data, const ChartLook& look)
{
    return frameOf(area, data, look).dayWidth();
}

} // namespace firstdew::charts
