#pragma once

#include <QDBusConnection>
#include <QDBusVariant>
#include <QObject>

#include <functional>

namespace firstdew::linuxside {

/// Whether the desktop shows motion, as its settings say through their portal (org.freedesktop.portal.Settings,
/// org.gnome.desktop.interface enable-animations), now and whenever that changes.
class DesktopMotion : public QObject {
    Q_OBJECT

public:
    explicit DesktopMotion(QDBusConnection bus = QDBusConnection::sessionBus()) : m_bus(std::move(bus)) {}
    /// `hear` is told true where nothing is to move. Where nobody answers it is told false, once.
    void follow(std::function<void(bool still)> hear);

private slots:
    void changed(const QString& group, const QString& key, const QDBusVariant& value);

private:
    QDBusConnection m_bus;
    std::function<void(bool still)> m_hear;
};

} // namespace firstdew::linuxside
