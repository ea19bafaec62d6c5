#pragma once

#include "Drawn.h"
#include "PageSource.h"

namespace firstdew::controls {

/// A page as it would be printed now, as wide as the item and as high as paper.
class PagePreview : public firstdew::controls::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(firstdew::viewmodels::PageSource* source READ source WRITE setSource NOTIFY sourceChanged)

public:
    explicit PagePreview(QQuickItem* parent = nullptr) : Drawn(parent) {}
    [[nodiscard]] viewmodels::PageSource* source() const { return m_source; }
    void setSource(viewmodels::PageSource* source);

signals:
    void sourceChanged();

protected:
    void draw(QPainter* painter) override;

private:
    viewmodels::PageSource* m_source = nullptr;
};

} // namespace firstdew::controls
