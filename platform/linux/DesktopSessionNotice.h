#pragma once

#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "ports/SessionNotice.h"
#endif

#include <QDBusConnection>
#include <QObject>
#include <QTimer>

namespace firstdew::linuxside {

/// The running session through org.freedesktop.Notifications (Desktop Notifications Specification 1.2): what to do,
/// until when, and Stop. It stays until the session is over or the person closes it, and it makes no sound. A desktop's
/// notices have no countdown, so it names the time of day at which the step ends. No call waits for an answer, since a
/// daemon that hangs may not hold up a session.
class DesktopSessionNotice : public QObject, public ports::SessionNotice {
    Q_OBJECT

public:
    explicit DesktopSessionNotice(QDBusConnection bus = QDBusConnection::sessionBus(), QObject* parent = nullptr);
    ~DesktopSessionNotice() override;
    void show(const ports::SessionStep& step) override;
    void over() override;
    void onStop(std::function<void()> stop) override { m_stop = std::move(stop); }

signals:
    /// The person tapped the notice itself.
    void opened();

private slots:
    void actionInvoked(uint id, const QString& action);
    void notificationClosed(uint id, uint reason);

private:
    void listen();
    void send();
    void close(uint id);

    QDBusConnection m_bus;
    QTimer m_again; ///< shows it again before it ends by itself
    std::function<void()> m_stop;
    std::optional<ports::SessionStep> m_step;
    uint m_id = 0;            ///< its number with the daemon; 0 while none is up
    bool m_listens = false;   ///< to the daemon's signals
    bool m_asked = false;     ///< the daemon has not answered yet
    bool m_newer = false;     ///< the step has changed since it was asked
    bool m_pressed = false;   ///< some daemons close a notice when it is pressed
    bool m_dismissed = false; ///< closed by the person, so not shown again in this session
};

} // namespace firstdew::linuxside
