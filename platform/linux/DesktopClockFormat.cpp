#include "linux/DesktopClockFormat.h"

#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QDBusVariant>

namespace firstdew::linuxside {

namespace {

const QString kPortal = QStringLiteral("org.freedesktop.portal.Desktop");
const QString kPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString kSettings = QStringLiteral("org.freedesktop.portal.Settings");
const QString kGroup = QStringLiteral("org.gnome.desktop.interface");
const QString kKey = QStringLiteral("clock-format");

} // namespace

DesktopClockFormat::DesktopClockFormat(QDBusConnection bus) : m_bus(std::move(bus))
{
    if (!m_bus.isConnected())
        return;
    // From any sender: asking who has the name would wait for the bus.
    m_bus.connect(QString(), kPath, kSettings, QStringLiteral("SettingChanged"), this, SLOT(onSetting(QDBusMessage)));
    QDBusMessage message = QDBusMessage::createMethodCall(kPortal, kPath, kSettings, QStringLiteral("Read"));
    message.setAutoStartService(false); // a clock is no reason to start one
    message << kGroup << kKey;
    auto* watcher = new QDBusPendingCallWatcher(m_bus.asyncCall(message), this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this](QDBusPendingCallWatcher* done) {
        const QDBusPendingReply<QDBusVariant> reply = *done;
        done->deleteLater();
        if (!reply.isError())
            take(reply.value().variant());
    });
}

void DesktopClockFormat::onSetting(const QDBusMessage& message)
{
    const QVariantList told = message.arguments(); // group, key, value
    if (told.size() == 3 && told.at(0) == kGroup && told.at(1) == kKey)
        take(told.at(2));
}

void DesktopClockFormat::take(const QVariant& value)
{
    QVariant bare = value;
    while (bare.metaType() == QMetaType::fromType<QDBusVariant>()) // the portal's older call wraps it twice
        bare = bare.value<QDBusVariant>().variant();
    const auto hours = bare == QVariant(QStringLiteral("12h"))   ? ports::Hours::Twelve
                       : bare == QVariant(QStringLiteral("24h")) ? ports::Hours::TwentyFour
                                                                 : ports::Hours::AsLocale;
    if (hours == m_hours)
        return;
    m_hours = hours;
    if (m_changed)
        m_changed();
}

} // namespace firstdew::linuxside
