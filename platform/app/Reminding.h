#pragma once

#ifndef Q_MOC_RUN
#include "ports/Notifier.h"
#include "Store.h"
#endif

#include <QObject>
#include <QTimer>

namespace firstdew::app {

/// Keeps the system's notices in step with what is due: at each change of the record, and each minute.
class Reminding : public QObject {
    Q_OBJECT

public:
    Reminding(viewmodels::Store& store, ports::Notifier& notifier);

private:
    void look();

    viewmodels::Store& m_store;
    ports::Notifier& m_notifier;
    QTimer m_minute;
};

} // namespace firstdew::app
