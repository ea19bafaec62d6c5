#pragma once

#include "ports/Announcer.h"

#include <QDBusConnection>
#include <QObject>
#include <QVariantMap>

#include <memory>
#include <vector>

class QAccessibleInterface;

namespace firstdew::linuxside {

/// A desktop's screen reader, over the accessibility bus: a notice appears there for each announcement.
class ReaderAnnouncer : public QObject, public ports::Announcer {
    Q_OBJECT

public:
    explicit ReaderAnnouncer(const QDBusConnection& bus = QDBusConnection::sessionBus());
    ~ReaderAnnouncer() override;
    [[nodiscard]] bool listens() const override { return m_on; }
    /// In turn means after what is said of the control that has the keyboard by then.
    void announce(const std::string& text, Urgency urgency) override;
    /// The screen reader names the page of the control that gets the keyboard.
    void page(const std::string&) override {}

private slots:
    void onChanged(const QString& interface, const QVariantMap& changed);

private:
    class Told;
    void appear(const QString& text, Urgency urgency);
    void show(Told& told, int number, int times);

    QDBusConnection m_bus;
    bool m_on = false;
    int m_told = 0, m_last = 0, m_lastAtOnce = 0; ///< announcements are counted
    struct Notice;
    std::vector<std::unique_ptr<Notice>> m_notices;
    std::size_t m_next = 0;
};

} // namespace firstdew::linuxside
