#include "Icon.h"

#include <QFile>
#include <QPainter>

namespace firstdew::controls {

Icon::Icon(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &Icon::nameChanged, this, &Icon::load);
    connect(this, &Icon::colorChanged, this, &Icon::load);
    connect(this, &Icon::mirroredChanged, this, [this] { update(); });
}

void Icon::load()
{
    if (m_name.isEmpty())
        return;
    QFile file(QStringLiteral(":/assets/icons/%1.svg").arg(m_name));
    if (!file.open(QIODevice::ReadOnly)) {
        qWarning("no icon '%s'", qPrintable(m_name));
        return;
    }
    m_svg.load(file.readAll().replace("currentColor", m_color.name().toLatin1()));
    update();
}

void Icon::paint(QPainter* painter)
{
    if (m_mirrored) {
        painter->translate(width(), 0);
        painter->scale(-1, 1);
    }
    m_svg.render(painter, QRectF(0, 0, width(), height()));
}

} // namespace firstdew::controls
