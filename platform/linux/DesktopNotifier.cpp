#include "linux/DesktopNotifier.h"

#include <QDBusMessage>
#include <QDBusReply>
#include <QVariantMap>
#include <algorithm>

namespace firstdew::linuxside
{

namespace
{

const QString kService = QStringLiteral("org.freedesktop.Notifications");
const QString kPath = QStringLiteral("/org/freedesktop/Notifications");
constexpr int kCallMs = 2000;

QDBusMessage call(const QString& method)
{
    return QDBusMessage::createMethodCall(kService, kPath, kService, method);
}

} // namespace

DesktopNotifier::DesktopNotifier(QDBusConnection bus, QObject* parent) : QObject(parent), m_bus(bus)
{
    m_bus.connect(kService, kPath, kService, QStringLiteral("ActionInvoked"), this, SLOT(actionInvoked(uint, QString)));
    m_bus.connect(kService, kPath, kService, QStringLiteral("NotificationClosed"), this, SLOT(notificationClosed(uint, uint)));
}

void DesktopNotifier::show(const std::vector<ports::Notice>& due)
{
    for (auto it = m_shown.begin(); it != m_shown.end();) {
        const bool stillDue = std::any_of(due.begin(), due.end(), [&](const ports::Notice& n) { return n.key == it->first; });
        if (stillDue) {
            ++it;
            continue;
        }
        if (it->second != 0) {
            QDBusMessage close = call(QStringLiteral("CloseNotification"));
            close << it->second;
            m_bus.call(close, QDBus::NoBlock);
        }
        it = m_shown.erase(it);
    }
    for (const ports::Notice& n : due) {
        if (m_shown.count(n.key) != 0)
            continue;
        QDBusMessage notify = call(QStringLiteral("Notify"));
        notify << QStringLiteral("Firstdew") << uint(0) << QString() << QString::fromStdString(n.title) << QString::fromStdString(n.text)
               << QStringList{QStringLiteral("default"), QString::fromStdString(n.title)} << QVariantMap{{QStringLiteral("desktop-entry"), QStringLiteral("firstdew")}} << 0;
        const QDBusReply<uint> reply = m_bus.call(notify, QDBus::Block, kCallMs);
        // Without a daemon nothing is shown; the screen itself still says it, and the next look tries again.
        if (reply.isValid())
            m_shown[n.key] = reply.value();
    }
}

void DesktopNotifier::actionInvoked(uint id, const QString& action)
{
    if (action != QLatin1String("default"))
        return;
    for (const auto& [key, shown] : m_shown)
        if (shown == id)
            emit opened(QString::fromStdString(key));
}

void DesktopNotifier::notificationClosed(uint id, uint)
{
    for (auto& [key, shown] : m_shown)
        if (shown == id)
            shown = 0;
}

} // namespace firstdew::linuxside
