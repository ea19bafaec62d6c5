#include "linux/DesktopSharer.h"

#include <QDBusMessage>
#include <QDBusReply>
#include <QProcess>
#include <QStandardPaths>

namespace firstdew::linuxside
{

bool DesktopSharer::share(const std::string& file, const std::string&)
{
    const QString opener = QStandardPaths::findExecutable(QStringLiteral("xdg-open"));
    return !opener.isEmpty() && QProcess::startDetached(opener, {QString::fromStdString(file)});
}

DesktopWakeGuard::DesktopWakeGuard(QDBusConnection bus) : m_bus(bus) {}

void DesktopWakeGuard::keepAwake(bool on)
{
    if (on == (m_cookie != 0))
        return;
    QDBusMessage message = QDBusMessage::createMethodCall(QStringLiteral("org.freedesktop.ScreenSaver"), QStringLiteral("/org/freedesktop/ScreenSaver"),
                                                          QStringLiteral("org.freedesktop.ScreenSaver"), on ? QStringLiteral("Inhibit") : QStringLiteral("UnInhibit"));
    if (on) {
        message << QStringLiteral("Firstdew") << QStringLiteral("A session is running");
        const QDBusReply<uint> reply = m_bus.call(message, QDBus::Block, 1000);
        m_cookie = reply.isValid() ? reply.value() : 0;
    } else {
        message << m_cookie;
        m_bus.call(message, QDBus::NoBlock);
        m_cookie = 0;
    }
}

} // namespace firstdew::linuxside
