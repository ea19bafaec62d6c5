#include "OutlookBars.h"

#include "IconDrawing.h"

#include <QGuiApplication>
#include <QPainter>
#include <algorithm>

namespace firstdew::controls {

OutlookBars::OutlookBars(QQuickItem* parent) : Drawn(parent)
{
    connect(this, &OutlookBars::changed, this, &OutlookBars::redraw);
}

void OutlookBars::draw(QPainter* painter)
{
    const bool mirrored = QGuiApplication::layoutDirection() == Qt::RightToLeft;
    const qreal step = width() / static_cast<qreal>(std::max<qsizetype>(1, m_ahead.chances.size()));
    painter->setPen(Qt::NoPen);
    for (qsizetype i = 0; i < m_ahead.chances.size(); ++i) {
        const qreal left = mirrored ? width() - static_cast<qreal>(i + 1) * step : static_cast<qreal>(i) * step;
        const auto rises = [&](const QColor& color, qreal high) {
            painter->setBrush(color);
            painter->drawRoundedRect(QRectF(left + m_gap / 2, height() - high, step - m_gap, high), m_gap, m_gap);
        };
        rises(m_track, m_barHeight);
        if (const qreal chance = m_ahead.chances[i]; chance > 0)
            rises(m_bar, std::min(1.0, chance) * m_barHeight);
        if (m_ahead.sessions[i])
            paintIcon(painter, QRectF(left + (step - m_iconSize) / 2, 0, m_iconSize, m_iconSize),
                      QStringLiteral("bath"), m_bath, false);
    }
}

} // namespace firstdew::controls
