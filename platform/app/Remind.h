#pragma once

#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "Options.h"
#endif

#include <QCoreApplication>
#include <QDBusConnection>
#include <QObject>

namespace firstdew::app {

/// The program with the app closed: shows what is due, stays while a notice is up to take its answer, and ends; with
/// `watch` it stays and looks each minute. Ends at once where the app or another of its kind already looks.
int remind(const Options& options, QCoreApplication& program);

/// Where whoever looks after the reminders can be asked on the bus to look now: by a program started for the same,
/// which then has nothing left to do.
class LookRequests : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.firstdew.Reminders")

public:
    explicit LookRequests(QDBusConnection bus);
    /// Asks the holder of that name, and waits until it has looked.
    static void send(const QDBusConnection& bus, const QString& name);

public slots:
    Q_SCRIPTABLE void Look() { emit asked(); }

signals:
    void asked();
};

/// The name on the session bus of whoever looks after the reminders of that record: one at a time.
[[nodiscard]] QString remindersName(const QString& record);

} // namespace firstdew::app
