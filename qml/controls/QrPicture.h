#pragma once

#include <QQuickPaintedItem>
#include <QString>

namespace firstdew::controls {

/// A text as a QR code, black on white in every theme, with the quiet zone that scanners need.
class QrPicture : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString text MEMBER m_text NOTIFY changed)

public:
    explicit QrPicture(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QString m_text;
};

} // namespace firstdew::controls
