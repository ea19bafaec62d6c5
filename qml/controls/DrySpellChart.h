#pragma once

#ifndef Q_MOC_RUN
#include "charts/DrySpellPainter.h"
#endif
#include "DiaryModel.h"
#include "PaintedChart.h"

namespace firstdew::controls {

/// How long one site's dry spells last, with the latest of them: the evidence behind its forecast.
class DrySpellChart : public firstdew::controls::PaintedChart {
    Q_OBJECT
    QML_ELEMENT
    /// Whose record is drawn.
    Q_PROPERTY(firstdew::viewmodels::DiaryModel* diary READ diary WRITE setDiary NOTIFY changed REQUIRED)
    Q_PROPERTY(firstdew::ui::DiarySite::Value site READ site WRITE setSite NOTIFY changed)
    /// Whether there is a treated spell to show; the rest says nothing without.
    Q_PROPERTY(bool known READ known NOTIFY changed)
    /// Height that the bars of the spells need.
    Q_PROPERTY(qreal barsHeight READ barsHeight NOTIFY changed)
    /// What the chart shows, in a sentence.
    Q_PROPERTY(QString saying READ saying NOTIFY changed)
    /// How likely dampness is today, and what today's report changed of it, in a sentence.
    Q_PROPERTY(QString todaySaying READ todaySaying NOTIFY changed)

public:
    using PaintedChart::PaintedChart;
    void paint(QPainter* painter) override;
    [[nodiscard]] viewmodels::DiaryModel* diary() const { return m_diary; }
    void setDiary(viewmodels::DiaryModel* diary);
    [[nodiscard]] ui::DiarySite::Value site() const { return m_site; }
    void setSite(ui::DiarySite::Value site);
    [[nodiscard]] bool known() const { return !m_data.lasting.empty(); }
    [[nodiscard]] qreal barsHeight() const { return charts::spellBarsHeight(m_data.spells.size(), 1); }
    [[nodiscard]] QString saying() const { return m_saying; }
    [[nodiscard]] QString todaySaying() const { return m_todaySaying; }

private:
    void gather();

    viewmodels::DiaryModel* m_diary = nullptr;
    ui::DiarySite::Value m_site{};
    charts::DrySpellData m_data;
    QString m_saying, m_todaySaying;
};

} // namespace firstdew::controls
