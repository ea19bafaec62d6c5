#include "linux/DesktopNotifier.h"

#include "linux/PhoneShell.h"

#include <QDBusConnectionInterface>
#include <QDBusMessage>
#include <QDBusReply>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <QVariantMap>
#include <algorithm>
#include <iterator>
#include <ranges>
#include <set>
#include <utility>

namespace firstdew::linuxside {

namespace {

const QString kService = QStringLiteral("org.freedesktop.Notifications");
const QString kPath = QStringLiteral("/org/freedesktop/Notifications");
const QString kIcon = QStringLiteral("firstdew"); // by the name it is installed under
constexpr int kCallMs = 2000;
constexpr int kRememberedDays = 3;
// Five buttons side by side are too narrow for their labels on a phone. The fifth is Later; a phone keeps the notice in
// its list anyway until it is answered or dismissed.
constexpr std::ptrdiff_t kMostOnAPhone = 4;
constexpr uint kClosedByCall = 3; // reason of NotificationClosed: CloseNotification was called

QDBusMessage call(const QString& method) { return QDBusMessage::createMethodCall(kService, kPath, kService, method); }

} // namespace

DesktopNotifier::DesktopNotifier(QString state, QDBusConnection bus, QObject* parent)
    : QObject(parent), m_bus(bus), m_state(std::move(state))
{
    m_bus.connect(kService, kPath, kService, QStringLiteral("ActionInvoked"), this, SLOT(actionInvoked(uint, QString)));
    m_bus.connect(kService, kPath, kService, QStringLiteral("NotificationClosed"), this,
                  SLOT(notificationClosed(uint, uint)));
}

/// The bus and the daemon's own name on it: a restarted daemon gives out the same numbers again for other notices, and
/// a restarted bus the same names.
QString DesktopNotifier::daemon() const
{
    const auto* bus = m_bus.interface();
    const QDBusReply<QString> owner = bus != nullptr ? bus->serviceOwner(kService) : QDBusReply<QString>();
    if (!owner.isValid())
        return {};
    const QDBusReply<QString> own = m_bus.call(
        QDBusMessage::createMethodCall(QStringLiteral("org.freedesktop.DBus"), QStringLiteral("/org/freedesktop/DBus"),
                                       QStringLiteral("org.freedesktop.DBus"), QStringLiteral("GetId")));
    return owner.value() + QLatin1Char('@') + own.value();
}

void DesktopNotifier::read()
{
    QFile file(m_state);
    m_forgotten = !file.open(QIODevice::ReadOnly);
    if (m_forgotten)
        return; // what this program itself has up is still known, and can be withdrawn
    m_shown.clear();
    const QJsonObject all = QJsonDocument::fromJson(file.readAll()).object();
    const bool sameDaemon = all[QStringLiteral("daemon")].toString() == daemon();
    const QJsonObject notices = all[QStringLiteral("notices")].toObject();
    for (auto it = notices.begin(); it != notices.end(); ++it) {
        const QJsonObject one = it.value().toObject();
        const uint id = static_cast<uint>(one[QStringLiteral("id")].toDouble());
        // What a daemon now gone had up is down, and has to be shown again by the present one.
        if (id != 0 && !sameDaemon)
            continue;
        if (const auto since = facts::LocalTime::parse(one[QStringLiteral("since")].toString().toStdString()))
            m_shown[it.key().toStdString()] = {id, *since, one[QStringLiteral("answered")].toBool(true)};
    }
}

void DesktopNotifier::write() const
{
    if (m_shown.empty()) {
        QFile::remove(m_state);
        return;
    }
    QJsonObject notices;
    for (const auto& [key, shown] : m_shown)
        notices[QString::fromStdString(key)] =
            QJsonObject{{QStringLiteral("id"), static_cast<double>(shown.id)},
                        {QStringLiteral("since"), QString::fromStdString(shown.since.iso())},
                        {QStringLiteral("answered"), shown.answered}};
    QSaveFile file(m_state);
    const QByteArray text =
        QJsonDocument(QJsonObject{{QStringLiteral("daemon"), daemon()}, {QStringLiteral("notices"), notices}}).toJson();
    if (!file.open(QIODevice::WriteOnly) || !file.setPermissions(QFile::ReadOwner | QFile::WriteOwner) ||
        file.write(text) != text.size() || !file.commit())
        qWarning("notices: %s could not be written; a restarted app may show a reminder twice", qPrintable(m_state));
}

void DesktopNotifier::show(const std::vector<ports::Notice>& due, const ports::Standing& standing)
{
    // Read each time: a one-shot reminder may have shown something while this program was open.
    read();
    const auto before = m_shown;
    withdraw(due, standing);
    std::vector<ports::Notice> late;
    std::vector<ports::Notice> inTime;
    for (const ports::Notice& n : freshOf(due))
        (n.late ? late : inTime).push_back(n);
    if (late.size() > 1)
        showAsOne(late);
    else
        inTime.insert(inTime.end(), late.begin(), late.end());
    for (const ports::Notice& n : inTime)
        // Without a daemon nothing is shown; the screen itself still says it, and the next look tries again.
        if (const uint id = notify(n); id != 0)
            m_shown[n.key] = {id, n.since};
    if (m_shown != before)
        write();
}

void DesktopNotifier::withdraw(const std::vector<ports::Notice>& due, const ports::Standing& standing)
{
    facts::LocalTime latest;
    std::set<uint> gone;
    for (auto& [key, shown] : m_shown) {
        latest = std::max(latest, shown.since);
        const bool isDue =
            std::any_of(due.begin(), due.end(), [&, &wanted = key](const ports::Notice& n) { return n.key == wanted; });
        const auto stands = standing.find(key);
        if (shown.id == 0 || isDue || (stands != standing.end() && stands->second <= shown.since))
            continue;
        gone.insert(std::exchange(shown.id, 0));
    }
    for (const auto& [key, shown] : m_shown)
        gone.erase(shown.id); // still up for another
    for (const uint id : gone) {
        QDBusMessage close = call(QStringLiteral("CloseNotification"));
        close << id;
        m_bus.call(close, QDBus::NoBlock);
    }
    std::erase_if(m_shown, [&](const auto& one) {
        return one.second.id == 0 && (m_forgotten || one.second.since.date + kRememberedDays < latest.date);
    });
}

/// Those not shown yet, or put off since.
std::vector<ports::Notice> DesktopNotifier::freshOf(const std::vector<ports::Notice>& due) const
{
    std::vector<ports::Notice> out;
    std::copy_if(due.begin(), due.end(), std::back_inserter(out), [&](const ports::Notice& n) {
        const auto known = m_shown.find(n.key);
        return known == m_shown.end() || (known->second.id == 0 && n.since > known->second.since);
    });
    return out;
}

uint DesktopNotifier::notify(const ports::Notice& n)
{
    QStringList actions{QStringLiteral("default"), QString::fromStdString(n.title)};
    const std::ptrdiff_t most = isPhoneShell() ? kMostOnAPhone : std::ssize(n.actions);
    for (const ports::NoticeAction& a : n.actions | std::views::take(most))
        actions << QString::fromStdString(a.id) << QString::fromStdString(a.label);
    QDBusMessage notify = call(QStringLiteral("Notify"));
    notify << QStringLiteral("Firstdew") << uint(0) << kIcon << QString::fromStdString(n.title)
           << QString::fromStdString(n.text) << actions
           << QVariantMap{{QStringLiteral("desktop-entry"), QStringLiteral("firstdew")}} << 0;
    const QDBusReply<uint> reply = m_bus.call(notify, QDBus::Block, kCallMs);
    return reply.isValid() ? reply.value() : 0;
}

/// The one with the most to answer leads, and its buttons are the notice's; the others are named under it.
void DesktopNotifier::showAsOne(const std::vector<ports::Notice>& late)
{
    const auto lead = std::max_element(
        late.begin(), late.end(), [](const auto& a, const auto& b) { return a.actions.size() < b.actions.size(); });
    ports::Notice one = *lead;
    for (const ports::Notice& n : late)
        if (n.key != lead->key)
            one.text += "\n" + n.title;
    const uint id = notify(one);
    for (const ports::Notice& n : late)
        if (id != 0)
            m_shown[n.key] = {id, n.since, n.key == lead->key};
}

bool DesktopNotifier::anyUp() const
{
    return std::any_of(m_shown.begin(), m_shown.end(), [](const auto& one) { return one.second.id != 0; });
}

void DesktopNotifier::actionInvoked(uint id, const QString& action)
{
    read();
    std::vector<QString> keys;
    for (const auto& [key, shown] : m_shown)
        // All that a notice names are put off with it; a level or a start is of the one that was asked about.
        if (shown.id == id && (shown.answered || action == QLatin1String("later")))
            keys.push_back(QString::fromStdString(key));
    for (const QString& key : keys)
        emit answered(key, action);
}

void DesktopNotifier::notificationClosed(uint id, uint reason)
{
    if (reason == kClosedByCall)
        return;
    read();
    bool any = false;
    for (auto& [key, shown] : m_shown)
        if (shown.id == id) {
            shown.id = 0;
            any = true;
        }
    if (!any)
        return;
    write();
    emit closed();
}

} // namespace firstdew::linuxside
