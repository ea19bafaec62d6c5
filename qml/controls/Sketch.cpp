#include "Sketch.h"

#include "Edge.h"
#include "words/Drawings.h"

#include <QPainter>
#include <QSvgRenderer>
#include <algorithm>

namespace firstdew::controls {

Sketch::Sketch(QQuickItem* parent) : Drawn(parent) { connect(this, &Sketch::changed, this, &Sketch::redraw); }

void Sketch::draw(QPainter* painter)
{
    const auto subject = ui::core(m_subject);
    if (!subject)
        return;
    QSvgRenderer picture(words::drawingFile(*subject, m_dark));
    if (m_mirrored && words::drawingMayTurn(*subject)) {
        painter->translate(width(), 0);
        painter->scale(-1, 1);
    }
    const double side = std::min(width(), height());
    picture.render(painter, QRectF((width() - side) / 2, (height() - side) / 2, side, side));
}

} // namespace firstdew::controls
