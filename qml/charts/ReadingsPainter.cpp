#include "charts/ReadingsPainter.h"

#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace firstdew::charts {

namespace {

constexpr double kLeastTop = 10; // mA; below, single steps would look like leaps
constexpr double kRound = 5;

double topOf(const ReadingsData& data, const TimeFrame& f)
{
    double most = kLeastTop;
    for (const auto& s : data.sessions)
        if (f.holds(s.date))
            most = std::max({most, s.comfortable.value_or(0), s.peak.value_or(0)});
    return std::ceil(most / kRound) * kRound;
}

void paintSession(QPainter& p, const TimeFrame& f, const SessionMark& s, double top, const ChartLook& look)
{
    const auto height = [&](double mA) { return f.y(mA / top); };
    const double x = f.x(s.date);
    const double thin = std::clamp(f.dayWidth() * 0.4, 0.5 * look.unit, 1.5 * look.unit);
    const double radius = std::clamp(f.dayWidth() * 0.8, 1.6 * look.unit, 3.2 * look.unit);
    const double at = s.comfortable.value_or(s.peak.value_or(0));
    if (s.peak && *s.peak > at) {
        p.setPen(QPen(look.line, thin));
        p.drawLine(QPointF(x, height(at)), QPointF(x, height(*s.peak)));
    }
    p.setPen(s.bad ? QPen(look.bath, 2 * look.unit) : QPen(Qt::NoPen));
    p.setBrush(s.bad ? Qt::NoBrush : QBrush(look.line));
    p.drawEllipse(QPointF(x, height(at)), s.bad ? radius + look.unit : radius, s.bad ? radius + look.unit : radius);
}

} // namespace

void paintReadings(QPainter& painter, const QRectF& area, const ReadingsData& data, const ChartLook& look)
{
    if (data.to < data.from || area.isEmpty())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const TimeFrame frame(area, data.from, data.to, data.names, 0.5, 8 * look.unit, look);
    const double top = topOf(data, frame);
    for (const double share : {0.0, 0.5, 1.0})
        frame.paintRule(painter, share, QLocale().toString(share * top, 'f', std::fmod(share * top, 1) > 0 ? 1 : 0),
                        look);
    for (const auto& session : data.sessions)
        if (frame.holds(session.date) && (session.comfortable || session.peak))
            paintSession(painter, frame, session, top, look);
    painter.restore();
}

} // namespace firstdew::charts
