#pragma once

#ifndef Q_MOC_RUN
#include "charts/TimeFrame.h"
#endif

#include <QColor>
#include <QQuickPaintedItem>

namespace firstdew::controls {

/// A chart drawn by a painter that screen and paper share: colours and type by role, and redrawn when they change.
class PaintedChart : public QQuickPaintedItem {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY looked)
    Q_PROPERTY(QColor faint MEMBER m_faint NOTIFY looked)
    Q_PROPERTY(QColor line MEMBER m_line NOTIFY looked)
    Q_PROPERTY(QColor accent MEMBER m_accent NOTIFY looked) ///< what stands out: baths, today
    Q_PROPERTY(QString family MEMBER m_family NOTIFY looked)
    Q_PROPERTY(qreal textSize MEMBER m_textSize NOTIFY looked)
    Q_PROPERTY(bool mirrored MEMBER m_mirrored NOTIFY looked)

public:
    explicit PaintedChart(QQuickItem* parent = nullptr);

signals:
    /// Something else is to be drawn.
    void changed();
    /// The same is to look otherwise.
    void looked();

protected:
    [[nodiscard]] QRectF area() const { return {0, 0, width(), height()}; }
    /// The line's colour, that thin.
    [[nodiscard]] QColor washed(float alpha) const;
    [[nodiscard]] charts::ChartLook look(float wash) const;
    [[nodiscard]] const QColor& accent() const { return m_accent; }

private:
    QColor m_ink, m_faint, m_line, m_accent;
    QString m_family;
    qreal m_textSize = 12;
    bool m_mirrored = false;
};

} // namespace firstdew::controls
