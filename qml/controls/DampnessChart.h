#pragma once

#ifndef Q_MOC_RUN
#include "charts/DampnessPainter.h"
#endif

#include <QColor>
#include <QQuickPaintedItem>

namespace firstdew::controls {

/// One site's line of dampness up to today, drawn by the painter of the printed page; colours and type by role.
class DampnessChart : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString site MEMBER m_site NOTIFY changed)
    Q_PROPERTY(int span MEMBER m_span NOTIFY changed) ///< days, today the last
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY looked)
    Q_PROPERTY(QColor faint MEMBER m_faint NOTIFY looked)
    Q_PROPERTY(QColor line MEMBER m_line NOTIFY looked)
    Q_PROPERTY(QColor bath MEMBER m_bath NOTIFY looked)
    Q_PROPERTY(QString family MEMBER m_family NOTIFY looked)
    Q_PROPERTY(qreal textSize MEMBER m_textSize NOTIFY looked)
    Q_PROPERTY(bool mirrored MEMBER m_mirrored NOTIFY looked)
    /// Whether weighings stand in what is shown.
    Q_PROPERTY(bool weighed READ weighed NOTIFY changed)

public:
    explicit DampnessChart(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;
    [[nodiscard]] bool weighed() const { return !m_data.weighings.empty(); }
    /// The day under a point, ISO; empty beside the plot.
    Q_INVOKABLE QString dayAt(qreal x, qreal y) const;

signals:
    /// Another line is to be drawn.
    void changed();
    /// The same line is to look otherwise.
    void looked();

private:
    /// Reads the record anew; drawing itself must stay quick.
    void take();
    [[nodiscard]] charts::ChartLook look() const;
    [[nodiscard]] QRectF area() const;

    QString m_site;
    int m_span = 90;
    QColor m_ink, m_faint, m_line, m_bath;
    QString m_family;
    qreal m_textSize = 12;
    bool m_mirrored = false;
    charts::DampnessData m_data;
};

} // namespace firstdew::controls
