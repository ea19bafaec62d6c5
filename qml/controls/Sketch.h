#pragma once

#include "Drawn.h"
#include "Enums.h"

#include <QtQml/qqmlregistration.h>

namespace firstdew::controls {

/// The bare picture of a Drawing: the file of that theme, turned over where that is wanted and does no harm.
class Sketch : public firstdew::controls::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(firstdew::ui::Subject::Value subject MEMBER m_subject NOTIFY changed)
    Q_PROPERTY(bool dark MEMBER m_dark NOTIFY changed)
    Q_PROPERTY(bool mirrored MEMBER m_mirrored NOTIFY changed)

public:
    explicit Sketch(QQuickItem* parent = nullptr);

signals:
    void changed();

protected:
    void draw(QPainter* painter) override;

private:
    ui::Subject::Value m_subject{};
    bool m_dark = false;
    bool m_mirrored = false;
};

} // namespace firstdew::controls
