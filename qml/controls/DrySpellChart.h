#pragma once

#ifndef Q_MOC_RUN
#include "charts/DrySpellPainter.h"
#endif
#include "PaintedChart.h"

namespace firstdew::controls {

/// How long one site's dry spells last, with the latest of them: the evidence behind its forecast.
class DrySpellChart : public PaintedChart {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString site READ site WRITE setSite NOTIFY changed)
    /// Whether there is a treated spell to show; the rest says nothing without.
    Q_PROPERTY(bool known READ known NOTIFY changed)
    /// Height that the bars of the spells need.
    Q_PROPERTY(qreal barsHeight READ barsHeight NOTIFY changed)
    /// What the chart shows, in a sentence.
    Q_PROPERTY(QString saying READ saying NOTIFY changed)
    /// How likely dampness is today, and what today's report changed of it, in a sentence.
    Q_PROPERTY(QString todaySaying READ todaySaying NOTIFY changed)

public:
    explicit DrySpellChart(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;
    [[nodiscard]] QString site() const { return m_site; }
    void setSite(const QString& site);
    [[nodiscard]] bool known() const { return !m_data.lasting.empty(); }
    [[nodiscard]] qreal barsHeight() const { return charts::spellBarsHeight(m_data.spells.size(), 1); }
    [[nodiscard]] QString saying() const { return m_saying; }
    [[nodiscard]] QString todaySaying() const { return m_todaySaying; }

private:
    void take();

    QString m_site;
    charts::DrySpellData m_data;
    QString m_saying, m_todaySaying;
};

} // namespace firstdew::controls
