#pragma once

#include "TimeChart.h"
#ifndef Q_MOC_RUN
#include "charts/ReadingsPainter.h"
#endif

namespace firstdew::controls {

/// What the meter showed at each bath of one site, and how it was felt.
class ReadingsChart : public firstdew::controls::TimeChart {
    Q_OBJECT
    QML_ELEMENT
    /// Baths with a reading in what is shown.
    Q_PROPERTY(int count READ count NOTIFY changed)

public:
    using TimeChart::TimeChart;
    void paint(QPainter* painter) override;
    [[nodiscard]] int count() const;

protected:
    void gather(facts::DiarySite site) override;
    void setDays(facts::LocalDate from, facts::LocalDate to) override;

private:
    charts::ReadingsData m_data;
};

} // namespace firstdew::controls
