#pragma once

#include "Enums.h"
#include "ports/Absent.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

class QQmlEngine;
class QJSEngine;

namespace firstdew::viewmodels {

class BathModel;
class Store;

/// What pages have a screen reader say: what was saved or refused, a value that was just changed, the page that came.
class Announce : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

public:
    /// Tells what the store saves, and what store and session refuse.
    Announce(Store& store, BathModel& bath);
    static Announce* create(QQmlEngine*, QJSEngine*);
    /// Nobody listens before this.
    void use(ports::Announcer& announcer) { m_announcer = &announcer; }

    Q_INVOKABLE void value(const QString& text);
    Q_INVOKABLE void refused(const QString& why);
    /// That page came, and the keyboard with it.
    Q_INVOKABLE void page(const QString& title);
    /// That place came, and the keyboard stays where it is.
    Q_INVOKABLE void place(firstdew::ui::Place::Value place);

private:
    void tell(const QString& text, ports::Announcer::Urgency urgency);

    ports::AbsentAnnouncer m_nobody;
    ports::Announcer* m_announcer = &m_nobody;
};

} // namespace firstdew::viewmodels
