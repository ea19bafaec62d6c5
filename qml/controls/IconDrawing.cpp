#include "IconDrawing.h"

#include <QFile>
#include <QPainter>
#include <QSvgRenderer>

namespace firstdew::controls {

void paintIcon(QPainter* painter, const QRectF& where, const QString& name, const QColor& color, bool mirrored)
{
    if (name.isEmpty())
        return;
    QFile file(QStringLiteral(":/assets/icons/%1.svg").arg(name));
    if (!file.open(QIODevice::ReadOnly)) {
        qWarning("no icon '%s'", qPrintable(name));
        return;
    }
    QSvgRenderer drawing(file.readAll().replace("currentColor", color.name().toLatin1()));
    painter->save();
    painter->translate(where.topLeft());
    if (mirrored) {
        painter->translate(where.width(), 0);
        painter->scale(-1, 1);
    }
    drawing.render(painter, QRectF(QPointF(0, 0), where.size()));
    painter->restore();
}

} // namespace firstdew::controls
