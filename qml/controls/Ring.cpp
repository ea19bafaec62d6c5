#include "Ring.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace firstdew::controls {

namespace {
constexpr int kTop = 90 * 16; // QPainter counts sixteenths of a degree from three o'clock
constexpr int kWhole = 360 * 16;
} // namespace

Ring::Ring(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &Ring::changed, this, [this] { update(); });
}

void Ring::paint(QPainter* painter)
{
    const qreal side = std::min(width(), height()) - m_stroke;
    const QRectF box((width() - side) / 2, (height() - side) / 2, side, side);
    painter->setPen(QPen(m_track, m_stroke));
    painter->drawEllipse(box);
    painter->setPen(QPen(m_color, m_stroke, Qt::SolidLine, Qt::RoundCap));
    const int span = static_cast<int>(std::lround(std::clamp(m_share, 0.0, 1.0) * kWhole));
    painter->drawArc(box, kTop, span);
}

} // namespace firstdew::controls
