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
constexpr int kRememberedDays = 3;
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
    const bool sameDaemon = all[QStringLiteral("daemon")].toString() == daemon();
    const QJsonObject notices = all[QStringLiteral("notices")].toObject();
    for (auto it = notices.begin(); it != notices.end(); ++it) {
        const QJsonObject one = it.value().toObject();
        const uint id = static_cast<uint>(one[QStringLiteral("id")].toDouble());
        // What a daemon now gone had up is down, and has to be shown again by the present one.
        if (id != 0 && !sameDaemon)
            continue;
        if (const auto since = facts::LocalTime::parse(one[QStringLiteral("since")].toString().toStdString()))
            m_shown[it.key().toStdString()] = {id, *since};
    }
}

void DesktopNotifier::write() const
{
    QJsonObject notices;
    for (const auto& [key, shown] : m_shown)
        notices[QString::fromStdString(key)] =
            QJsonObject{{QStringLiteral("id"), static_cast<double>(shown.id)}, {QStringLiteral("since"), QString::fromStdString(shown.since.iso())}};
    QDir().mkpath(QFileInfo(m_state).path());
    QSaveFile file(m_state);
    const QByteArray text = QJsonDocument(QJsonObject{{QStringLiteral("daemon"), daemon()}, {QStringLiteral("notices"), notices}}).toJson();
    if (!file.open(QIODevice::WriteOnly) || !file.setPermissions(QFile::ReadOwner | QFile::WriteOwner) || file.write(text) != text.size() || !file.commit())
        qWarning("notices: %s could not be written; a restarted app may show a reminder twice", qPrintable(m_state));
}

void DesktopNotifier::show(const std::vector<ports::Notice>& due)
{
    // Read each time: a one-shot reminder may have shown something while this program was open.
    read();
    const auto before = m_shown;
    facts::LocalTime latest;
    for (auto& [key, shown] : m_shown) {
        latest = std::max(latest, shown.since);
        const bool stillDue = std::any_of(due.begin(), due.end(), [&](const ports::Notice& n) { return n.key == key; });
        if (stillDue || shown.id == 0)
            continue;
        QDBusMessage close = call(QStringLiteral("CloseNotification"));
        close << shown.id;
        m_bus.call(close, QDBus::NoBlock);
        shown.id = 0;
    }
    std::erase_if(m_shown, [&](const auto& one) { return one.second.id == 0 && one.second.since.date + kRememberedDays < latest.date; });
    for (const ports::Notice& n : due) {
        const auto known = m_shown.find(n.key);
        if (known != m_shown.end() && (known->second.id != 0 || n.since <= known->second.since))
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
            m_shown[n.key] = {reply.value(), n.since};
    }
    if (m_shown != before)
        write();
}

bool DesktopNotifier::anyUp() const
{
    return std::any_of(m_shown.begin(), m_shown.end(), [](const auto& one) { return one.second.id != 0; });
}

void DesktopNotifier::actionInvoked(uint id, const QString& action)
{
    read();
    for (const auto& [key, shown] : m_shown)
        if (shown.id == id) {
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
        if (shown.id == id) {
            shown.id = 0;
            write();
            emit closed();
            return;
        }
}

} // namespace firstdew::linuxside
