#pragma once

#include <QObject>
#include <QPointF>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace firstdew::controls {

/// Lets touches through to a window, but for those that a wet finger adds to the one it meant: at the same place, at
/// once, or before anybody can have seen that something else stands there now. A touch anywhere else always counts.
class SecondTouch : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QObject* window READ window WRITE watch NOTIFY changed)
    /// What can be touched now, in any words; empty: every touch counts.
    Q_PROPERTY(QString stands MEMBER m_stands NOTIFY changed)

public:
    explicit SecondTouch(QObject* parent = nullptr) : QObject(parent) {}
    [[nodiscard]] QObject* window() const { return m_window; }
    void watch(QObject* window);
    bool eventFilter(QObject* window, QEvent* event) override;

    /// All our own choice: a finger that bounces does so within a tenth of a second and touches within eight
    /// millimetres; nobody reads a new button in less than half a second.
    static constexpr int kBounceMs = 100, kNewMs = 500, kNear = 50;

signals:
    void changed();

private:
    struct Touch {
        QPointF at;
        quint64 ms = 0;
        QString stood;
    };
    QObject* m_window = nullptr;
    QString m_stands;
    std::optional<Touch> m_last;
};

} // namespace firstdew::controls
