#pragma once

#include <QQuickItem>
#include <QtQml/qqmlregistration.h>

class QPainter;

namespace firstdew::controls {

/// An item that draws itself with a painter, once for each change. Unlike QQuickPaintedItem it keeps nothing but the
/// picture: there the painter's own workings stay, several kilobytes for an icon.
class Drawn : public QQuickItem {
    Q_OBJECT
    QML_ANONYMOUS

public:
    explicit Drawn(QQuickItem* parent = nullptr);

protected:
    /// In the coordinates of the item; may reach beyond it as far as extent() does.
    virtual void draw(QPainter* painter) = 0;
    /// Where anything is drawn; empty where nothing is.
    [[nodiscard]] virtual QRectF extent() const { return {0, 0, width(), height()}; }
    void redraw();
    void geometryChange(const QRectF& now, const QRectF& before) override;
    void itemChange(ItemChange change, const ItemChangeData& data) override;
    QSGNode* updatePaintNode(QSGNode* old, UpdatePaintNodeData* data) override;

private:
    bool m_stale = true; ///< the picture is not that of what it should show
};

} // namespace firstdew::controls
