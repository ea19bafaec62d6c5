#include "CameraPicture.h"

#include <QPainter>

namespace firstdew::controls {

void CameraPicture::setScan(viewmodels::ScanModel* scan)
{
    if (m_scan == scan)
        return;
    m_scan = scan;
    if (m_scan != nullptr)
        connect(m_scan, &viewmodels::ScanModel::seen, this, &CameraPicture::redraw);
    emit scanChanged();
}

void CameraPicture::draw(QPainter* painter)
{
    painter->fillRect(QRectF(0, 0, width(), height()), Qt::black);
    if (m_scan == nullptr || m_scan->picture().isNull())
        return;
    const QSizeF shown = QSizeF(m_scan->picture().size()).scaled(width(), height(), Qt::KeepAspectRatio);
    painter->drawImage(QRectF(QPointF((width() - shown.width()) / 2, (height() - shown.height()) / 2), shown),
                       m_scan->picture());
}

} // namespace firstdew::controls
