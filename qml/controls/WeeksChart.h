#pragma once

#include "TimeChart.h"
#ifndef Q_MOC_RUN
#include "charts/WeeksPainter.h"
#include "diary/Diary.h"
#endif

namespace firstdew::controls {

/// One site's damp days, week by week.
class WeeksChart : public firstdew::controls::TimeChart {
    Q_OBJECT
    QML_ELEMENT
    /// Weeks shown that are known.
    Q_PROPERTY(int known READ known NOTIFY changed)

public:
    using TimeChart::TimeChart;
    void paint(QPainter* painter) override;
    [[nodiscard]] int known() const;

protected:
    void gather(facts::DiarySite site) override;
    void setDays(facts::LocalDate from, facts::LocalDate to) override;

private:
    diary::SiteDiary m_site; ///< its reports alone, without the days left out
    charts::WeeksData m_data;
};

} // namespace firstdew::controls
