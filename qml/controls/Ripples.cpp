#include "Ripples.h"

#include <QPainter>
#include <QPainterPath>

namespace firstdew::controls {

namespace {
constexpr int kMost = 3;
constexpr int kWaves = 2;

QPainterPath wave(qreal left, qreal y, qreal width, qreal swing)
{
    QPainterPath path({left, y});
    const qreal half = width / (2 * kWaves);
    for (int i = 0; i < 2 * kWaves; ++i) {
        const qreal x = left + i * half;
        const qreal peak = y + (i % 2 == 0 ? -2 : 2) * swing;
        path.quadTo(x + half / 2, peak, x + half, y);
    }
    return path;
}
} // namespace

void paintRipples(QPainter* painter, const QRectF& where, int level, const QColor& color, qreal stroke)
{
    painter->setPen(QPen(color, stroke, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const qreal left = where.left() + stroke;
    const qreal across = where.width() - 2 * stroke;
    const qreal step = (where.height() - 2 * stroke) / (kMost + 0.5);
    const qreal still = where.bottom() - stroke;
    // Dry is the still line alone, so that no level is an empty picture.
    if (level == 0)
        painter->drawLine(QPointF(left, still - 1.5 * step), QPointF(left + across, still - 1.5 * step));
    const qreal base = still - step * (kMost - level) / 2 - step * 0.5;
    for (int i = 0; i < level; ++i)
        painter->drawPath(wave(left, base - i * step, across, step * 0.3));
}

Ripples::Ripples(QQuickItem* parent) : Drawn(parent) { connect(this, &Ripples::changed, this, &Ripples::redraw); }

void Ripples::draw(QPainter* painter)
{
    paintRipples(painter, QRectF(0, 0, width(), height()), m_level, m_color, m_stroke);
}

} // namespace firstdew::controls
