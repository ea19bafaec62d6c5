#pragma once

#include "DiaryModel.h"
#include "PaintedChart.h"
#ifndef Q_MOC_RUN
#include "facts/Enumerations.h"
#endif

namespace firstdew::controls {

/// A chart of one site over some days.
class TimeChart : public firstdew::controls::PaintedChart {
    Q_OBJECT
    QML_ANONYMOUS
    /// Whose record is drawn.
    Q_PROPERTY(firstdew::viewmodels::DiaryModel* diary READ diary WRITE setDiary NOTIFY asked REQUIRED)
    Q_PROPERTY(firstdew::ui::DiarySite::Value site MEMBER m_site NOTIFY asked)
    Q_PROPERTY(int span MEMBER m_span NOTIFY moved)    ///< days
    Q_PROPERTY(int back MEMBER m_back NOTIFY moved)    ///< days from the last one shown to today
    Q_PROPERTY(bool baths MEMBER m_baths NOTIFY asked) ///< whether baths are shown
    Q_PROPERTY(QList<firstdew::ui::Circumstance::Value> without MEMBER m_without NOTIFY
                   asked) ///< circumstances whose days are left out

public:
    explicit TimeChart(QQuickItem* parent = nullptr);
    [[nodiscard]] viewmodels::DiaryModel* diary() const { return m_diary; }
    void setDiary(viewmodels::DiaryModel* diary);

signals:
    /// Another record, or another part of it, is to be drawn.
    void asked();
    /// Other days of the same.
    void moved();

protected:
    /// Reads the record anew; moving and drawing must stay quick without.
    virtual void gather(facts::DiarySite site) = 0;
    /// The days to draw.
    virtual void setDays(facts::LocalDate from, facts::LocalDate to) = 0;
    [[nodiscard]] charts::ChartLook look() const;
    [[nodiscard]] bool withBaths() const { return m_baths; }
    [[nodiscard]] facts::SetOf<facts::Circumstance> without() const;
    [[nodiscard]] const viewmodels::Store& store() const { return m_diary->store(); }

private:
    void gatherAnew();
    void showDays();

    viewmodels::DiaryModel* m_diary = nullptr;
    ui::DiarySite::Value m_site{};
    int m_span = 90;
    int m_back = 0;
    bool m_baths = true;
    QList<ui::Circumstance::Value> m_without;
};

} // namespace firstdew::controls
