#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QSvgRenderer>
#include <memory>

namespace firstdew::controls {

/// One of our own line icons (assets/icons/NAME.svg) in any colour of the theme.
class Icon : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name MEMBER m_name NOTIFY nameChanged)
    Q_PROPERTY(QColor color MEMBER m_color NOTIFY colorChanged)
    Q_PROPERTY(bool mirrored MEMBER m_mirrored NOTIFY mirroredChanged)

public:
    explicit Icon(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void nameChanged();
    void colorChanged();
    void mirroredChanged();

private:
    void other();
    void load();

    QString m_name;
    QColor m_color;
    bool m_mirrored = false;
    std::unique_ptr<QSvgRenderer> m_drawing; ///< nothing until it is painted
};

} // namespace firstdew::controls
