#include "linux/DesktopSharer.h"

#include <QDBusMessage>
#include <QDBusObjectPath>
#include <QDBusReply>
#include <QDBusUnixFileDescriptor>
#include <QFile>
#include <QFileInfo>
#include <QProcess>
#include <QStandardPaths>

#include <fcntl.h>
#include <unistd.h>

namespace firstdew::linuxside {

namespace {

constexpr int kPortalMs = 2000;

enum class Ask { WhichProgram, Nothing };

/// By the portal, which takes an open file and not a name, since it may see other folders than the program does.
bool throughPortal(const QDBusConnection& bus, const QString& path, Ask ask)
{
    const int opened = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_CLOEXEC);
    if (opened < 0)
        return false;
    const QDBusUnixFileDescriptor descriptor(opened); // holds a copy of its own
    ::close(opened);
    QDBusMessage message = QDBusMessage::createMethodCall(
        QStringLiteral("org.freedesktop.portal.Desktop"), QStringLiteral("/org/freedesktop/portal/desktop"),
        QStringLiteral("org.freedesktop.portal.OpenURI"), QStringLiteral("OpenFile"));
    message << QString() << QVariant::fromValue(descriptor)
            << QVariantMap{{QStringLiteral("ask"), ask == Ask::WhichProgram}};
    return QDBusReply<QDBusObjectPath>(bus.call(message, QDBus::Block, kPortalMs)).isValid();
}

bool handOver(const QDBusConnection& bus, const std::string& path, Ask ask)
{
    const QString name = QString::fromStdString(path);
    const QFileInfo info(name);
    if (!info.isReadable())
        return false;
    // The portal's call is for files.
    if (info.isFile() && bus.isConnected() && throughPortal(bus, name, ask))
        return true;
    const QString opener = QStandardPaths::findExecutable(QStringLiteral("xdg-open"));
    return !opener.isEmpty() && QProcess::startDetached(opener, {name});
}

} // namespace

bool DesktopSharer::share(const std::string& file, const std::string&)
{
    return handOver(m_bus, file, Ask::WhichProgram);
}

bool DesktopOpener::open(const std::string& path) { return handOver(m_bus, path, Ask::Nothing); }

void DesktopWakeGuard::keepAwake(bool on)
{
    if (on == (m_cookie != 0))
        return;
    QDBusMessage message = QDBusMessage::createMethodCall(
        QStringLiteral("org.freedesktop.ScreenSaver"), QStringLiteral("/org/freedesktop/ScreenSaver"),
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
