#include "Dots.h"

#include <QPainter>
#include <algorithm>

namespace firstdew::controls {

namespace {
constexpr qreal kOfStep = 0.72; // of the room for one dot
}

Dots::Dots(QQuickItem* parent) : Drawn(parent) { connect(this, &Dots::changed, this, &Dots::redraw); }

void Dots::draw(QPainter* painter)
{
    const qreal step = width() / std::max(1, m_count);
    const qreal radius = std::min(step, height()) * kOfStep / 2;
    painter->setPen(QPen(m_color, m_stroke));
    for (int i = 0; i < m_count; ++i) {
        const qreal x = (i + 0.5) * step;
        // A filled dot and an empty one differ in more than colour.
        painter->setBrush(i < m_filled ? QBrush(m_color) : QBrush(Qt::NoBrush));
        painter->drawEllipse(QPointF(m_mirrored ? width() - x : x, height() / 2), radius, radius);
    }
}

} // namespace firstdew::controls
