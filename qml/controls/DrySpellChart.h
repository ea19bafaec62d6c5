#pragma once

#ifndef Q_MOC_RUN
#include "charts/DrySpellPainter.h"
#endif

#include <QColor>
#include <QQuickPaintedItem>

namespace firstdew::controls {

/// How long one site's dry spells last, with the latest of them: the evidence behind its forecast.
class DrySpellChart : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString site READ site WRITE setSite NOTIFY changed)
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY looked)
    Q_PROPERTY(QColor faint MEMBER m_faint NOTIFY looked)
    Q_PROPERTY(QColor line MEMBER m_line NOTIFY looked)
    Q_PROPERTY(QColor now MEMBER m_now NOTIFY looked)
    Q_PROPERTY(QString family MEMBER m_family NOTIFY looked)
    Q_PROPERTY(qreal textSize MEMBER m_textSize NOTIFY looked)
    Q_PROPERTY(bool mirrored MEMBER m_mirrored NOTIFY looked)
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

signals:
    void changed();
    void looked();

private:
    void take();

    QString m_site;
    QColor m_ink, m_faint, m_line, m_now;
    QString m_family;
    qreal m_textSize = 12;
    bool m_mirrored = false;
    charts::DrySpellData m_data;
    QString m_saying, m_todaySaying;
};

} // namespace firstdew::controls
