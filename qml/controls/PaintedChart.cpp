#include "PaintedChart.h"

namespace firstdew::controls {

PaintedChart::PaintedChart(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &PaintedChart::changed, this, [this] { update(); });
    connect(this, &PaintedChart::looked, this, [this] { update(); });
}

QColor PaintedChart::washed(float alpha) const
{
    QColor wash = m_line;
    wash.setAlphaF(alpha);
    return wash;
}

charts::ChartLook PaintedChart::look(float wash) const
{
    QFont font(m_family);
    font.setPixelSize(qMax(1, qRound(m_textSize)));
    return {m_ink, m_faint, m_line, m_accent, washed(wash), font, 1, m_mirrored};
}

} // namespace firstdew::controls
