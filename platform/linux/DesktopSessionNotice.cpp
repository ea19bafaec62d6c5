#include "linux/DesktopSessionNotice.h"

#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QVariantMap>
#include <utility>

namespace firstdew::linuxside {

namespace {

const QString kService = QStringLiteral("org.freedesktop.Notifications");
const QString kPath = QStringLiteral("/org/freedesktop/Notifications");
const QString kIcon = QStringLiteral("firstdew"); // by the name it is installed under
/// If the app is killed, its notice ends soon, because nobody is there to stop the session.
constexpr int kAliveMs = 60'000;
constexpr int kAgainMs = 25'000;
constexpr int kAnswerMs = 5'000;
constexpr uint kDismissed = 2; // reason of NotificationClosed: the person closed it
constexpr uchar kLowUrgency = 0;

QDBusMessage call(const QString& method) { return QDBusMessage::createMethodCall(kService, kPath, kService, method); }

} // namespace

DesktopSessionNotice::DesktopSessionNotice(QDBusConnection bus, QObject* parent)
    : QObject(parent), m_bus(std::move(bus))
{
    m_again.setInterval(kAgainMs);
    connect(&m_again, &QTimer::timeout, this, &DesktopSessionNotice::send);
}

DesktopSessionNotice::~DesktopSessionNotice() { over(); }

/// With the first session and not at the start of the app, which most people open for the check-in.
void DesktopSessionNotice::listen()
{
    if (std::exchange(m_listens, true))
        return;
    m_bus.connect(kService, kPath, kService, QStringLiteral("ActionInvoked"), this, SLOT(actionInvoked(uint, QString)));
    m_bus.connect(kService, kPath, kService, QStringLiteral("NotificationClosed"), this,
                  SLOT(notificationClosed(uint, uint)));
}

void DesktopSessionNotice::show(const ports::SessionStep& step)
{
    m_step = step;
    if (m_dismissed)
        return;
    listen();
    m_again.start();
    send();
}

void DesktopSessionNotice::send()
{
    if (!m_step)
        return;
    m_newer = m_asked; // sent when the daemon has answered
    if (std::exchange(m_asked, true))
        return;
    QDBusMessage notify = call(QStringLiteral("Notify"));
    notify << QStringLiteral("Firstdew") << m_id << kIcon << QString::fromStdString(m_step->title)
           << QString::fromStdString(m_step->ends)
           << QStringList{QStringLiteral("default"), QString::fromStdString(m_step->title), QStringLiteral("stop"),
                          QString::fromStdString(m_step->stop)}
           << QVariantMap{{QStringLiteral("desktop-entry"), QStringLiteral("firstdew")},
                          {QStringLiteral("urgency"), QVariant::fromValue(kLowUrgency)},
                          {QStringLiteral("resident"), true},
                          // Where it is understood, the notice of a killed app gives way to this one.
                          {QStringLiteral("x-dunst-stack-tag"), QStringLiteral("firstdew-session")},
                          {QStringLiteral("suppress-sound"), true}}
           << kAliveMs;
    auto* answer = new QDBusPendingCallWatcher(m_bus.asyncCall(notify, kAnswerMs), this);
    connect(answer, &QDBusPendingCallWatcher::finished, this, [this, answer] {
        answer->deleteLater();
        m_asked = false;
        const QDBusPendingReply<uint> reply = *answer;
        m_id = reply.isValid() ? reply.value() : 0;
        if (!m_step)
            close(std::exchange(m_id, 0));
        else if (std::exchange(m_newer, false))
            send();
    });
}

void DesktopSessionNotice::over()
{
    m_again.stop();
    m_step.reset();
    m_newer = m_pressed = m_dismissed = false;
    if (!m_asked) // otherwise it is closed when its number is known
        close(std::exchange(m_id, 0));
}

void DesktopSessionNotice::close(uint id)
{
    if (id == 0)
        return;
    QDBusMessage close = call(QStringLiteral("CloseNotification"));
    close << id;
    m_bus.call(close, QDBus::NoBlock);
}

void DesktopSessionNotice::actionInvoked(uint id, const QString& action)
{
    if (id != m_id || !m_step)
        return;
    m_pressed = true;
    if (action != QLatin1String("stop"))
        emit opened();
    else if (m_stop)
        m_stop();
}

void DesktopSessionNotice::notificationClosed(uint id, uint reason)
{
    if (id != m_id)
        return;
    m_id = 0;
    if (reason != kDismissed || std::exchange(m_pressed, false))
        return;
    m_dismissed = true;
    m_again.stop();
}

} // namespace firstdew::linuxside
