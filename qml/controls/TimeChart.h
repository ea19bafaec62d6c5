#pragma once

#include "PaintedChart.h"
#ifndef Q_MOC_RUN
#include "facts/Words.h"
#endif

namespace firstdew::controls {

/// A chart of one site over some days.
class TimeChart : public PaintedChart {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(QString site MEMBER m_site NOTIFY asked)
    Q_PROPERTY(int span MEMBER m_span NOTIFY moved)               ///< days
    Q_PROPERTY(int back MEMBER m_back NOTIFY moved)               ///< days from the last one shown to today
    Q_PROPERTY(bool baths MEMBER m_baths NOTIFY asked)            ///< whether baths are shown
    Q_PROPERTY(QStringList without MEMBER m_without NOTIFY asked) ///< circumstances whose days are left out

public:
    explicit TimeChart(QQuickItem* parent = nullptr);

signals:
    /// Another record, or another part of it, is to be drawn.
    void asked();
    /// Other days of the same.
    void moved();

protected:
    /// Reads the record anew; moving and drawing must stay quick without.
    virtual void take(facts::DiarySite site) = 0;
    /// The days to draw.
    virtual void show(facts::LocalDate from, facts::LocalDate to) = 0;
    [[nodiscard]] charts::ChartLook look() const;
    [[nodiscard]] bool withBaths() const { return m_baths; }
    [[nodiscard]] const QStringList& without() const { return m_without; }

private:
    void takeAnew();
    void move();

    QString m_site;
    int m_span = 90;
    int m_back = 0;
    bool m_baths = true;
    QStringList m_without;
};

} // namespace firstdew::controls
