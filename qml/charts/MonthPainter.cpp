#include "charts/MonthPainter.h"

#include "words/Names.h"

#include <QDate>
#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <cmath>

namespace firstdew::charts {

namespace {

constexpr int kColumns = 7;
constexpr double kDot = 20;    // dp, room for the largest dot
constexpr double kSession = 5; // dp, room for the bar of a session
constexpr double kBetween = 6; // dp, between two weeks
constexpr double kLeast = 48;  // dp, a cell is touched

double lineOf(const ChartLook& look) { return QFontMetricsF(look.font).height(); }

double rowOf(const ChartLook& look)
{
    return std::max(kLeast * look.unit, lineOf(look) + (kDot + kSession + kBetween) * look.unit);
}

QRectF cellOf(const QRectF& area, const ChartLook& look, int day)
{
    const int column = look.mirrored ? kColumns - 1 - day % kColumns : day % kColumns;
    const double width = area.width() / kColumns;
    return {area.left() + column * width, area.top() + lineOf(look) + (day / kColumns) * rowOf(look), width,
            rowOf(look)};
}

void paintDot(QPainter& p, QPointF at, Level level, const ChartLook& look)
{
    const double radius = dotRadius(level) * look.unit;
    if (level == Level::Dry) {
        p.setPen(QPen(look.line, 1.5 * look.unit));
        p.setBrush(Qt::NoBrush);
    } else {
        p.setPen(Qt::NoPen);
        p.setBrush(look.line);
    }
    p.drawEllipse(at, radius, radius);
}

/// The day's number, with its month on the first if there is room.
QString nameOf(LocalDate date, const ChartLook& look, double room)
{
    const QLocale locale;
    const QString number = locale.toString(date.day());
    if (date.day() != 1)
        return number;
    const QString with = words::shortDay(date);
    return QFontMetricsF(look.font).horizontalAdvance(with) <= room ? with : number;
}

void paintDay(QPainter& p, const QRectF& cell, LocalDate date, const MonthData& data, const ChartLook& look)
{
    const double line = lineOf(look);
    QFont font = look.font;
    font.setBold(date == data.today);
    p.setFont(font);
    p.setPen(date > data.today ? look.faint : look.ink);
    p.drawText(QRectF(cell.left(), cell.top(), cell.width(), line), Qt::AlignHCenter | Qt::TextDontClip,
               nameOf(date, look, cell.width()));
    const QPointF middle(cell.center().x(), cell.top() + line + kDot / 2 * look.unit);
    if (const auto level = data.levels.find(date); level != data.levels.end())
        paintDot(p, middle, level->second, look);
    if (data.sessions.contains(date)) {
        p.setPen(Qt::NoPen);
        p.setBrush(look.bath);
        p.drawRect(
            QRectF(middle.x() - 8 * look.unit, middle.y() + (kDot / 2 + 1) * look.unit, 16 * look.unit, 3 * look.unit));
    }
    if (data.selected == date) {
        p.setPen(QPen(look.ink, 2 * look.unit));
        p.setBrush(Qt::NoBrush);
        p.drawRect(cell.adjusted(look.unit, -look.unit, -look.unit, -3 * look.unit));
    }
}

} // namespace

double dotRadius(Level level)
{
    switch (level) {
    case Level::Dry: return 3.5;
    case Level::Clammy: return 4;
    case Level::Wet: return 6.5;
    case Level::Dripping: return 9;
    }
    return 0;
}

double monthHeight(const ChartLook& look) { return lineOf(look) + MonthData::kWeeks * rowOf(look); }

void paintMonth(QPainter& painter, const QRectF& area, const MonthData& data, const ChartLook& look)
{
    if (area.isEmpty())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(look.font);
    painter.setPen(look.ink);
    const double width = area.width() / kColumns;
    for (qsizetype i = 0; i < data.weekdays.size(); ++i) {
        const double column = static_cast<double>(look.mirrored ? kColumns - 1 - i : i);
        painter.drawText(QRectF(area.left() + column * width, area.top(), width, lineOf(look)),
                         Qt::AlignHCenter | Qt::TextDontClip, data.weekdays[i]);
    }
    for (int i = 0; i < MonthData::kDays; ++i)
        paintDay(painter, cellOf(area, look, i).adjusted(0, 4 * look.unit, 0, 0), data.first + i, data, look);
    painter.restore();
}

std::optional<LocalDate> dayAt(const QRectF& area, const MonthData& data, const ChartLook& look, QPointF point)
{
    for (int i = 0; i < MonthData::kDays; ++i)
        if (cellOf(area, look, i).contains(point))
            return data.first + i > data.today ? std::nullopt : std::optional(data.first + i);
    return std::nullopt;
}

} // namespace firstdew::charts
