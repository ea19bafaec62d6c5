#pragma once

#include "Drawn.h"

#include <QColor>
#include <QtQml/qqmlregistration.h>

namespace firstdew::controls {

/// A diary level as 0 to 3 ripples, dry as a still line; the picture of a level everywhere. Lines of that width.
void paintRipples(QPainter* painter, const QRectF& where, int level, const QColor& color, qreal stroke);

/// The same as an item.
class Ripples : public firstdew::controls::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int level MEMBER m_level NOTIFY changed)
    Q_PROPERTY(QColor color MEMBER m_color NOTIFY changed)
    Q_PROPERTY(qreal stroke MEMBER m_stroke NOTIFY changed)

public:
    explicit Ripples(QQuickItem* parent = nullptr);

signals:
    void changed();

protected:
    void draw(QPainter* painter) override;

private:
    int m_level = 0;
    QColor m_color;
    qreal m_stroke = 2;
};

} // namespace firstdew::controls
