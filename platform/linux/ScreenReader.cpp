#include "linux/ScreenReader.h"

#include <QDBusMessage>
#include <QDBusReply>
#include <QDBusVariant>

namespace firstdew::linuxside {

bool screenReaderIsOn(const QDBusConnection& bus)
{
    constexpr int kPatienceMs = 500;
    auto ask = QDBusMessage::createMethodCall(QStringLiteral("org.a11y.Bus"), QStringLiteral("/org/a11y/bus"),
                                              QStringLiteral("org.freedesktop.DBus.Properties"), QStringLiteral("Get"));
    ask << QStringLiteral("org.a11y.Status") << QStringLiteral("ScreenReaderEnabled");
    ask.setAutoStartService(false);
    const QDBusReply<QDBusVariant> answer = bus.call(ask, QDBus::Block, kPatienceMs);
    return answer.isValid() && answer.value().variant().toBool();
}

} // namespace firstdew::linuxside
