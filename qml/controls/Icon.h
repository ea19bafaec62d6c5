#pragma once

#include "Drawn.h"

#include <QtQml/qqmlregistration.h>

namespace firstdew::controls {

/// One of our own line icons in any colour of the theme.
class Icon : public firstdew::controls::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name MEMBER m_name NOTIFY changed)
    Q_PROPERTY(QColor color MEMBER m_color NOTIFY changed)
    Q_PROPERTY(bool mirrored MEMBER m_mirrored NOTIFY changed)

public:
    explicit Icon(QQuickItem* parent = nullptr);

signals:
    void changed();

protected:
    void draw(QPainter* painter) override;

private:
    QString m_name;
    QColor m_color;
    bool m_mirrored = false;
};

} // namespace firstdew::controls
