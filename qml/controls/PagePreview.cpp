#include "PagePreview.h"

#include <QPainter>

namespace firstdew::controls {

void PagePreview::setSource(viewmodels::PageSource* source)
{
    if (m_source == source)
        return;
    m_source = source;
    if (m_source != nullptr)
        connect(m_source, &viewmodels::PageSource::changed, this, &PagePreview::redraw);
    emit sourceChanged();
    redraw();
}

void PagePreview::draw(QPainter* painter)
{
    if (m_source == nullptr || width() < 1)
        return;
    const qreal scale = painter->device()->devicePixelRatio();
    const QImage page = m_source->page(static_cast<int>(width() * scale));
    if (page.isNull())
        return;
    const QRectF place(0, 0, width(), width() * page.height() / page.width());
    painter->drawImage(place, page);
    painter->setPen(Qt::gray);
    painter->drawRect(place.adjusted(0.5, 0.5, -0.5, -0.5));
}

} // namespace firstdew::controls
