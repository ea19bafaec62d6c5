#pragma once

#include "TimeChart.h"
#ifndef Q_MOC_RUN
#include "charts/DampnessPainter.h"
#endif

namespace firstdew::controls {

/// One site's line of dampness.
class DampnessChart : public firstdew::controls::TimeChart {
    Q_OBJECT
    QML_ELEMENT
    /// Whether check-ins, and whether weighings, stand in what is shown.
    Q_PROPERTY(int levels READ levels NOTIFY changed)
    Q_PROPERTY(bool weighed READ weighed NOTIFY changed)

public:
    using TimeChart::TimeChart;
    void paint(QPainter* painter) override;
    [[nodiscard]] int levels() const;
    [[nodiscard]] bool weighed() const;
    /// The day under a point; 0 beside the plot.
    Q_INVOKABLE int dayAt(qreal x, qreal y) const;
    /// How wide a day is drawn.
    Q_INVOKABLE qreal dayWidth() const;

protected:
    void gather(facts::DiarySite site) override;
    void setDays(facts::LocalDate from, facts::LocalDate to) override;

private:
    charts::DampnessData m_data;
};

} // namespace firstdew::controls
