#pragma once

#include <QDBusConnection>
#include <QObject>

namespace firstdew::linuxside {

/// The name on the session bus of that role for that record. A link to a record gives the name of the record.
[[nodiscard]] QString nameFor(const QString& role, const QString& record);

/// Keeps a record in one window at a time: two windows would each lead the session on their own. The session bus hands
/// a second start over to the first. A lock in the person's runtime folder also holds without the bus or across two
/// buses. Bus and kernel give both up when the process ends, however it ends.
class OneWindow : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.firstdew.Window")

public:
    explicit OneWindow(const QString& record, QDBusConnection bus = QDBusConnection::sessionBus());
    ~OneWindow() override;

    enum class Claim {
        Granted,    ///< this process has the record until it ends
        HandedOver, ///< another window has it and was asked to come forward
        Refused     ///< another window has it and did not answer
    };
    /// Claims the record for this process; otherwise asks the window that has it to show `place`, or to come forward as
    /// it is if that is empty. Waits some seconds at most.
    [[nodiscard]] Claim claim(const QString& place);

public slots:
    Q_SCRIPTABLE void Show(const QString& place) { emit wanted(place); }

signals:
    /// A second start wants this window at that place, or as it is if that is empty.
    void wanted(const QString& place);

private:
    [[nodiscard]] bool acquireName();
    [[nodiscard]] bool handOver(const QString& place) const;

    QDBusConnection m_bus;
    QString m_name;
    int m_lock = -1; ///< descriptor of the lock file; -1 while it is not held
};

} // namespace firstdew::linuxside
