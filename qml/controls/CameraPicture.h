#pragma once

#include "Drawn.h"
#include "ScanModel.h"

namespace firstdew::controls {

/// What the camera sees while a code is looked for.
class CameraPicture : public firstdew::controls::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(firstdew::viewmodels::ScanModel* scan READ scan WRITE setScan NOTIFY scanChanged)

public:
    explicit CameraPicture(QQuickItem* parent = nullptr) : Drawn(parent) {}
    [[nodiscard]] viewmodels::ScanModel* scan() const { return m_scan; }
    void setScan(viewmodels::ScanModel* scan);

signals:
    void scanChanged();

protected:
    void draw(QPainter* painter) override;

private:
    viewmodels::ScanModel* m_scan = nullptr;
};

} // namespace firstdew::controls
