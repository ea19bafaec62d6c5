#pragma once

#include "Store.h"
#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "ports/Notifier.h"
#endif

#include <QObject>
#include <QTimer>

namespace firstdew::app {

/// Keeps the system's notices in step with what is due: at each change of the record, and each minute.
/// Answers given on a notice go into the record.
class Reminding : public QObject {
    Q_OBJECT

public:
    Reminding(viewmodels::Store& store, ports::Notifier& notifier);
    void look();
    /// `action` on the notice of that key: dry, clammy, later, or something that the app has to be opened for.
    void answer(const QString& key, const QString& action);

signals:
    /// The app is wanted on the screen, at that place.
    void wanted(const QString& place);

private:
    void takeAnswers();
    void planAhead();
    bool record(const std::string& key, const QString& action, facts::LocalTime when);

    viewmodels::Store& m_store;
    ports::Notifier& m_notifier;
    QTimer m_minute;
    bool m_taking = false; ///< what it writes down must not start it again
};

} // namespace firstdew::app
