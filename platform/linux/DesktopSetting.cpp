#include "linux/DesktopSetting.h"

#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QDBusVariant>

#include <utility>

namespace firstdew::linuxside {

namespace {

constexpr int kPatienceMs = 2000;
const QString kPortal = QStringLiteral("org.freedesktop.portal.Desktop");
const QString kPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString kSettings = QStringLiteral("org.freedesktop.portal.Settings");

/// The portal's older call wraps a value twice.
QVariant bare(QVariant value)
{
    while (value.metaType() == QMetaType::fromType<QDBusVariant>())
        value = value.value<QDBusVariant>().variant();
    return value;
}

} // namespace

DesktopSetting::DesktopSetting(QString key, std::function<void(const QVariant&)> hear, QDBusConnection bus,
                               QString group)
    : m_group(std::move(group)), m_key(std::move(key)), m_hear(std::move(hear)), m_bus(std::move(bus))
{
    // From any sender: asking who has the name would wait for the bus. Qt 6.4 never calls a slot that takes a
    // QDBusVariant, so this one takes the message.
    m_bus.connect(QString(), kPath, kSettings, QStringLiteral("SettingChanged"), this, SLOT(onChanged(QDBusMessage)));
    QDBusMessage message = QDBusMessage::createMethodCall(kPortal, kPath, kSettings, QStringLiteral("Read"));
    message.setAutoStartService(false); // the look is no reason to start a portal
    message << m_group << m_key;
    auto* watcher = new QDBusPendingCallWatcher(m_bus.asyncCall(message, kPatienceMs), this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this](QDBusPendingCallWatcher* done) {
        const QDBusPendingReply<QDBusVariant> reply = *done;
        done->deleteLater();
        m_hear(reply.isError() ? QVariant() : bare(reply.value().variant()));
    });
}

void DesktopSetting::onChanged(const QDBusMessage& message)
{
    const QVariantList told = message.arguments(); // group, key, value
    if (told.size() == 3 && told.at(0) == m_group && told.at(1) == m_key)
        m_hear(bare(told.at(2)));
}

} // namespace firstdew::linuxside
