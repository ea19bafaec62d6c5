#include "linux/ReaderAnnouncer.h"

#include <QAccessible>
#include <QAccessibleObject>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QDBusVariant>
#include <QGuiApplication>
#include <QTimer>
#include <QWindow>

namespace firstdew::linuxside {

namespace {

/// By then the keyboard is where it belongs; what is said of that would cut off an earlier announcement.
constexpr int kAfterFocusMs = 150;
const QString kBus = QStringLiteral("org.a11y.Bus");
const QString kPath = QStringLiteral("/org/a11y/bus");
const QString kProperties = QStringLiteral("org.freedesktop.DBus.Properties");
const QString kStatus = QStringLiteral("org.a11y.Status");
const QString kReader = QStringLiteral("ScreenReaderEnabled");

QWindow* shownWindow()
{
    if (QWindow* front = QGuiApplication::focusWindow())
        return front;
    const auto windows = QGuiApplication::topLevelWindows();
    return windows.isEmpty() ? nullptr : windows.constFirst();
}

} // namespace

/// A notice as the accessibility bus knows it: a name, in the window.
class ReaderAnnouncer::Told final : public QAccessibleObject {
public:
    explicit Told(QObject* of) : QAccessibleObject(of) {}
    void tell(const QString& text)
    {
        m_text = text;
        m_read = false;
    }
    /// Whether the reader has made its words of this notice: for that alone it asks for the description.
    [[nodiscard]] bool read() const { return m_read; }
    [[nodiscard]] QAccessibleInterface* parent() const override
    {
        return QAccessible::queryAccessibleInterface(shownWindow());
    }
    [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
    [[nodiscard]] int childCount() const override { return 0; }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    [[nodiscard]] QString text(QAccessible::Text what) const override
    {
        m_read = m_read || what == QAccessible::Description;
        return what == QAccessible::Name ? m_text : QString();
    }
    [[nodiscard]] QAccessible::Role role() const override { return QAccessible::Notification; }
    [[nodiscard]] QAccessible::State state() const override { return {}; }

private:
    QString m_text;
    mutable bool m_read = false;
};

/// Owns what the bus refers to. The registry of Qt owns the interface.
struct ReaderAnnouncer::Notice {
    QObject object;
    Told* told = new Told(&object);
    QAccessible::Id id = QAccessible::registerAccessibleInterface(told);

    ~Notice() { QAccessible::deleteAccessibleInterface(id); }
    Notice() = default;
    Notice(const Notice&) = delete;
    Notice& operator=(const Notice&) = delete;
};

ReaderAnnouncer::ReaderAnnouncer(const QDBusConnection& bus) : m_bus(bus)
{
    m_bus.connect(kBus, kPath, kProperties, QStringLiteral("PropertiesChanged"), this,
                  SLOT(onChanged(QString, QVariantMap)));
    auto ask = QDBusMessage::createMethodCall(kBus, kPath, kProperties, QStringLiteral("Get"));
    ask << kStatus << kReader;
    ask.setAutoStartService(false);
    auto* watcher = new QDBusPendingCallWatcher(m_bus.asyncCall(ask), this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this](QDBusPendingCallWatcher* done) {
        const QDBusPendingReply<QDBusVariant> reply = *done;
        done->deleteLater();
        if (!reply.isError())
            m_on = reply.value().variant().toBool();
    });
}

ReaderAnnouncer::~ReaderAnnouncer() = default;

void ReaderAnnouncer::onChanged(const QString& interface, const QVariantMap& changed)
{
    if (interface == kStatus && changed.contains(kReader))
        m_on = changed.value(kReader).toBool();
}

void ReaderAnnouncer::announce(const std::string& text, Urgency urgency)
{
    const QString told = QString::fromStdString(text);
    if (urgency == Urgency::AtOnce)
        appear(told, urgency);
    else
        QTimer::singleShot(kAfterFocusMs, this, [this, told, urgency] { appear(told, urgency); });
}

#if QT_VERSION >= QT_VERSION_CHECK(6, 8, 0)
void ReaderAnnouncer::appear(const QString& text, Urgency urgency)
{
    QWindow* window = shownWindow();
    if (window == nullptr)
        return;
    QAccessibleAnnouncementEvent event(window, text);
    event.setPoliteness(urgency == Urgency::AtOnce ? QAccessible::AnnouncementPoliteness::Assertive
                                                   : QAccessible::AnnouncementPoliteness::Polite);
    QAccessible::updateAccessibility(&event);
}
#else
// Qt 6.4 has no announcements, and the screen readers of its time speak notices.
void ReaderAnnouncer::appear(const QString& text, Urgency urgency)
{
    constexpr int kTimes = 5;
    constexpr std::size_t kMost = 16; // a reader that is behind asks each for its text later
    if (m_notices.size() < kMost)
        m_notices.push_back(std::make_unique<Notice>());
    Notice& notice = *m_notices[m_next % m_notices.size()];
    m_next = (m_next + 1) % kMost;
    notice.told->tell(text);
    m_last = ++m_told;
    if (urgency == Urgency::AtOnce)
        m_lastAtOnce = m_told;
    show(*notice.told, m_told, kTimes);
}

/// Where a page has just changed in many places, Orca 43 leaves out what comes meanwhile, an alarm as well. So a notice
/// that was not read appears again: the last one, and the last that was to be said at once. Earlier ones hold no more.
void ReaderAnnouncer::show(Told& told, int number, int times)
{
    constexpr int kAgainMs = 2000;
    QAccessibleEvent event(&told, QAccessible::ObjectShow);
    QAccessible::updateAccessibility(&event);
    if (times > 1)
        QTimer::singleShot(kAgainMs, this, [this, &told, number, times] {
            if ((number == m_last || number == m_lastAtOnce) && !told.read())
                show(told, number, times - 1);
        });
}
#endif

} // namespace firstdew::linuxside
