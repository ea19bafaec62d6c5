#pragma once

#include "DiaryModel.h"
#include "PaintedChart.h"
#ifndef Q_MOC_RUN
#include "charts/SpellColumnsPainter.h"
#endif

#include <QtQml/qqmlregistration.h>

namespace firstdew::controls {

/// The latest dry spells of a site, a column each: the picture of whether it works.
class SpellColumnsChart : public firstdew::controls::PaintedChart {
    Q_OBJECT
    QML_ELEMENT
    /// Whose record is drawn.
    Q_PROPERTY(firstdew::viewmodels::DiaryModel* diary READ diary WRITE setDiary NOTIFY changed REQUIRED)
    Q_PROPERTY(firstdew::ui::DiarySite::Value site READ site WRITE setSite NOTIFY changed)
    /// Spells that there are to draw.
    Q_PROPERTY(int count READ count NOTIFY changed)
    /// What the chart shows, in words.
    Q_PROPERTY(QString saying READ saying NOTIFY changed)

public:
    using PaintedChart::PaintedChart;
    void paint(QPainter* painter) override;
    [[nodiscard]] viewmodels::DiaryModel* diary() const { return m_diary; }
    void setDiary(viewmodels::DiaryModel* diary);
    [[nodiscard]] ui::DiarySite::Value site() const { return m_site; }
    void setSite(ui::DiarySite::Value site);
    [[nodiscard]] int count() const { return static_cast<int>(m_spells.size()); }
    [[nodiscard]] QString saying() const;

private:
    void gather();

    viewmodels::DiaryModel* m_diary = nullptr;
    ui::DiarySite::Value m_site{};
    std::vector<charts::SpellColumn> m_spells; ///< oldest first
};

} // namespace firstdew::controls
