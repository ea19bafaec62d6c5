#pragma once

#include "TimeChart.h"
#ifndef Q_MOC_RUN
#include "charts/MonthPainter.h"
#endif

namespace firstdew::controls {

/// One site's five weeks to the last day shown, as a calendar of dots.
class MonthChart : public firstdew::controls::TimeChart {
    Q_OBJECT
    QML_ELEMENT
    /// Whether a check-in stands in what is shown.
    Q_PROPERTY(int levels READ levels NOTIFY changed)
    /// Height that the weeks need.
    Q_PROPERTY(qreal wantedHeight READ wantedHeight NOTIFY looked)
    /// The day that the keyboard is on; 0: none.
    Q_PROPERTY(int selected READ selected WRITE select NOTIFY selectedChanged)

public:
    explicit MonthChart(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;
    [[nodiscard]] int levels() const;
    [[nodiscard]] qreal wantedHeight() const { return charts::monthHeight(look()); }
    [[nodiscard]] int selected() const { return m_data.selected ? m_data.selected->daysSince1970() : 0; }
    void select(int day);
    /// The keyboard goes that many days on, as far as the weeks and today reach.
    Q_INVOKABLE void step(int days);
    /// The day under a point; 0 beside the weeks, and after today.
    Q_INVOKABLE int dayAt(qreal x, qreal y) const;
    /// Radius of the dot of a level.
    Q_INVOKABLE static qreal dotRadius(firstdew::ui::Level::Value level);

signals:
    void selectedChanged();

protected:
    void gather(facts::DiarySite site) override;
    void setDays(facts::LocalDate from, facts::LocalDate to) override;

private:
    charts::MonthData m_data;
};

} // namespace firstdew::controls
