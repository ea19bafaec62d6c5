#pragma once

// The meta-object compiler of Qt 6.4 cannot read the standard library's concepts.
#ifndef Q_MOC_RUN
#include "Opened.h"
#include "ports/Clock.h"
#endif

#include <QObject>
#include <QTimer>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include <memory>
#include <optional>
#include <string>
#include <vector>

class QQmlEngine;
class QJSEngine;

namespace firstdew::viewmodels {

/// The open journal, one person's record out of it, and where things stand today. Everything shown is
/// read from here; everything recorded goes through append(). One per process.
class Store : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed)
    Q_PROPERTY(QString person READ person WRITE setPerson NOTIFY changed)
    Q_PROPERTY(QString personName READ personName NOTIFY changed)
    Q_PROPERTY(QVariantList people READ people NOTIFY changed)
    /// Whether there is more than one of them; costs far less than to ask for all.
    Q_PROPERTY(bool several READ several NOTIFY changed)
    Q_PROPERTY(QString today READ todayIso NOTIFY changed)
    Q_PROPERTY(QString errorCode READ errorCode NOTIFY failed)
    Q_PROPERTY(QString errorText READ errorText NOTIFY failed)

public:
    /// `read` is what was read of that file today, where that was done beforehand.
    Store(ports::Clock& clock, std::string file, std::optional<Opened> read = {});

    /// The one Store of the process, made by the program before the interface is loaded.
    static Store* instance();
    static Store* create(QQmlEngine*, QJSEngine*);

    [[nodiscard]] bool isOpen() const { return m_now.journal.has_value(); }
    [[nodiscard]] bool isEmpty() const { return m_now.facts.empty(); }
    [[nodiscard]] QString person() const { return QString::fromStdString(m_now.person); }
    [[nodiscard]] QString personName() const;
    void setPerson(const QString& id);
    [[nodiscard]] QVariantList people() const;
    [[nodiscard]] bool several() const;
    [[nodiscard]] QString todayIso() const;
    [[nodiscard]] QString errorCode() const { return QString::fromStdString(m_error.code); }
    [[nodiscard]] QString errorText() const;

    [[nodiscard]] const ports::Clock& clock() const { return m_clock; }
    [[nodiscard]] facts::LocalTime now() const { return m_clock.localNow(); }
    [[nodiscard]] const facts::Record& record() const { return m_now.record; }
    [[nodiscard]] const std::vector<facts::Fact>& allFacts() const { return m_now.facts; }
    [[nodiscard]] const situation::Situation& situation() const { return m_now.situation; }
    [[nodiscard]] const std::string& file() const { return m_file; }
    /// The latest value of a preference of this person, or nothing.
    [[nodiscard]] std::optional<std::string> preference(std::string_view key) const;

    /// Records one fact of the present person; on disk when this returns. Gives its id, or nothing after
    /// emitting failed(). `happened` is now where left out; `corrects` is the id of the fact it replaces.
    std::optional<std::string> append(facts::Payload payload, std::optional<facts::LocalTime> happened = {},
                                      std::string corrects = {});
    /// Records several at once, all or none.
    bool appendAll(std::vector<facts::Payload> payloads);
    /// Records an event of a running session without judging everything anew, so that the session goes on at once. False
    /// where it could not be: the session's own page says so, and nothing covers it.
    bool appendQuietly(facts::Payload payload);
    /// Withdraws the fact of that id.
    bool retract(const std::string& id, std::string reason);
    /// Begins the record of somebody further and makes it the present one. Gives the id.
    std::optional<std::string> addPerson(facts::Person person);
    /// The journal itself, for whole-store acts (restore, import, delete); call reload() after.
    [[nodiscard]] std::optional<journal::Journal>& journalForWholeStoreActs() { return m_now.journal; }

    Q_INVOKABLE void reload();
    Q_INVOKABLE void setPreference(const QString& key, const QString& value);
    Q_INVOKABLE QString preferenceOr(const QString& key, const QString& otherwise) const;
    void reopen();

signals:
    void changed();
    void failed();
    /// Something was recorded; `id` names it, so that it can be taken back.
    void recorded(const QString& id);

private:
    [[nodiscard]] facts::LocalDate today() const { return m_clock.localNow().date; }
    void look();
    void tellOfError();
    void fail(const facts::Error& error);
    facts::Fact factOf(facts::Payload payload, facts::LocalTime happened, std::string corrects) const;

    ports::Clock& m_clock;
    std::string m_file;
    Opened m_now;
    facts::Error m_error;
    QTimer m_midnight;
};

/// Text and dates across the edge to QML.
[[nodiscard]] inline QString text(std::string_view s)
{
    return QString::fromUtf8(s.data(), static_cast<qsizetype>(s.size()));
}
[[nodiscard]] inline QString text(facts::LocalDate d) { return QString::fromStdString(d.iso()); }
template <class E>
[[nodiscard]] QString token(E value)
{
    return text(facts::word(value));
}
template <class E>
[[nodiscard]] std::optional<E> valueOf(const QString& token)
{
    return facts::fromWord<E>(token.toStdString());
}
template <class E>
[[nodiscard]] QStringList tokens(facts::SetOf<E> set)
{
    QStringList out;
    for (const E e : facts::allOf<E>())
        if (set.contains(e))
            out << token(e);
    return out;
}
template <class E>
[[nodiscard]] facts::SetOf<E> setOf(const QStringList& list)
{
    facts::SetOf<E> out;
    for (const QString& t : list)
        if (const auto e = valueOf<E>(t))
            out.insert(*e);
    return out;
}

} // namespace firstdew::viewmodels
