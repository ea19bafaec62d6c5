#include "IconDrawing.h"

#include <QFile>
#include <QPainter>

namespace firstdew::controls {

void IconDrawing::choose(const QString& name, const QColor& color)
{
    if (m_name == name && m_color == color)
        return;
    m_name = name;
    m_color = color;
    m_drawing.reset();
}

void IconDrawing::load()
{
    m_drawing = std::make_unique<QSvgRenderer>();
    QFile file(QStringLiteral(":/assets/icons/%1.svg").arg(m_name));
    if (file.open(QIODevice::ReadOnly))
        m_drawing->load(file.readAll().replace("currentColor", m_color.name().toLatin1()));
    else
        qWarning("no icon '%s'", qPrintable(m_name));
}

void IconDrawing::paint(QPainter* painter, const QRectF& where, bool mirrored)
{
    if (m_name.isEmpty())
        return;
    if (!m_drawing)
        load();
    painter->save();
    painter->translate(where.topLeft());
    if (mirrored) {
        painter->translate(where.width(), 0);
        painter->scale(-1, 1);
    }
    m_drawing->render(painter, QRectF(QPointF(0, 0), where.size()));
    painter->restore();
}

} // namespace firstdew::controls
