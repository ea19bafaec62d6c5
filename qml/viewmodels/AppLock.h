#pragma once

#include "Enums.h"
#include "ports/Absent.h"
#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "situation/AppLock.h"
#endif

#include <QObject>
#include <QString>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <functional>

class QQmlEngine;
class QJSEngine;

namespace firstdew::viewmodels {

class BathModel;
class Store;

/// The app lock: what may be shown, and what the system asks before more is.
class AppLock : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// Nothing may be shown but what asks for the owner.
    Q_PROPERTY(bool locked READ locked NOTIFY changed)
    /// The session may be shown and nothing else.
    Q_PROPERTY(bool sessionOnly READ sessionOnly NOTIFY changed)
    /// It is on, and the system cannot ask: everything is shown.
    Q_PROPERTY(bool unguarded READ unguarded NOTIFY changed)
    Q_PROPERTY(bool on READ on NOTIFY changed)
    /// Whether the device has a lock to ask for.
    Q_PROPERTY(bool available READ available NOTIFY changed)
    /// The owner is asked for, to switch it on or off.
    Q_PROPERTY(bool switching READ switching NOTIFY changed)
    /// The system was asked and has not answered.
    Q_PROPERTY(bool asking READ asking NOTIFY changed)
    /// The system wants an answer through the app: answer() gives it.
    Q_PROPERTY(bool prompted READ prompted NOTIFY changed)
    Q_PROPERTY(QString prompt READ prompt NOTIFY changed)
    Q_PROPERTY(bool hidden READ hidden NOTIFY changed)
    /// What the system tells the person.
    Q_PROPERTY(QString told READ told NOTIFY changed)
    /// The app is at the front: the system's own dialog has somebody to ask.
    Q_PROPERTY(bool inFront READ inFront NOTIFY changed)
    /// The last answer was wrong.
    Q_PROPERTY(bool wrong READ wrong NOTIFY changed)
    /// The system could not ask, so that nothing was switched.
    Q_PROPERTY(bool failed READ failed NOTIFY changed)

public:
    AppLock(Store& store, BathModel& bath);
    static AppLock* create(QQmlEngine*, QJSEngine*);
    /// Before this the device has no lock.
    void use(ports::OwnerCheck& check);
    /// The app came to the front, or left it.
    void setInFront(bool inFront);

    [[nodiscard]] bool locked() const { return m_guard == situation::Guard::Locked; }
    [[nodiscard]] bool sessionOnly() const { return m_guard == situation::Guard::SessionOnly; }
    [[nodiscard]] bool unguarded() const { return m_guard == situation::Guard::Unguarded; }
    [[nodiscard]] bool on() const { return m_on; }
    [[nodiscard]] bool available() const { return m_check->available(); }
    [[nodiscard]] bool switching() const { return m_switching; }
    [[nodiscard]] bool asking() const { return m_asking; }
    [[nodiscard]] bool prompted() const { return m_prompted; }
    [[nodiscard]] QString prompt() const { return m_prompt; }
    [[nodiscard]] bool hidden() const { return m_hidden; }
    [[nodiscard]] QString told() const { return m_told; }
    [[nodiscard]] bool inFront() const { return m_inFront; }
    [[nodiscard]] bool wrong() const { return m_wrong; }
    [[nodiscard]] bool failed() const { return m_failed; }

    /// Asks for the owner, `why` in the system's own dialog.
    Q_INVOKABLE void ask(const QString& why);
    /// Answers the prompt.
    Q_INVOKABLE void answer(const QString& secret);
    /// Switches it on or off, once the owner is confirmed. Where the system cannot ask it goes off at once, and not on.
    Q_INVOKABLE void change(const QString& why);
    /// Leaves it as it is.
    Q_INVOKABLE void leaveAsItIs();

signals:
    void changed();

private:
    void review();
    void over(ports::OwnerCheck::Verdict verdict);
    void quiet();
    void flip();

    Store& m_store;
    BathModel& m_bath;
    ports::AbsentOwnerCheck m_none;
    ports::OwnerCheck* m_check = &m_none;
    situation::LockState m_state;
    situation::Guard m_guard = situation::Guard::Open;
    QTimer m_away;
    QString m_why;
    QString m_prompt;
    QString m_told;
    bool m_on = false;
    bool m_inFront = true;
    bool m_unable = false; ///< the system could not ask when it was tried
    bool m_switching = false;
    bool m_asking = false;
    bool m_prompted = false;
    bool m_through = false; ///< the system asks through the app, not in a dialog of its own
    bool m_hidden = true;
    bool m_wrong = false;
    bool m_failed = false;
};

} // namespace firstdew::viewmodels
