#include "Icon.h"

#include <QFile>
#include <QPainter>

namespace firstdew::controls {

Icon::Icon(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &Icon::nameChanged, this, &Icon::other);
    connect(this, &Icon::colorChanged, this, &Icon::other);
    connect(this, &Icon::mirroredChanged, this, [this] { update(); });
}

void Icon::other()
{
    m_drawing.reset();
    update();
}

/// Read when it is first painted: name and colour come one after the other, and many icons are never seen.
void Icon::load()
{
    m_drawing = std::make_unique<QSvgRenderer>();
    QFile file(QStringLiteral(":/assets/icons/%1.svg").arg(m_name));
    if (file.open(QIODevice::ReadOnly))
        m_drawing->load(file.readAll().replace("currentColor", m_color.name().toLatin1()));
    else
        qWarning("no icon '%s'", qPrintable(m_name));
}

void Icon::paint(QPainter* painter)
{
    if (m_name.isEmpty())
        return;
    if (!m_drawing)
        load();
    if (m_mirrored) {
        painter->translate(width(), 0);
        painter->scale(-1, 1);
    }
    m_drawing->render(painter, QRectF(0, 0, width(), height()));
}

} // namespace firstdew::controls
