#include "Drawn.h"

#include <QGuiApplication>
#include <QPainter>
#include <QQuickWindow>
#include <QSGImageNode>

namespace firstdew::controls {

Drawn::Drawn(QQuickItem* parent) : QQuickItem(parent)
{
    setFlag(ItemHasContents);
    connect(qGuiApp, &QGuiApplication::layoutDirectionChanged, this,
            &Drawn::redraw); // much of it is drawn the other way round then
}

void Drawn::redraw()
{
    m_stale = true;
    update();
}

void Drawn::geometryChange(const QRectF& now, const QRectF& before)
{
    QQuickItem::geometryChange(now, before);
    if (now.size() != before.size())
        redraw();
}

void Drawn::itemChange(ItemChange change, const ItemChangeData& data)
{
    if (change == ItemDevicePixelRatioHasChanged)
        redraw();
    QQuickItem::itemChange(change, data);
}

QSGNode* Drawn::updatePaintNode(QSGNode* old, UpdatePaintNodeData* /*data*/)
{
    auto* node = static_cast<QSGImageNode*>(old); // of nothing else, see below
    const QRectF where(extent().toAlignedRect());
    if (where.isEmpty()) {
        delete node;
        return nullptr;
    }
    if (node == nullptr) {
        node = window()->createImageNode();
        node->setOwnsTexture(true);
        m_stale = true;
    }
    if (!m_stale)
        return node;
    const qreal ratio = window()->effectiveDevicePixelRatio();
    QImage image((where.size() * ratio).toSize().expandedTo({1, 1}), QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(ratio);
    image.fill(Qt::transparent);
    {
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.translate(-where.topLeft());
        draw(&painter);
    }
    node->setTexture(window()->createTextureFromImage(image.copy(),
                                                      QQuickWindow::TextureHasAlphaChannel)); // the copy has no painter
    node->setRect(where);
    m_stale = false;
    return node;
}

} // namespace firstdew::controls
