#pragma once

#include <QColor>
#include <QQuickPaintedItem>

namespace firstdew::controls {

/// What is left of a stretch of time, as an arc that shrinks from a full circle.
class Ring : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(qreal share MEMBER m_share NOTIFY changed) ///< share still to go, 0 to 1
    Q_PROPERTY(QColor color MEMBER m_color NOTIFY changed)
    Q_PROPERTY(QColor track MEMBER m_track NOTIFY changed)
    Q_PROPERTY(qreal stroke MEMBER m_stroke NOTIFY changed)

public:
    explicit Ring(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    qreal m_share = 1;
    QColor m_color;
    QColor m_track;
    qreal m_stroke = 12;
};

} // namespace firstdew::controls
