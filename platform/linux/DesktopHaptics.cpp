#include "linux/DesktopHaptics.h"

#include <QDBusConnectionInterface>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QVariantMap>

namespace firstdew::linuxside {

namespace {

const QString kService = QStringLiteral("org.sigxcpu.Feedback");
const QString kPath = QStringLiteral("/org/sigxcpu/Feedback");
// Events of the daemon's theme: a tenth of a second at the end of a time, and what calls for an answer at once (its
// alarm clock swells over ten seconds, which is too slow here).
const QString kStep = QStringLiteral("timeout-completed");
const QString kTouch = QStringLiteral("button-pressed");
const QString kAlarm = QStringLiteral("phone-incoming-call");
constexpr int kOnce = -1;
/// As long as the engine takes to repeat an alarm that stands.
constexpr int kAlarmSeconds = 3;

QDBusMessage call(const QString& method) { return QDBusMessage::createMethodCall(kService, kPath, kService, method); }

} // namespace

bool DesktopHaptics::present() const
{
    const auto* bus = m_bus.interface();
    return bus != nullptr &&
           (bus->isServiceRegistered(kService).value() || bus->activatableServiceNames().value().contains(kService));
}

void DesktopHaptics::pulse() { trigger(kStep, kOnce, std::nullopt); }

// The daemon leaves it out in its silent profile.
void DesktopHaptics::tick() { trigger(kTouch, kOnce, std::nullopt); }

void DesktopHaptics::alarm()
{
    still();
    trigger(kAlarm, kAlarmSeconds, ++m_round);
}

void DesktopHaptics::still()
{
    ++m_round;
    if (m_alarm)
        end(*m_alarm);
    m_alarm.reset();
}

/// `round` for an alarm: what has to be ended.
void DesktopHaptics::trigger(const QString& event, int seconds, std::optional<int> round)
{
    if (!m_listening) // from any sender: asking who has the name would wait for the bus, in the midst of an alarm
        m_listening =
            m_bus.connect(QString(), kPath, kService, QStringLiteral("FeedbackEnded"), this, SLOT(ended(uint)));
    QDBusMessage message = call(QStringLiteral("TriggerFeedback"));
    // Felt, not heard: the sounds are the voice's, in an order of their own.
    message << QStringLiteral("org.firstdew") << event
            << QVariantMap{{QStringLiteral("profile"), QStringLiteral("quiet")}} << seconds;
    auto* watcher = new QDBusPendingCallWatcher(m_bus.asyncCall(message), this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, round](QDBusPendingCallWatcher* done) {
        const QDBusPendingReply<uint> reply = *done;
        done->deleteLater();
        if (reply.isError() && !std::exchange(m_said, true))
            qInfo("firstdew: nothing vibrates here: %s", qPrintable(reply.error().message()));
        if (reply.isError() || !round)
            return;
        if (round == m_round)
            m_alarm = reply.value();
        else
            end(reply.value());
    });
}

void DesktopHaptics::end(uint id)
{
    QDBusMessage message = call(QStringLiteral("EndFeedback"));
    message << id;
    m_bus.call(message, QDBus::NoBlock);
}

void DesktopHaptics::ended(uint id)
{
    if (m_alarm == id)
        m_alarm.reset();
}

} // namespace firstdew::linuxside
