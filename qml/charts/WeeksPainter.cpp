#include "charts/WeeksPainter.h"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace firstdew::charts {

namespace {

constexpr double kTicks = 12;   // dp below the plot: the sessions
constexpr double kThinnest = 4; // dp, of a bar with the gap beside it
constexpr int kWeek = 7;

/// Weeks that stand as one bar.
int weeksInBar(const TimeFrame& frame, const ChartLook& look)
{
    return std::max(1, static_cast<int>(std::ceil(kThinnest * look.unit / (kWeek * frame.dayWidth()))));
}

/// The mean of the known weeks among these; nullopt if none is known.
std::optional<WeekBar> meanOf(std::vector<WeekBar>::const_iterator from, std::vector<WeekBar>::const_iterator to)
{
    WeekBar out{from->monday, {}, 0};
    int known = 0;
    double damp = 0;
    for (auto week = from; week != to; ++week)
        if (week->damp) {
            ++known;
            damp += *week->damp;
            out.wet += week->wet;
        }
    if (known == 0)
        return std::nullopt;
    out.damp = damp / known;
    out.wet /= known;
    return out;
}

void paintBar(QPainter& p, const TimeFrame& f, const WeekBar& bar, int weeks, const ChartLook& look)
{
    const double half = f.dayWidth() / 2;
    const double a = f.x(std::max(bar.monday, f.from())) + (look.mirrored ? half : -half);
    const double b = f.x(std::min(bar.monday + (kWeek * weeks - 1), f.to())) + (look.mirrored ? -half : half);
    const double gap = std::min(std::abs(b - a) / 4, 2 * look.unit);
    const double left = std::min(a, b) + gap / 2;
    const double width = std::max(std::abs(b - a) - gap, look.unit / 2);
    const auto rises = [&](double days, const QColor& colour) {
        const double top = f.y(std::clamp(days / kWeek, 0.0, 1.0));
        p.fillRect(QRectF(left, top, width, f.plot().bottom() - top), colour);
    };
    rises(*bar.damp, look.wet);
    rises(bar.wet, look.line);
    // The top of the bar and a week without a damp day are seen too.
    const double top = f.y(std::clamp(*bar.damp / kWeek, 0.0, 1.0));
    p.fillRect(QRectF(left, top - look.unit, width, 2 * look.unit), look.line);
}

} // namespace

void paintWeeks(QPainter& painter, const QRectF& area, const WeeksData& data, const ChartLook& look)
{
    if (data.to < data.from || area.isEmpty())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    const QString none = QLocale().toString(0);
    const QString all = QLocale().toString(kWeek);
    const double below = QFontMetricsF(look.font).height() + (kTicks + 2) * look.unit;
    const TimeFrame frame(area, data.from, data.to, {none, all}, 0.5, below, look);
    frame.paintRule(painter, 0, none, look);
    frame.paintRule(painter, 1, all, look);
    const int weeks = weeksInBar(frame, look);
    for (auto week = data.weeks.begin(); week != data.weeks.end();) {
        const auto next = week + std::min<std::ptrdiff_t>(weeks, data.weeks.end() - week);
        if (const auto bar = meanOf(week, next))
            paintBar(painter, frame, *bar, weeks, look);
        week = next;
    }
    painter.setPen(QPen(look.bath, std::clamp(frame.dayWidth(), look.unit, 2 * look.unit), Qt::SolidLine, Qt::FlatCap));
    for (const LocalDate d : data.sessions)
        if (frame.holds(d))
            painter.drawLine(QPointF(frame.x(d), frame.plot().bottom() + 3 * look.unit),
                             QPointF(frame.x(d), frame.plot().bottom() + 10 * look.unit));
    frame.paintDates(painter, kTicks * look.unit, look);
    painter.restore();
}

} // namespace firstdew::charts
