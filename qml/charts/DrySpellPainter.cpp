#include "charts/DrySpellPainter.h"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace firstdew::charts {

namespace {

constexpr double kBar = 5;     // dp, height of a spell's bar
constexpr double kBarStep = 9; // dp, from one to the next
constexpr int kMostDayLabels = 6;
constexpr float kFaint = 0.35F; // of a bar that is left out of the count

/// Where days and chances are within the area.
class Frame {
public:
    Frame(const QRectF& area, const DrySpellData& data, const ChartLook& look)
        : m_last(static_cast<int>(data.lasting.size()) - 1), m_mirrored(look.mirrored)
    {
        const QFontMetricsF metrics(look.font);
        m_lineHeight = metrics.height();
        const double beside = metrics.horizontalAdvance(data.shares.back()) + 8 * look.unit;
        const double free = 6 * look.unit;
        const double below = m_lineHeight * (data.daysName.isEmpty() ? 1 : 2) + 8 * look.unit;
        const double bars = spellBarsHeight(data.spells.size(), look.unit);
        m_plot =
            area.adjusted(m_mirrored ? free : beside, 1.5 * m_lineHeight, m_mirrored ? -beside : -free, -below - bars);
        const double gap = 8 * look.unit;
        m_labels =
            QRectF(m_mirrored ? area.right() - beside + gap : area.left(), m_plot.top(), beside - gap, m_plot.height());
    }
    [[nodiscard]] const QRectF& plot() const { return m_plot; }
    [[nodiscard]] const QRectF& labels() const { return m_labels; }
    [[nodiscard]] double lineHeight() const { return m_lineHeight; }
    [[nodiscard]] bool mirrored() const { return m_mirrored; }
    [[nodiscard]] int last() const { return m_last; }
    [[nodiscard]] double x(double day) const
    {
        const double along = std::clamp(day / std::max(1, m_last), 0.0, 1.0) * m_plot.width();
        return m_mirrored ? m_plot.right() - along : m_plot.left() + along;
    }
    [[nodiscard]] double y(double chance) const { return m_plot.bottom() - chance * m_plot.height(); }

private:
    int m_last;
    bool m_mirrored;
    double m_lineHeight = 0;
    QRectF m_plot;
    QRectF m_labels;
};

void paintBand(QPainter& p, const Frame& f, double from, double to, const QColor& color)
{
    p.fillRect(QRectF(QPointF(f.x(from), f.plot().top()), QPointF(f.x(to), f.plot().bottom())).normalized(), color);
}

void paintGrid(QPainter& p, const Frame& f, const DrySpellData& data, const ChartLook& look)
{
    const int side =
        (f.mirrored() ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignAbsolute | Qt::AlignVCenter | Qt::TextDontClip;
    for (std::size_t half = 0; half < data.shares.size(); ++half) {
        const double y = f.y(static_cast<double>(half) / 2);
        p.setPen(QPen(look.faint, look.unit));
        p.drawLine(QPointF(f.plot().left(), y), QPointF(f.plot().right(), y));
        p.setPen(look.ink);
        p.drawText(QRectF(f.labels().left(), y - f.lineHeight() / 2, f.labels().width(), f.lineHeight()), side,
                   data.shares[half]);
    }
    int every = 1;
    for (const int step : {1, 2, 5, 7, 14, 28, 56, 91})
        if (f.last() / step > kMostDayLabels)
            every = step;
    for (const int step : {2, 5, 7, 14, 28, 56, 91, 182})
        if (every < step) {
            every = step;
            break;
        }
    const double below = f.plot().bottom() + 4 * look.unit;
    for (int day = 0; day <= f.last(); day += every) {
        p.setPen(QPen(look.faint, look.unit));
        p.drawLine(QPointF(f.x(day), f.plot().bottom()), QPointF(f.x(day), below));
        p.setPen(look.ink);
        p.drawText(QRectF(f.x(day) - 40 * look.unit, below, 80 * look.unit, f.lineHeight()),
                   Qt::AlignHCenter | Qt::TextDontClip, QLocale().toString(day));
    }
    p.drawText(QRectF(f.plot().left(), below + f.lineHeight(), f.plot().width(), f.lineHeight()),
               Qt::AlignHCenter | Qt::TextDontClip, data.daysName);
}

void paintCurve(QPainter& p, const Frame& f, const DrySpellData& data, const ChartLook& look)
{
    QPainterPath path;
    for (std::size_t day = 0; day < data.lasting.size(); ++day) {
        const QPointF at(f.x(static_cast<double>(day)), f.y(data.lasting[day]));
        day == 0 ? path.moveTo(at) : path.lineTo(at);
    }
    p.setBrush(Qt::NoBrush);
    p.setPen(QPen(look.line, 2.4 * look.unit, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.drawPath(path);
}

void paintToday(QPainter& p, const Frame& f, const DrySpellData& data, const DrySpellLook& look)
{
    if (data.day > f.last())
        return;
    const ChartLook& c = look.chart;
    const double x = f.x(data.day);
    p.setPen(QPen(look.now, 2 * c.unit));
    p.drawLine(QPointF(x, f.plot().top() - 4 * c.unit), QPointF(x, f.plot().bottom()));
    const QFontMetricsF metrics(c.font);
    const double width = metrics.horizontalAdvance(data.dayName);
    const double left = std::clamp(x - width / 2, f.plot().left(), std::max(f.plot().left(), f.plot().right() - width));
    p.drawText(QRectF(left, f.plot().top() - 4 * c.unit - f.lineHeight(), width + 1, f.lineHeight()),
               Qt::AlignLeft | Qt::AlignAbsolute | Qt::TextDontClip, data.dayName);
}

void paintBars(QPainter& p, const Frame& f, double top, const DrySpellData& data, const DrySpellLook& look)
{
    const ChartLook& c = look.chart;
    const double towards = f.mirrored() ? -1 : 1;
    double y = top;
    for (const SpellBar& s : data.spells) {
        QColor color = s.present ? look.now : c.line;
        color.setAlphaF(s.otherwise ? kFaint : 1.0F);
        const double middle = y + kBar / 2 * c.unit;
        const double dry = f.x(s.dry);
        p.setPen(Qt::NoPen);
        p.setBrush(color);
        p.drawRect(QRectF(QPointF(f.x(0), y), QPointF(dry, y + kBar * c.unit)).normalized());
        p.setPen(QPen(color, c.unit));
        if (s.over) {
            p.setBrush(Qt::NoBrush);
            p.drawRect(
                QRectF(QPointF(dry, y + c.unit / 2), QPointF(f.x(*s.over), y + (kBar - 0.5) * c.unit)).normalized());
        } else {
            p.setBrush(color);
            const double tip = dry + towards * 7 * c.unit;
            p.drawPolygon(QPolygonF({QPointF(dry + towards * c.unit, y - c.unit), QPointF(tip, middle),
                                     QPointF(dry + towards * c.unit, y + (kBar + 1) * c.unit)}));
        }
        y += kBarStep * c.unit;
    }
}

} // namespace

double spellBarsHeight(std::size_t spells, double unit)
{
    return spells == 0 ? 0 : (static_cast<double>(spells) * kBarStep + 6) * unit;
}

void paintDrySpells(QPainter& painter, const QRectF& area, const DrySpellData& data, const DrySpellLook& look)
{
    if (data.lasting.size() < 2 || area.isEmpty())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(look.chart.font);
    const Frame frame(area, data, look.chart);
    paintBand(painter, frame, data.usual[0], data.usual[4], look.wide);
    paintBand(painter, frame, data.usual[1], data.usual[3], look.narrow);
    paintGrid(painter, frame, data, look.chart);
    painter.setPen(QPen(look.chart.line, 1.5 * look.chart.unit, Qt::DashLine));
    painter.drawLine(QPointF(frame.x(data.usual[2]), frame.plot().top()),
                     QPointF(frame.x(data.usual[2]), frame.plot().bottom()));
    paintCurve(painter, frame, data, look.chart);
    paintToday(painter, frame, data, look);
    paintBars(painter, frame,
              area.bottom() - spellBarsHeight(data.spells.size(), look.chart.unit) + 6 * look.chart.unit, data, look);
    painter.restore();
}

} // namespace firstdew::charts
