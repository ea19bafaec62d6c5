#pragma once

#include <QQuickItem>

namespace firstdew::controls {

/// Things in lines, as many in each as fit, from the side where reading begins. Unlike Flow it knows its height
/// at once when its width is set, which layouts need.
class Wrap : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(qreal spacing MEMBER m_spacing NOTIFY changed)

public:
    explicit Wrap(QQuickItem* parent = nullptr);
    ~Wrap() override;

signals:
    void changed();

protected:
    void itemChange(ItemChange change, const ItemChangeData& data) override;
    void updatePolish() override;
    void geometryChange(const QRectF& now, const QRectF& before) override;

private:
    void place();

    qreal m_spacing = 8;
    bool m_placing = false;
    qreal m_needed = 0;
};

} // namespace firstdew::controls
