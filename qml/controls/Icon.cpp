#include "Icon.h"

namespace firstdew::controls {

Icon::Icon(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &Icon::changed, this, [this] { update(); });
}

void Icon::paint(QPainter* painter)
{
    m_drawing.choose(m_name, m_color);
    m_drawing.paint(painter, QRectF(0, 0, width(), height()), m_mirrored);
}

} // namespace firstdew::controls
