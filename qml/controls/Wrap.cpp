#include "Wrap.h"

#include <QGuiApplication>

#include <algorithm>

namespace firstdew::controls {

Wrap::Wrap(QQuickItem* parent) : QQuickItem(parent)
{
    connect(this, &Wrap::changed, this, &Wrap::place);
    connect(qGuiApp, &QGuiApplication::layoutDirectionChanged, this, &Wrap::place);
}

Wrap::~Wrap()
{
    // The children go after this part of the object is gone, and would still report it.
    for (QQuickItem* child : childItems())
        child->disconnect(this);
    qGuiApp->disconnect(this);
}

void Wrap::itemChange(ItemChange change, const ItemChangeData& data)
{
    QQuickItem::itemChange(change, data);
    if (change == ItemChildAddedChange) {
        for (auto signal : {&QQuickItem::implicitWidthChanged, &QQuickItem::implicitHeightChanged,
                            &QQuickItem::heightChanged, &QQuickItem::visibleChanged})
            connect(data.item, signal, this, &Wrap::place);
        place();
    } else if (change == ItemChildRemovedChange) {
        data.item->disconnect(this);
        place();
    }
}

void Wrap::geometryChange(const QRectF& now, const QRectF& before)
{
    QQuickItem::geometryChange(now, before);
    if (now.width() != before.width())
        place();
}

void Wrap::place()
{
    if (m_placing)
        return;
    m_placing = true;
    const bool mirrored = QGuiApplication::layoutDirection() == Qt::RightToLeft;
    qreal x = 0;
    qreal y = 0;
    qreal line = 0;
    for (QQuickItem* child : childItems()) {
        if (!child->isVisible() || child->implicitWidth() <= 0)
            continue;
        const qreal across = std::min(child->implicitWidth(), std::max<qreal>(1, width()));
        if (x > 0 && x + across > width()) {
            x = 0;
            y += line + m_spacing;
            line = 0;
        }
        child->setWidth(across);
        child->setPosition({mirrored ? width() - x - across : x, y});
        x += across + m_spacing;
        line = std::max(line, child->height());
    }
    m_placing = false;
    m_needed = y + line;
    // A layout that is just handing out room takes no other wish; it hears of this one afterwards.
    if (m_needed != implicitHeight())
        polish();
}

void Wrap::updatePolish() { setImplicitHeight(m_needed); }

} // namespace firstdew::controls
