#include "linux/DesktopNotifier.h"

#include <QCryptographicHash>
#include <QDBusConnectionInterface>
#include <QDBusMessage>
#include <QDBusReply>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <QStandardPaths>
#include <QVariantMap>
#include <algorithm>

namespace firstdew::linuxside
{

namespace
{

const QString kService = QStringLiteral("org.freedesktop.Notifications");
const QString kPath = QStringLiteral("/org/freedesktop/Notifications");
constexpr int kCallMs = 2000;
constexpr uint kClosedByCall = 3; // reason of NotificationClosed: CloseNotification was called

QDBusMessage call(const QString& method)
{
    return QDBusMessage::createMethodCall(kService, kPath, kService, method);
}

} // namespace

DesktopNotifier::DesktopNotifier(QString state, QDBusConnection bus, QObject* parent) : QObject(parent), m_bus(bus), m_state(std::move(state))
{
    m_bus.connect(kService, kPath, kService, QStringLiteral("ActionInvoked"), this, SLOT(actionInvoked(uint, QString)));
    m_bus.connect(kService, kPath, kService, QStringLiteral("NotificationClosed"), this, SLOT(notificationClosed(uint, uint)));
}

QString DesktopNotifier::stateFor(const QString& record)
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::RuntimeLocation) + QStringLiteral("/firstdew");
    const QByteArray path = QFileInfo(record).absoluteFilePath().toUtf8();
    return QStringLiteral("%1/notices-%2.json").arg(folder, QString::fromLatin1(QCryptographicHash::hash(path, QCryptographicHash::Sha256).toHex().left(16)));
}

/// The daemon's own name on the bus: a restarted one gives out the same numbers again for other notices.
QString DesktopNotifier::daemon() const
{
    const QDBusReply<QString> owner = m_bus.interface() ? m_bus.interface()->serviceOwner(kService) : QDBusReply<QString>();
    return owner.isValid() ? owner.value() : QString();
}

void DesktopNotifier::read()
{
    m_shown.clear();
    QFile file(m_state);
    if (!file.open(QIODevice::ReadOnly))
        return;
    const QJsonObject all = QJsonDocument::fromJson(file.readAll()).object();
    const QString owner = daemon();
    if (owner.isEmpty() || all[QStringLiteral("daemon")].toString() != owner)
        return;
    const QJsonObject up = all[QStringLiteral("notices")].toObject();
    for (auto it = up.begin(); it != up.end(); ++it)
        m_shown[it.key().toStdString()] = static_cast<uint>(it.value().toDouble());
}

void DesktopNotifier::write() const
{
    QJsonObject up;
    for (const auto& [key, id] : m_shown)
        up[QString::fromStdString(key)] = static_cast<double>(id);
    QDir().mkpath(QFileInfo(m_state).path());
    QSaveFile file(m_state);
    const QByteArray text = QJsonDocument(QJsonObject{{QStringLiteral("daemon"), daemon()}, {QStringLiteral("notices"), up}}).toJson();
    if (!file.open(QIODevice::WriteOnly) || !file.setPermissions(QFile::ReadOwner | QFile::WriteOwner) || file.write(text) != text.size() || !file.commit())
        qWarning("notices: %s could not be written; a restarted app may show a reminder twice", qPrintable(m_state));
}

void DesktopNotifier::show(const std::vector<ports::Notice>& due)
{
    // Read each time: a one-shot reminder may have shown something while this program was open.
    read();
    const auto before = m_shown;
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
        QStringList actions{QStringLiteral("default"), QString::fromStdString(n.title)};
        for (const ports::NoticeAction& a : n.actions)
            actions << QString::fromStdString(a.id) << QString::fromStdString(a.label);
        QDBusMessage notify = call(QStringLiteral("Notify"));
        notify << QStringLiteral("Firstdew") << uint(0) << QString() << QString::fromStdString(n.title) << QString::fromStdString(n.text) << actions
               << QVariantMap{{QStringLiteral("desktop-entry"), QStringLiteral("firstdew")}} << 0;
        const QDBusReply<uint> reply = m_bus.call(notify, QDBus::Block, kCallMs);
        // Without a daemon nothing is shown; the screen itself still says it, and the next look tries again.
        if (reply.isValid())
            m_shown[n.key] = reply.value();
    }
    if (m_shown != before)
        write();
}

bool DesktopNotifier::anyUp() const
{
    return std::any_of(m_shown.begin(), m_shown.end(), [](const auto& one) { return one.second != 0; });
}

void DesktopNotifier::actionInvoked(uint id, const QString& action)
{
    read();
    for (const auto& [key, shown] : m_shown)
        if (shown == id) {
            emit answered(QString::fromStdString(key), action);
            return;
        }
}

void DesktopNotifier::notificationClosed(uint id, uint reason)
{
    if (reason == kClosedByCall)
        return;
    read();
    for (auto& [key, shown] : m_shown)
        if (shown == id) {
            shown = 0;
            write();
            emit closed();
            return;
        }
}

} // namespace firstdew::linuxside
