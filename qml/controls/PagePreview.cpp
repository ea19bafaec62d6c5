#include "PagePreview.h"

#include <QPainter>

namespace firstdew::controls {

void PagePreview::setSummary(viewmodels::SummaryModel* summary)
{
    if (m_summary == summary)
        return;
    m_summary = summary;
    if (m_summary != nullptr)
        connect(m_summary, &viewmodels::SummaryModel::changed, this, &PagePreview::redraw);
    emit summaryChanged();
    redraw();
}

void PagePreview::draw(QPainter* painter)
{
    if (m_summary == nullptr || width() < 1)
        return;
    const qreal scale = painter->device()->devicePixelRatio();
    const QImage page = m_summary->page(static_cast<int>(width() * scale));
    const QRectF place(0, 0, width(), width() * page.height() / page.width());
    painter->drawImage(place, page);
    painter->setPen(Qt::gray);
    painter->drawRect(place.adjusted(0.5, 0.5, -0.5, -0.5));
}

} // namespace firstdew::controls
