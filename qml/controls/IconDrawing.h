#pragma once

#include <QColor>
#include <QRectF>
#include <QString>

class QPainter;

namespace firstdew::controls {

/// Paints one of our own line icons (assets/icons/NAME.svg) in that colour; nothing where the name is empty. It is read
/// each time: an icon is drawn seldom, and what was read of it takes more room than its picture.
void paintIcon(QPainter* painter, const QRectF& where, const QString& name, const QColor& color, bool mirrored);

} // namespace firstdew::controls
