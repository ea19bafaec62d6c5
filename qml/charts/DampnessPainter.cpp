#include "charts/DampnessPainter.h"

#include <QDate>
#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace firstdew::charts
{

namespace
{

constexpr double kMostLabels = 7;

QDate toQDate(LocalDate d)
{
    return QDate(d.year(), d.month(), d.day());
}

/// Where things are within the area.
class Frame
{
public:
    Frame(const QRectF& area, const DampnessData& data, const ChartLook& look) : m_data(data)
    {
        const QFontMetricsF metrics(look.font);
        double widest = 0;
        for (const QString& name : data.levelNames)
            widest = std::max(widest, metrics.horizontalAdvance(name));
        m_lineHeight = metrics.height();
        if (!data.chances.empty()) {
            widest = std::max(widest, metrics.horizontalAdvance(data.chanceName));
            m_band = m_lineHeight + 4 * look.unit;
        }
        const double below = m_lineHeight + 14 * look.unit + m_band;
        const double above = m_lineHeight / 2 + (data.weighings.empty() ? 0 : m_lineHeight);
        const double beside = widest + 8 * look.unit;
        const double free = 4 * look.unit;
        m_mirrored = look.mirrored;
        m_plot = area.adjusted(m_mirrored ? free : beside, above, m_mirrored ? -beside : -free, -below);
        m_labels = QRectF(m_mirrored ? area.right() - widest : area.left(), m_plot.top(), widest, m_plot.height());
    }
    [[nodiscard]] const QRectF& plot() const { return m_plot; }
    [[nodiscard]] const QRectF& labels() const { return m_labels; }
    [[nodiscard]] bool mirrored() const { return m_mirrored; }
    [[nodiscard]] double lineHeight() const { return m_lineHeight; }
    /// Where the chances stand, below the ticks of the baths.
    [[nodiscard]] QRectF band(const ChartLook& look) const
    {
        return {m_plot.left(), m_plot.bottom() + 12 * look.unit, m_plot.width(), std::max(0.0, m_band - 4 * look.unit)};
    }
    [[nodiscard]] double datesAt(const ChartLook& look) const { return m_plot.bottom() + 12 * look.unit + m_band; }
    [[nodiscard]] double dayWidth() const { return m_plot.width() / (m_data.to - m_data.from + 1); }
    [[nodiscard]] double x(LocalDate d) const
    {
        const double along = (d - m_data.from + 0.5) * dayWidth();
        return m_mirrored ? m_plot.right() - along : m_plot.left() + along;
    }
    [[nodiscard]] double y(double level) const { return m_plot.bottom() - level / 3 * m_plot.height(); }

private:
    const DampnessData& m_data;
    QRectF m_plot;
    QRectF m_labels;
    double m_lineHeight = 0;
    double m_band = 0;
    bool m_mirrored = false;
};

void paintLabel(QPainter& p, const Frame& f, const ChartLook& look, double y, const QString& text)
{
    p.setPen(look.ink);
    const QRectF box(f.labels().left(), y - f.lineHeight() / 2, f.labels().width(), f.lineHeight());
    p.drawText(box, (f.mirrored() ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignAbsolute | Qt::AlignVCenter | Qt::TextDontClip, text);
}

void paintGrid(QPainter& p, const Frame& f, const DampnessData& data, const ChartLook& look)
{
    p.setFont(look.font);
    for (int level = 0; level < 4; ++level) {
        const double y = f.y(level);
        p.setPen(QPen(look.faint, look.unit));
        p.drawLine(QPointF(f.plot().left(), y), QPointF(f.plot().right(), y));
        paintLabel(p, f, look, y, data.levelNames[static_cast<std::size_t>(level)]);
    }
}

/// Month starts, thinned until they fit; single days where the span is short.
void paintDates(QPainter& p, const Frame& f, const DampnessData& data, const ChartLook& look)
{
    const int days = data.to - data.from + 1;
    const QFontMetricsF metrics(look.font);
    const double y = f.datesAt(look);
    std::optional<double> taken; // how far the labels reach, in the direction of time
    const auto put = [&](LocalDate d, const QString& text) {
        const double width = metrics.horizontalAdvance(text);
        const double left = std::clamp(f.x(d) - width / 2, f.plot().left() - 4 * look.unit, std::max(f.plot().left(), f.plot().right() - width));
        const double gap = 10 * look.unit;
        if (taken && (f.mirrored() ? left + width > *taken - gap : left < *taken + gap))
            return;
        p.setPen(look.ink);
        p.drawText(QRectF(left, y, width + 1, f.lineHeight()), Qt::AlignLeft | Qt::AlignAbsolute | Qt::TextDontClip, text);
        taken = f.mirrored() ? left : left + width;
    };
    const QLocale locale;
    if (days <= 45) {
        for (LocalDate d = data.from; d <= data.to; d = d + 7)
            put(d, locale.toString(toQDate(d), QStringLiteral("d MMM")));
        return;
    }
    const int months = std::max(1, days / 30);
    // Steps that meet every January, so that years stand evenly.
    int every = static_cast<int>(std::ceil(months / kMostLabels));
    for (const int step : {1, 2, 3, 4, 6, 12})
        if (step >= every) {
            every = step;
            break;
        }
    every = every > 12 ? (every + 11) / 12 * 12 : every;
    for (LocalDate d = data.from; d <= data.to; d = d + 1)
        if (d.day() == 1 && (d.month() - 1 + 12 * d.year()) % every == 0)
            put(d, d.month() == 1 || every >= 12 ? QString::number(d.year()) : locale.standaloneMonthName(d.month(), QLocale::ShortFormat));
}

/// Runs of days with check-ins; a missed day or two is bridged, a longer gap breaks the line.
void paintLine(QPainter& p, const Frame& f, const DampnessData& data, const ChartLook& look)
{
    // One column a pixel where days are narrower: the worst day of each.
    std::vector<std::pair<double, double>> points;
    std::vector<LocalDate> dates;
    const double least = look.unit;
    for (const auto& [date, level] : data.levels) {
        if (date < data.from || date > data.to)
            continue;
        const double x = f.x(date);
        const double y = f.y(static_cast<double>(level));
        if (!points.empty() && f.dayWidth() < least && std::abs(x - points.back().first) < least) {
            points.back().second = std::min(points.back().second, y);
            dates.back() = date;
            continue;
        }
        points.emplace_back(x, y);
        dates.push_back(date);
    }
    QPainterPath path;
    QPainterPath fill;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const QPointF at(points[i].first, points[i].second);
        const bool begins = i == 0 || dates[i] - dates[i - 1] > std::max(3, static_cast<int>(4 * look.unit / f.dayWidth()));
        if (begins) {
            if (i > 0)
                fill.lineTo(points[i - 1].first, f.y(0));
            path.moveTo(at);
            fill.moveTo(at.x(), f.y(0));
            fill.lineTo(at);
        } else {
            path.lineTo(at);
            fill.lineTo(at);
        }
    }
    if (!points.empty())
        fill.lineTo(points.back().first, f.y(0));
    // Thousands of smoothed slants a hair wide cost far more than anybody sees of them.
    const bool dense = f.dayWidth() < least;
    p.setRenderHint(QPainter::Antialiasing, !dense);
    p.setPen(Qt::NoPen);
    p.setBrush(look.wet);
    p.drawPath(fill);
    p.setBrush(Qt::NoBrush);
    if (dense)
        p.setPen(QPen(look.line, look.unit, Qt::SolidLine, Qt::FlatCap, Qt::BevelJoin));
    else
        p.setPen(QPen(look.line, 2 * look.unit, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.drawPath(path);
    p.setRenderHint(QPainter::Antialiasing);
    if (f.dayWidth() >= 5 * look.unit)
        for (const auto& [x, y] : points) {
            p.setPen(Qt::NoPen);
            p.setBrush(look.line);
            p.drawEllipse(QPointF(x, y), 2.4 * look.unit, 2.4 * look.unit);
        }
}

void paintBaths(QPainter& p, const Frame& f, const DampnessData& data, const ChartLook& look)
{
    p.setPen(QPen(look.bath, std::clamp(f.dayWidth() * 0.6, look.unit, 3 * look.unit), Qt::SolidLine, Qt::FlatCap));
    for (const LocalDate d : data.baths)
        if (d >= data.from && d <= data.to)
            p.drawLine(QPointF(f.x(d), f.plot().bottom() + 3 * look.unit), QPointF(f.x(d), f.plot().bottom() + 10 * look.unit));
}

/// A step for each day, as high as the chance; the highest of those that share a pixel.
void paintChances(QPainter& p, const Frame& f, const DampnessData& data, const ChartLook& look)
{
    if (data.chances.empty())
        return;
    const QRectF band = f.band(look);
    paintLabel(p, f, look, band.center().y(), data.chanceName);
    p.setPen(QPen(look.faint, look.unit));
    p.drawLine(band.bottomLeft(), band.bottomRight());
    p.setRenderHint(QPainter::Antialiasing, false);
    p.setPen(Qt::NoPen);
    p.setBrush(look.wet);
    const double width = std::max(f.dayWidth(), look.unit);
    std::optional<QRectF> step;
    for (const auto& [date, chance] : data.chances) {
        if (date < data.from || date > data.to)
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
void paintWeighings(QPainter& p, const Frame& f, const DampnessData& data, const ChartLook& look)
{
    const QFontMetricsF metrics(look.font);
    const double half = 3.5 * look.unit;
    const double y = f.plot().top() - f.lineHeight();
    std::optional<double> taken;
    for (const auto& [date, rate] : data.weighings) {
        if (date < data.from || date > data.to)
            continue;
        const QPointF at(f.x(date), y);
        p.setPen(QPen(look.line, look.unit));
        p.setBrush(Qt::NoBrush);
        p.drawPolygon(QPolygonF({at + QPointF(0, -half), at + QPointF(half, 0), at + QPointF(0, half), at + QPointF(-half, 0)}));
        const QString text = QLocale().toString(rate, 'f', rate < 10 ? 1 : 0);
        const double width = metrics.horizontalAdvance(text);
        const double beside = half + 2 * look.unit;
        const bool room = at.x() + beside + width <= f.plot().right() + 4 * look.unit;
        const double left = room ? at.x() + beside : at.x() - beside - width;
        if (left < f.plot().left() || (taken && std::abs(left - *taken) < width + 4 * half))
            continue;
        p.setPen(look.ink);
        p.drawText(QRectF(left, y - f.lineHeight() / 2, width + 1, f.lineHeight()), Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignVCenter | Qt::TextDontClip, text);
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
    const Frame frame(area, data, look);
    paintGrid(painter, frame, data, look);
    if (data.marked && *data.marked >= data.from && *data.marked <= data.to) {
        painter.setPen(QPen(look.ink, look.unit, Qt::DotLine));
        painter.drawLine(QPointF(frame.x(*data.marked), frame.plot().top()), QPointF(frame.x(*data.marked), frame.plot().bottom()));
    }
    paintLine(painter, frame, data, look);
    paintBaths(painter, frame, data, look);
    paintChances(painter, frame, data, look);
    paintWeighings(painter, frame, data, look);
    paintDates(painter, frame, data, look);
    painter.restore();
}

std::optional<LocalDate> dayAt(const QRectF& area, const DampnessData& data, const ChartLook& look, QPointF point)
{
    if (data.to < data.from)
        return std::nullopt;
    const Frame frame(area, data, look);
    const double along = look.mirrored ? frame.plot().right() - point.x() : point.x() - frame.plot().left();
    const int offset = static_cast<int>(std::floor(along / frame.dayWidth()));
    if (offset < 0 || offset > data.to - data.from)
        return std::nullopt;
    return data.from + offset;
}

} // namespace firstdew::charts
