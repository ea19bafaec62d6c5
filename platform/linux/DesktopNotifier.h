#pragma once

#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "ports/Notifier.h"
#endif

#include <QDBusConnection>
#include <QObject>
#include <QString>
#include <map>

namespace firstdew::linuxside {

/// Reminders through org.freedesktop.Notifications (Desktop Notifications Specification 1.2). The specification has no
/// way to ask what is up, so what was shown is written down beside the record: keys and times, nothing of their
/// answers.
class DesktopNotifier : public QObject, public ports::Notifier {
    Q_OBJECT

public:
    /// `state` is the file that holds what is up; its folder is made where it is missing.
    explicit DesktopNotifier(QString state, QDBusConnection bus = QDBusConnection::sessionBus(),
                             QObject* parent = nullptr);
    /// The place for that file for one record.
    [[nodiscard]] static QString stateFor(const QString& record) { return record + QStringLiteral(".notices"); }
    void show(const std::vector<ports::Notice>& due, const ports::Standing& standing) override;
    /// Whether a notice is up and may still be answered.
    [[nodiscard]] bool anyUp() const;

signals:
    /// The person answered the notice with that key; "default" where it was simply tapped.
    void answered(const QString& key, const QString& action);
    /// A notice was closed.
    void closed();

private slots:
    void actionInvoked(uint id, const QString& action);
    void notificationClosed(uint id, uint reason);

private:
    /// What was shown for one reminder: the notice's number with the daemon, 0 once it was closed or withdrawn. It is
    /// remembered for some days, so that a clock set back or a flight over the date line brings nothing a second time.
    struct Shown {
        uint id = 0;
        facts::LocalTime since;
        /// The buttons of the notice are about this one; several that came late share one notice.
        bool answered = true;
        bool operator==(const Shown&) const = default;
    };

    [[nodiscard]] QString daemon() const;
    void read();
    void write() const;
    void withdraw(const std::vector<ports::Notice>& due, const ports::Standing& standing);
    [[nodiscard]] std::vector<ports::Notice> freshOf(const std::vector<ports::Notice>& due) const;
    [[nodiscard]] uint notify(const ports::Notice& notice);
    void showAsOne(const std::vector<ports::Notice>& late);

    QDBusConnection m_bus;
    QString m_state;
    std::map<std::string, Shown> m_shown; ///< by key
    bool m_forgotten = false;             ///< the file is gone: it went with the record, or there never was one
};

} // namespace firstdew::linuxside
