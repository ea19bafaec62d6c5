#pragma once

#include <catch2/catch.hpp>

#include <QCoreApplication>
#include <QDBusConnection>
#include <QDBusConnectionInterface>
#include <QDBusMessage>
#include <QElapsedTimer>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

#include <functional>

namespace firstdew::tests {

inline QCoreApplication& program()
{
    static int count = 1;
    static char name[] = "test_linux";
    static char* arguments[] = {name, nullptr};
    static auto* one = new QCoreApplication(count, arguments);
    return *one;
}

/// Lets the program go on until the condition holds; fails where it never does.
inline void waitFor(const char* what, const std::function<bool()>& condition)
{
    constexpr int kPatienceMs = 30'000; // far above any real wait
    QElapsedTimer since;
    since.start();
    while (!condition()) {
        INFO(what);
        REQUIRE(since.elapsed() < kPatienceMs);
        program().processEvents(QEventLoop::WaitForMoreEvents | QEventLoop::AllEvents, 20);
    }
}

/// A message bus of its own, with or without somebody on it who stands for the desktop's services.
class Bus {
public:
    explicit Bus(const QStringList& services = {})
    {
        program();
        m_daemon.start("dbus-daemon", {"--session", "--nofork", "--print-address"});
        m_address = QString::fromUtf8(line(m_daemon)).trimmed();
        static int count = 0;
        m_name = QString("bus%1").arg(++count);
        REQUIRE(connection().isConnected());
        if (services.isEmpty())
            return;
        auto environment = QProcessEnvironment::systemEnvironment();
        environment.insert("DBUS_SESSION_BUS_ADDRESS", m_address);
        m_desktop.setProcessEnvironment(environment);
        m_desktop.setProcessChannelMode(QProcess::ForwardedErrorChannel);
        m_desktop.start("/usr/bin/python3", QStringList{SOURCE_DIR "/tests/linux/fake_desktop.py"} + services);
        REQUIRE(said() == QJsonArray{"ready"});
    }
    ~Bus()
    {
        for (QProcess* p : {&m_desktop, &m_daemon}) {
            p->kill();
            p->waitForFinished();
        }
        QDBusConnection::disconnectFromBus(m_name);
    }
    Bus(const Bus&) = delete;
    Bus& operator=(const Bus&) = delete;

    QDBusConnection connection() const { return QDBusConnection::connectToBus(m_address, m_name); }
    /// What the desktop's services were asked next.
    QJsonArray said() { return QJsonDocument::fromJson(line(m_desktop)).array(); }
    /// Lets every answer in that the service has given until now: its answers come in order, and this is the last one.
    void answered(const QString& service) const
    {
        const auto last =
            connection().call(QDBusMessage::createMethodCall(service, "/", "org.freedesktop.DBus.Peer", "Ping"));
        REQUIRE(last.type() == QDBusMessage::ReplyMessage);
        program().processEvents();
    }

private:
    static QByteArray line(QProcess& process)
    {
        waitFor("a line", [&] { return process.canReadLine() || process.state() == QProcess::NotRunning; });
        return process.readLine();
    }

    QProcess m_daemon;
    QProcess m_desktop;
    QString m_address;
    QString m_name;
};

} // namespace firstdew::tests
