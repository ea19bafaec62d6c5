#include "Icon.h"

#include "IconDrawing.h"

namespace firstdew::controls {

Icon::Icon(QQuickItem* parent) : Drawn(parent) { connect(this, &Icon::changed, this, &Icon::redraw); }

void Icon::draw(QPainter* painter) { paintIcon(painter, QRectF(0, 0, width(), height()), m_name, m_color, m_mirrored); }

} // namespace firstdew::controls
