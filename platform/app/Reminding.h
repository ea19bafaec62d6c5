#pragma once

#include "Store.h"
#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "ports/Notifier.h"
#endif

#include <QObject>
#include <QTimer>

namespace firstdew::app {

/// Keeps the system's notices in step with the reminders that are due: at each change of the record and each minute.
/// Answers given on a notice go into the record.
class Reminding : public QObject {
    Q_OBJECT

public:
    Reminding(viewmodels::Store& store, ports::Notifier& notifier);
    /// Shows, withdraws and plans notices by the record as it is now.
    void update();
    /// Handles `action` on the notice of that key: a level, later, or one that the app has to be opened for.
    void answer(const QString& key, const QString& action);

signals:
    /// The person wants the app in front, at that place.
    void wanted(const QString& place);

private:
    void recordAnswers();
    void planAhead();
    [[nodiscard]] std::vector<ports::AskedSite> asked() const;
    bool record(const std::string& key, const QString& action, facts::LocalTime when);

    viewmodels::Store& m_store;
    ports::Notifier& m_notifier;
    QTimer m_minute;
    bool m_recording = false; ///< changes made by recordAnswers() do not call update() again
};

} // namespace firstdew::app
