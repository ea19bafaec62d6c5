#pragma once

#include <QColor>
#include <QRectF>
#include <QString>
#include <QSvgRenderer>
#include <memory>

class QPainter;

namespace firstdew::controls {

/// One of our own line icons (assets/icons/NAME.svg) in one colour, read when it is first painted: name and colour come one
/// after the other, and many icons are never seen.
class IconDrawing {
public:
    /// What it is from now on; an empty name paints nothing.
    void choose(const QString& name, const QColor& color);
    void paint(QPainter* painter, const QRectF& where, bool mirrored);

private:
    void load();

    QString m_name;
    QColor m_color;
    std::unique_ptr<QSvgRenderer> m_drawing; ///< nothing until it is painted
};

} // namespace firstdew::controls
