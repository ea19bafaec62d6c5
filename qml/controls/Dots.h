#pragma once

#include "Drawn.h"

#include <QColor>
#include <QtQml/qqmlregistration.h>

namespace firstdew::controls {

/// A chance as so many of a row of dots. The filled ones come first, in the direction of reading.
class Dots : public firstdew::controls::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int count MEMBER m_count NOTIFY changed)
    Q_PROPERTY(int filled MEMBER m_filled NOTIFY changed)
    Q_PROPERTY(QColor color MEMBER m_color NOTIFY changed)
    Q_PROPERTY(qreal stroke MEMBER m_stroke NOTIFY changed) ///< of the empty ones
    Q_PROPERTY(bool mirrored MEMBER m_mirrored NOTIFY changed)

public:
    explicit Dots(QQuickItem* parent = nullptr);

signals:
    void changed();

protected:
    void draw(QPainter* painter) override;

private:
    int m_count = 0, m_filled = 0;
    QColor m_color;
    qreal m_stroke = 1;
    bool m_mirrored = false;
};

} // namespace firstdew::controls
