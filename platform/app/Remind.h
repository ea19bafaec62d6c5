#pragma once

#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "Options.h"
#endif

#include <QCoreApplication>
#include <QDBusConnection>
#include <QObject>

namespace firstdew::app {

/// Runs the program with the app closed: shows due reminders, stays until its notices are answered or closed, and ends.
/// With `watch` it stays and checks each minute. If the app or another such program already shows the reminders, it
/// asks that one to update and ends.
int remind(const Options& options, QCoreApplication& program);

/// The role in the bus name of the program that shows the reminders of a record; one program at a time.
inline const QString kReminders = QStringLiteral("Reminders");

/// Receives requests on the bus to update the reminders now.
class UpdateRequests : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.firstdew.Reminders")

public:
    explicit UpdateRequests(QDBusConnection bus);
    /// Asks the owner of that name and waits until it has updated.
    static void send(const QDBusConnection& bus, const QString& name);

public slots:
    Q_SCRIPTABLE void Update() { emit asked(); }

signals:
    void asked();
};

} // namespace firstdew::app
