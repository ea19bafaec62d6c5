#pragma once

#include "Drawn.h"
#include "TodayValues.h"

#include <QtQml/qqmlregistration.h>

namespace firstdew::controls {

/// One site's days ahead, each with its chance of dampness as a rising bar; a planned bath stands above its day.
class OutlookBars : public firstdew::controls::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(firstdew::ui::SiteAhead ahead MEMBER m_ahead NOTIFY changed)
    Q_PROPERTY(qreal barHeight MEMBER m_barHeight NOTIFY changed)
    Q_PROPERTY(qreal gap MEMBER m_gap NOTIFY changed) ///< between two bars, and the bars' radius
    Q_PROPERTY(qreal iconSize MEMBER m_iconSize NOTIFY changed)
    Q_PROPERTY(QColor track MEMBER m_track NOTIFY changed)
    Q_PROPERTY(QColor bar MEMBER m_bar NOTIFY changed)
    Q_PROPERTY(QColor bath MEMBER m_bath NOTIFY changed)

public:
    explicit OutlookBars(QQuickItem* parent = nullptr);

signals:
    void changed();

protected:
    void draw(QPainter* painter) override;

private:
    ui::SiteAhead m_ahead;
    qreal m_barHeight = 0, m_gap = 0, m_iconSize = 0;
    QColor m_track, m_bar, m_bath;
};

} // namespace firstdew::controls
