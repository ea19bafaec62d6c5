#include "charts/TimeFrame.h"

#include "words/Names.h"

#include <QDate>
#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace firstdew::charts {

namespace {

constexpr double kMostLabels = 7;
constexpr int kDaysNamedSingly = 45;

struct DateLabel {
    LocalDate date;
    QString text;
};

/// Months between two labels: steps that meet every January, so that years stand evenly.
int monthsApart(int days)
{
    const int wanted = static_cast<int>(std::ceil(std::max(1, days / 30) / kMostLabels));
    for (const int step : {1, 2, 3, 4, 6, 12})
        if (step >= wanted)
            return step;
    return (wanted + 11) / 12 * 12;
}

std::vector<DateLabel> labelsOf(LocalDate from, LocalDate to)
{
    const QLocale locale;
    std::vector<DateLabel> out;
    const int days = to - from + 1;
    if (days <= kDaysNamedSingly) {
        for (LocalDate d = from; d <= to; d = d + 7)
            out.push_back({d, words::shortDay(d)});
        return out;
    }
    const int every = monthsApart(days);
    for (LocalDate d = from; d <= to; d = d + 1)
        if (d.day() == 1 && (d.month() - 1 + 12 * d.year()) % every == 0)
            out.push_back({d, d.month() == 1 || every >= 12
                                  ? QString::number(d.year())
                                  : locale.standaloneMonthName(d.month(), QLocale::ShortFormat)});
    return out;
}

} // namespace

TimeFrame::TimeFrame(const QRectF& area, LocalDate from, LocalDate to, const QStringList& names, double linesAbove,
                     double below, const ChartLook& look)
    : m_from(from), m_to(to), m_mirrored(look.mirrored)
{
    const QFontMetricsF metrics(look.font);
    double widest = 0;
    for (const QString& name : names)
        widest = std::max(widest, metrics.horizontalAdvance(name));
    m_lineHeight = metrics.height();
    const double beside = widest + 8 * look.unit;
    const double free = 4 * look.unit;
    m_plot = area.adjusted(m_mirrored ? free : beside, linesAbove * m_lineHeight, m_mirrored ? -beside : -free, -below);
    m_names = QRectF(m_mirrored ? area.right() - widest : area.left(), m_plot.top(), widest, m_plot.height());
}

double TimeFrame::x(LocalDate d) const
{
    const double along = (d - m_from + 0.5) * dayWidth();
    return m_mirrored ? m_plot.right() - along : m_plot.left() + along;
}

std::optional<LocalDate> TimeFrame::dayAt(QPointF point) const
{
    const double along = m_mirrored ? m_plot.right() - point.x() : point.x() - m_plot.left();
    const int offset = static_cast<int>(std::floor(along / dayWidth()));
    return offset < 0 || offset > m_to - m_from ? std::nullopt : std::optional(m_from + offset);
}

void TimeFrame::paintName(QPainter& p, double y, const QString& name, const ChartLook& look) const
{
    p.setFont(look.font);
    p.setPen(look.ink);
    const QRectF box(m_names.left(), y - m_lineHeight / 2, m_names.width(), m_lineHeight);
    p.drawText(box,
               (m_mirrored ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignAbsolute | Qt::AlignVCenter | Qt::TextDontClip,
               name);
}

void TimeFrame::paintRule(QPainter& p, double share, const QString& name, const ChartLook& look) const
{
    p.setPen(QPen(look.faint, look.unit));
    p.drawLine(QPointF(m_plot.left(), y(share)), QPointF(m_plot.right(), y(share)));
    paintName(p, y(share), name, look);
}

void TimeFrame::paintDates(QPainter& p, double below, const ChartLook& look) const
{
    const QFontMetricsF metrics(look.font);
    const double baseline = m_plot.bottom() + below + metrics.ascent();
    const double gap = 10 * look.unit;
    std::optional<double> taken; // how far the labels reach, in the direction of time
    p.setFont(look.font);
    p.setPen(look.ink);
    for (const auto& [date, text] : labelsOf(m_from, m_to)) {
        const double width = metrics.horizontalAdvance(text);
        const double left = std::clamp(x(date) - width / 2, m_plot.left() - 4 * look.unit,
                                       std::max(m_plot.left(), m_plot.right() - width));
        if (taken && (m_mirrored ? left + width > *taken - gap : left < *taken + gap))
            continue;
        p.drawText(QPointF(left, baseline), text); // one baseline, whatever typeface has the letters
        taken = m_mirrored ? left : left + width;
    }
}

} // namespace firstdew::charts
