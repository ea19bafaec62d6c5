#pragma once

// The meta-object compiler of Qt 6.4 cannot read the standard library's concepts.
#ifndef Q_MOC_RUN
#include "ports/Notifier.h"
#endif

#include <QDBusConnection>
#include <QObject>
#include <QString>
#include <functional>
#include <map>

namespace firstdew::linuxside
{

/// Reminders through org.freedesktop.Notifications (Desktop Notifications Specification 1.2).
class DesktopNotifier : public QObject, public ports::Notifier
{
    Q_OBJECT

public:
    explicit DesktopNotifier(QDBusConnection bus = QDBusConnection::sessionBus(), QObject* parent = nullptr);
    void show(const std::vector<ports::Notice>& due) override;

signals:
    /// The person tapped the notice with that key.
    void opened(const QString& key);

private slots:
    void actionInvoked(uint id, const QString& action);
    void notificationClosed(uint id, uint reason);

private:
    QDBusConnection m_bus;
    std::map<std::string, uint> m_shown; ///< by key; 0 where the person closed it: not shown again
};

} // namespace firstdew::linuxside
