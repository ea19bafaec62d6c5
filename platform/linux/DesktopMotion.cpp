#include "linux/DesktopMotion.h"

#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>

#include <utility>

namespace firstdew::linuxside {

namespace {

constexpr int kPatienceMs = 2000;
const QString kPortal = QStringLiteral("org.freedesktop.portal.Desktop");
const QString kPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString kSettings = QStringLiteral("org.freedesktop.portal.Settings");
const QString kGroup = QStringLiteral("org.gnome.desktop.interface");
const QString kKey = QStringLiteral("enable-animations");

/// Portals wrap an answer once or twice.
bool isFalse(QVariant value)
{
    while (value.canConvert<QDBusVariant>())
        value = value.value<QDBusVariant>().variant();
    return value.typeId() == QMetaType::Bool && !value.toBool();
}

} // namespace

void DesktopMotion::follow(std::function<void(bool still)> hear)
{
    m_hear = std::move(hear);
    auto ask = QDBusMessage::createMethodCall(kPortal, kPath, kSettings, QStringLiteral("Read"));
    ask << kGroup << kKey;
    auto* asked = new QDBusPendingCallWatcher(m_bus.asyncCall(ask, kPatienceMs), this);
    connect(asked, &QDBusPendingCallWatcher::finished, this, [this, asked] {
        const QDBusPendingReply<QDBusVariant> answer = *asked;
        m_hear(answer.isValid() && isFalse(answer.value().variant()));
    });
    // After the first message: Qt 6.4 knows no slot that takes a variant before.
    m_bus.connect(kPortal, kPath, kSettings, QStringLiteral("SettingChanged"), this,
                  SLOT(changed(QString, QString, QDBusVariant)));
}

void DesktopMotion::changed(const QString& group, const QString& key, const QDBusVariant& value)
{
    if (group == kGroup && key == kKey)
        m_hear(isFalse(value.variant()));
}

} // namespace firstdew::linuxside
