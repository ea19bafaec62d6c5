#pragma once

#ifndef Q_MOC_RUN
#include "charts/DampnessPainter.h"
#endif
#include "PaintedChart.h"

namespace firstdew::controls {

/// One site's line of dampness up to today, drawn by the painter of the printed page; colours and type by role.
class DampnessChart : public PaintedChart {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString site MEMBER m_site NOTIFY changed)
    Q_PROPERTY(int span MEMBER m_span NOTIFY changed) ///< days, today the last
    /// Whether weighings stand in what is shown.
    Q_PROPERTY(bool weighed READ weighed NOTIFY changed)

public:
    explicit DampnessChart(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;
    [[nodiscard]] bool weighed() const { return !m_data.weighings.empty(); }
    /// The day under a point, ISO; empty beside the plot.
    Q_INVOKABLE QString dayAt(qreal x, qreal y) const;

private:
    /// Reads the record anew; drawing itself must stay quick.
    void take();

    QString m_site;
    int m_span = 90;
    charts::DampnessData m_data;
};

} // namespace firstdew::controls
